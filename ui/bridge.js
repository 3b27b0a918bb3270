// The only transport. In the window the core is one call away, in a browser it is behind POST /ask on this machine.

const tauri = () => globalThis.__TAURI__;
const onPhone = () => Boolean(tauri()) && /Android|iPhone|iPad/.test(navigator.userAgent);

/** The core did not answer: nothing is known about what became of the request. The same id may be sent again. */
export class Unreachable extends Error {}

/** Sends one envelope, returns the response as data. Throws `Unreachable` when the core gave no answer. */
export async function ask(envelope) {
  const body = JSON.stringify(envelope);
  try {
    return JSON.parse(await inTime(tauri() ? tauri().core.invoke("ask", { envelope: body }) : post(body), envelope.request?.do));
  } catch (cause) {
    throw new Unreachable(cause?.says ?? "no answer from the core", { cause });
  }
}

const PATIENCE_MS = 20_000;
const LONG_PATIENCE_MS = 15 * 60_000;

/** What goes through all photos takes its time. */
const LONG = ["pack", "take_in", "back_up", "restore"];

// A core that hangs is a silent core: the same id may be sent again.
const inTime = (answer, what) => Promise.race([answer, new Promise((_, late) => setTimeout(() => late(new Error("late")), LONG.includes(what) ? LONG_PATIENCE_MS : PATIENCE_MS))]);

/** What stands before the core refused to pass the request on, and sending the same again may help. */
const PASSING = [403, 408, 429, 500, 502, 503, 504];

async function post(body) {
  const answer = await fetch("/ask", { method: "POST", headers: { "content-type": "application/json", "x-mendline-token": token }, body });
  const text = await answer.text();
  if (PASSING.includes(answer.status)) throw JSON.parse(text).error;
  return text;
}

const token = globalThis.location ? takeToken() : "";

// The command line prints an address with the token behind the #, which no browser sends on. It is kept for this tab.
function takeToken() {
  const given = /^#token=(\w+)$/.exec(location.hash)?.[1];
  if (given) {
    sessionStorage.setItem("token", given);
    history.replaceState(null, "", "#/");
  }
  return sessionStorage.getItem("token") ?? "";
}

/**
 * Watches the position until the returned function is called. `found({ latitude, longitude, accuracy, timestamp }, source)`
 * for each fix, `failed(why)` with "refused" or "unavailable".
 */
export function watchPosition(found, failed) {
  if (onPhone()) return watchReceiver(found, failed);
  if (!navigator.geolocation) { failed("unavailable"); return () => {}; }
  const options = { enableHighAccuracy: true, maximumAge: 60_000, timeout: 60_000 };
  const id = navigator.geolocation.watchPosition(
    ({ coords, timestamp }) => found({ ...plain(coords), timestamp }, "browser"),
    (problem) => failed(problem.code === problem.PERMISSION_DENIED ? "refused" : "unavailable"), options);
  return () => navigator.geolocation.clearWatch(id);
}

const plain = ({ latitude, longitude, accuracy }) => ({ latitude, longitude, accuracy });

function watchReceiver(found, failed) {
  const { invoke, Channel } = tauri().core;
  const channel = new Channel();
  channel.onmessage = (message) => (typeof message === "string" ? failed("unavailable") : found({ ...plain(message.coords), timestamp: message.timestamp }, "receiver"));
  const options = { enableHighAccuracy: true, maximumAge: 60_000, timeout: 60_000 };
  invoke("plugin:geolocation|request_permissions", { permissions: ["location"] })
    .then(({ location: answer }) => (answer === "granted" ? invoke("plugin:geolocation|watch_position", { options, channel }) : failed("refused")))
    .catch(() => failed("unavailable"));
  return () => { invoke("plugin:geolocation|clear_watch", { channelId: channel.id }).catch(() => {}); };
}

/**
 * Saves bytes through the system's dialog. Returns true when saved, false when the person chose not to, undefined where
 * there is no such dialog (a browser).
 */
export async function saveBytes(name, bytes) {
  if (!tauri()) return undefined;
  const { invoke } = tauri().core;
  const path = await invoke("plugin:dialog|save", { options: { defaultPath: name } }).catch(() => null);
  if (!path) return false;
  await invoke("plugin:fs|write_file", bytes, { headers: { path: encodeURIComponent(path), options: "{}" } });
  return true;
}

/**
 * Saves a large file through the system's dialog, from `parts()`, which yields its bytes one part after the other. Returns as
 * `saveBytes` does; where there is no such dialog, nothing is taken from `parts`.
 */
export async function saveParts(name, parts) {
  if (!tauri()) return undefined;
  const { invoke } = tauri().core;
  const path = await invoke("plugin:dialog|save", { options: { defaultPath: name } }).catch(() => null);
  if (!path) return false;
  let append = false;
  for await (const part of parts()) {
    await invoke("plugin:fs|write_file", part, { headers: { path: encodeURIComponent(path), options: JSON.stringify({ append }) } });
    append = true;
  }
  return true;
}

/** Returns { ring(notices), cancel(ids) }: the phone's own clock, which rings while the program sleeps. Nothing where there is none. */
export function phoneClock() {
  if (!onPhone()) return undefined;
  const { invoke } = tauri().core;
  const at = (ms) => ({ at: { date: new Date(ms).toISOString(), repeating: false, allowWhileIdle: true } });
  return {
    ring: (notices) => notices.forEach(({ id, title, body, at_ms: ms }) => invoke("plugin:notification|notify", { options: { id, title, body, schedule: at(ms) } }).catch(() => {})),
    cancel: (ids) => { invoke("plugin:notification|cancel", { notifications: ids }).catch(() => {}); },
  };
}
