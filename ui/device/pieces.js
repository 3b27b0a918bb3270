// Files that are too large for one request: fetched from the core piece by piece, or brought to it.

/** The bytes of a piece. */
const PIECE = 3 << 20;

/** The first piece shows whether half of this very file is there already. */
const FIRST = 4 << 10;

const AGAIN_MS = 1000;
const TRIES = 5;

const waiting = (ms) => new Promise((done) => setTimeout(done, ms));

// A core that is silent for a moment is asked again; what it refuses is final.
async function patiently(ask, request, wait) {
  for (let n = 1; ; n += 1) {
    const response = await ask(request);
    if (response || n === TRIES) return response;
    await wait(AGAIN_MS);
  }
}

/** Yields the bytes of a made file { name, bytes }, piece by piece. `moved(done, of)` after each. Throws when the core gives no more. */
export async function* pieces(ask, { name, bytes: of }, moved = () => {}, wait = waiting) {
  for (let from = 0; from < of;) {
    const { ok } = (await patiently(ask, { do: "piece", name, from }, wait)) ?? {};
    if (!ok) throw new Error("no piece");
    const raw = Uint8Array.from(atob(ok.bytes), (letter) => letter.charCodeAt(0));
    if (raw.length === 0) throw new Error("an empty piece");
    from += raw.length;
    moved(from, of);
    yield raw;
  }
}

/**
 * Brings a file { name, size, slice } to the core and returns whether all of it is there. What is there already is not sent
 * again. `moved(done, of)` after each piece.
 */
export async function bring(ask, file, moved = () => {}, wait = waiting) {
  const { name, size: of } = file;
  let [from, length] = [0, Math.min(FIRST, of)];
  for (;;) {
    const bytes = base64(new Uint8Array(await file.slice(from, from + length).arrayBuffer()));
    const { ok } = (await patiently(ask, { do: "bring", name, of, from, bytes }, wait)) ?? {};
    // A place that does not move is no progress.
    if (!ok || (ok.here <= from && of > 0)) return false;
    moved(ok.here, of);
    if (ok.here >= of) return true;
    [from, length] = [ok.here, Math.min(PIECE, of - ok.here)];
  }
}

const CHUNK = 0x8000;

/** Returns bytes as base64 (RFC 4648). */
export function base64(bytes) {
  let text = "";
  for (let i = 0; i < bytes.length; i += CHUNK) text += String.fromCharCode(...bytes.subarray(i, i + CHUNK));
  return btoa(text);
}
