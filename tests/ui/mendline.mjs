// `mendline serve` on an empty data folder of its own.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

/** The folder of the built programs. */
export const BUILT = process.env.MENDLINE_BUILT ?? fileURLToPath(new URL("../../target/debug", import.meta.url));

/** Makes an empty folder. Returns { path, remove }. */
export async function emptyFolder() {
  const path = await mkdtemp(join(tmpdir(), "mendline-"));
  return { path, remove: () => rm(path, { recursive: true, force: true }) };
}

/** Starts the program. Returns { address, origin, data, stop }: the printed address, its origin, the data folder. */
export async function serveMendline() {
  const folder = await emptyFolder();
  const child = spawn(join(BUILT, "mendline"), ["serve", "--port", "0", "--data", folder.path], { stdio: ["ignore", "pipe", "inherit"] });
  const [line] = await once(createInterface(child.stdout), "line", { signal: AbortSignal.timeout(20_000) });
  const address = /^Open (http:\S+)$/.exec(line)?.[1];
  if (!address) throw new Error(`mendline serve printed: ${line}`);
  const stop = async () => {
    const ended = once(child, "exit");
    child.kill();
    await ended;
    await folder.remove();
  };
  return { address, origin: new URL(address).origin, data: folder.path, stop };
}
