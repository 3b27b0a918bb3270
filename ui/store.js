// What the screen stands on: the latest answer, the reports still on their way, and every letter typed.

/** How long to wait before the same envelope is sent again, in ms; the last one repeats. */
const WAITS = [500, 1000, 2000, 5000];

/** The longest wait that an envelope can tell, in ms. */
const LONGEST_MS = 0xffff_ffff;

/** How many letters an envelope may have to be kept where there is little room. */
const SMALL = 10_000;

/**
 * Returns the store. `ports`: ask(envelope), storage (getItem, setItem), monotonic() and wall() in ms, newId(), facts() and later(ms, run).
 *
 * A report is kept in `storage` until the core has answered it, and sent again with the same id: that has no double effect.
 */
export function createStore(ports) {
  const state = { route: null, answer: null, refusal: null, error: null, problems: [], unreachable: false, outbox: read("outbox", []), drafts: read("drafts", {}) };
  const scope = () => state.route?.params?.id ?? "";
  const listeners = new Set();
  const promised = new Map();
  let seen = null;
  let asked = 0;
  let flushing = false;
  let tries = 0;

  function read(key, otherwise) {
    try { return JSON.parse(ports.storage.getItem(`mendline.${key}`)) ?? otherwise; } catch { return otherwise; }
  }
  const keep = (key) => ports.storage.setItem(`mendline.${key}`, JSON.stringify(state[key]));
  // A photo may be larger than what there is room for. It goes out all the same, and small reports are kept beside it.
  const keepOutbox = () => {
    try { keep("outbox"); } catch { ports.storage.setItem("mendline.outbox", JSON.stringify(state.outbox.filter((one) => JSON.stringify(one).length < SMALL))); }
  };
  const changed = () => listeners.forEach((listen) => listen(state));

  // The moment in an answer sets the clock that runs until the next one. It lies between the question and its answer: there
  // the clock that ran before is kept, so that a slow answer neither turns it back nor makes it jump. A clock that does not fit
  // begins at the question: it may show a moment too late, never time that is gone.
  function take(response, sent) {
    Object.assign(state, { unreachable: false, error: response.error ?? null, refusal: response.refusal ?? null });
    if (!response.now) return;
    const before = seen ? seen.since + (response.now.at_ms - seen.at_ms) / (response.now.pace ?? 1) : sent;
    seen = { ...response.now, since: before >= sent && before <= ports.monotonic() ? before : sent };
  }

  /** Asks for what a screen shows. Only the answer to the latest question is taken. */
  async function look(request) {
    const turn = ++asked;
    const sent = ports.monotonic();
    try {
      const response = await ports.ask({ id: ports.newId(), ...ports.facts(), request });
      if (turn !== asked) return;
      // What was refused or failed before stays in sight while the screen is only drawn anew.
      const { refusal, error } = state;
      take(response, sent);
      state.refusal ??= refusal;
      state.error ??= error;
      // A file to save is not what a screen shows.
      if (response.ok && response.ok.kind !== "file") state.answer = response.ok;
    } catch {
      if (turn === asked) state.unreachable = true;
    }
    changed();
  }

  /** Asks what writes nothing: nothing is kept, nothing is tried again. Returns the response, or nothing when the core is silent. */
  async function ask(request, secrets) {
    const sent = ports.monotonic();
    try {
      const response = await ports.ask({ id: ports.newId(), ...ports.facts(), ...secrets, request });
      take(response, sent);
      changed();
      return response;
    } catch {
      state.unreachable = true;
      changed();
      return undefined;
    }
  }

  /**
   * Sends a report or an ask; returns its response, however long the core is silent. The order of the taps is kept.
   * The same request that is still on its way is not sent a second time.
   */
  function send(request, secrets) {
    const same = state.outbox.find((envelope) => JSON.stringify(envelope.request) === JSON.stringify(request));
    if (same && promised.has(same.id)) return promised.get(same.id).promise;
    const envelope = { id: ports.newId(), ...ports.facts(), tapped_ms: ports.wall(), request };
    const waiting = {};
    waiting.promise = new Promise((resolve) => { waiting.resolve = resolve; });
    promised.set(envelope.id, waiting);
    if (secrets) unkept.set(envelope.id, secrets);
    state.outbox.push(envelope);
    keepOutbox();
    flush();
    return waiting.promise;
  }

  // A PIN is never written down: a tap that outlives this page is sent without it, and the core asks for it again.
  const unkept = new Map();

  // A tap happened when it was made, however long the core was silent.
  const waited = ({ tapped_ms: tapped, ...envelope }) => ({ ...envelope, waited_ms: Math.min(LONGEST_MS, Math.max(0, Math.round(ports.wall() - (tapped ?? ports.wall())))) });

  async function flush() {
    if (flushing) return;
    flushing = true;
    try {
      while (state.outbox.length > 0) {
        const sent = ports.monotonic();
        const response = await ports.ask({ ...waited(state.outbox[0]), ...unkept.get(state.outbox[0].id) });
        const { id } = state.outbox.shift();
        unkept.delete(id);
        keepOutbox();
        take(response, sent);
        tries = 0;
        changed();
        promised.get(id)?.resolve(response);
        promised.delete(id);
      }
    } catch {
      state.unreachable = true;
      ports.later(WAITS[Math.min(tries++, WAITS.length - 1)], flush);
      changed();
    } finally {
      flushing = false;
    }
  }

  return {
    state,
    look,
    ask,
    send,
    flush,
    /** Shows an answer that came of a tap, such as what a check found. */
    show: (answer) => { Object.assign(state, { answer }); changed(); },
    subscribe: (listen) => { listeners.add(listen); return () => listeners.delete(listen); },
    /** Goes to a route: what was refused or in the way before is gone; what was typed stays. `same` keeps what is shown. */
    go: (route, same = false) => { Object.assign(state, { route, answer: same ? state.answer : null, refusal: null, error: null, problems: [] }); asked += 1; changed(); },
    /** Shows what keeps a form from being sent: { field, text }. It clears what was refused before. */
    fault: (problems) => {
      if (problems.length + state.problems.length === 0 && !state.refusal && !state.error) return;
      Object.assign(state, { problems, refusal: null, error: null });
      changed();
    },
    /** Draws again what is shown, because time has passed or something was typed. */
    redraw: changed,
    /** Returns the core's moment, carried on by this device's running clock (in a rehearsal that is played, at its pace), or null before the first answer. */
    now: () => (seen ? { at_ms: seen.at_ms + Math.round((ports.monotonic() - seen.since) * (seen.pace ?? 1)), offset_min: seen.offset_min } : null),
    /** Returns all that was typed and not yet sent where the route leads, by form and name: one repair never sees what was typed for another. */
    drafts: () => state.drafts[scope()] ?? {},
    /** Returns what was typed into a form and not yet sent, by name. */
    draft: (form) => state.drafts[scope()]?.[form] ?? {},
    type: (form, name, value) => { ((state.drafts[scope()] ??= {})[form] ??= {})[name] = value; keep("drafts"); },
    /** Forgets what was typed into a form, here or in the scope `within`. */
    forget: (form, within = scope()) => { delete state.drafts[within]?.[form]; keep("drafts"); },
    scope,
  };
}
