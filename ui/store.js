// What the screen stands on: the latest answer, the reports still on their way, and every letter typed.

/** How long to wait before the same envelope is sent again, in ms; the last one repeats. */
const WAITS = [500, 1000, 2000, 5000];

/**
 * Returns the store. `ports`: ask(envelope), storage (getItem, setItem), monotonic() in ms, newId(), facts() and later(ms, run).
 *
 * A report is kept in `storage` until the core has answered it, and sent again with the same id: that has no double effect.
 */
export function createStore(ports) {
  const state = { route: null, answer: null, refusal: null, error: null, unreachable: false, sending: false, outbox: read("outbox", []), drafts: read("drafts", {}) };
  const listeners = new Set();
  let seen = null;
  let tries = 0;
  let asked = 0;

  function read(key, otherwise) {
    try { return JSON.parse(ports.storage.getItem(`mendline.${key}`)) ?? otherwise; } catch { return otherwise; }
  }
  const keep = (key) => ports.storage.setItem(`mendline.${key}`, JSON.stringify(state[key]));
  const changed = () => listeners.forEach((listen) => listen(state));

  /** Takes an answer to heart. The moment in it sets the clock that runs until the next one. */
  function take(response) {
    state.unreachable = false;
    state.error = response.error ?? null;
    state.refusal = response.refusal ?? null;
    if (response.ok) state.answer = response.ok;
    if (response.now) seen = { ...response.now, since: ports.monotonic() };
  }

  /** Asks for what a screen shows. Only the answer to the latest question is taken. */
  async function look(request) {
    const turn = ++asked;
    try {
      const response = await ports.ask({ id: ports.newId(), ...ports.facts(), request });
      if (turn === asked) take(response);
    } catch {
      if (turn === asked) state.unreachable = true;
    }
    changed();
  }

  /** Sends a report or an ask. Returns the response; while the core is silent it goes on trying, in the order of the taps. */
  function send(request) {
    const envelope = { id: ports.newId(), ...ports.facts(), request };
    state.outbox.push(envelope);
    keep("outbox");
    changed();
    return flush();
  }

  async function flush() {
    if (state.sending) return null;
    state.sending = true;
    let response = null;
    try {
      while (state.outbox.length > 0) {
        response = await ports.ask(state.outbox[0]);
        state.outbox.shift();
        keep("outbox");
        take(response);
        tries = 0;
      }
    } catch {
      state.unreachable = true;
      ports.later(WAITS[Math.min(tries++, WAITS.length - 1)], flush);
    } finally {
      state.sending = false;
    }
    changed();
    return response;
  }

  return {
    state,
    look,
    send,
    flush,
    subscribe: (listen) => { listeners.add(listen); return () => listeners.delete(listen); },
    go: (route) => { Object.assign(state, { route, answer: null, refusal: null, error: null }); asked += 1; changed(); },
    /** Returns the core's moment, carried on by this device's running clock, or null before the first answer. */
    now: () => (seen ? { at_ms: seen.at_ms + Math.round(ports.monotonic() - seen.since), offset_min: seen.offset_min } : null),
    /** Returns what was typed into a form and not yet sent, by name. */
    draft: (form) => state.drafts[form] ?? {},
    type: (form, name, value) => { (state.drafts[form] ??= {})[name] = value; keep("drafts"); },
    forget: (form) => { delete state.drafts[form]; keep("drafts"); },
  };
}
