// How the storage is, on the first screen: said aloud when something is to be done, else one quiet row.

import { html } from "../../html.js";
import { date, number } from "../../format.js";
import { note } from "../../parts/note.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";

/** Returns what is wrong with the storage, or nothing. */
export function warned({ storage }) {
  if (!storage?.low && !storage?.backup_due) return "";
  return html`<section class="section">${storage.low && note({ lead: say("backup.low_lead", { free: gigabytes(storage.free_bytes) }), text: say("backup.low"), accent: true })}
    ${storage.backup_due && note({ lead: say("backup.due_lead"), text: say("backup.due_text") })}${row({ storage })}</section>`;
}

/** Returns the row that leads to the backup: the age of the last one and the free space. */
export const row = ({ storage, now }) => way({ label: say("backup.title"), note: [age(storage, now), free(storage)].filter(Boolean).join(" · "), href: "#/backup" });

const age = (storage, now) => (storage?.backed_up_ms ? say("backup.last_on", { on: date(storage.backed_up_ms, now?.offset_min ?? 0) }) : say("backup.never"));
const free = (storage) => (storage?.free_bytes ?? null) !== null && say("backup.free_n", { free: gigabytes(storage.free_bytes) });

/** Returns bytes in words. */
export const gigabytes = (bytes) => (bytes < 1e9 ? say("backup.mb", { n: Math.floor(bytes / 1e6) }) : say("backup.gb", { n: number(Math.floor(bytes / 1e8) / 10, 1) }));
