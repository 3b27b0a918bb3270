// Original photos, brought to the core one after the other and looked at there.

import { bring } from "./pieces.js";

/**
 * Returns what the core says when all files were looked at, or nothing where it stopped. `head` names the certificate that was
 * checked last. `moved(done, of)` after each piece, in bytes of all files.
 */
export async function compare(ask, head, files, moved = () => {}, wait = undefined) {
  const of = files.reduce((all, { size }) => all + size, 0);
  let before = 0;
  let found;
  for (const file of files) {
    if (!(await bring(ask, file, (done) => moved(before + done, of), wait))) return undefined;
    const response = await ask({ do: "check_original", head, name: file.name, of: file.size });
    if (!response?.ok) return undefined;
    before += file.size;
    found = response.ok;
  }
  return found;
}
