// Backup: the whole folder as one encrypted file, and how the storage is. On an empty device: bring one back.

import { html } from "../html.js";
import { date } from "../format.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { field, file } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { moved } from "../parts/moved.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { problemOf } from "../parts/problem-list.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { gigabytes } from "./today/storage.js";

export const title = (view) => say({ made: "backup.made", restored: "restore.done" }[view.kind] ?? (view.params.back ? "restore.title" : "backup.title"));

export const render = (view) => ({ made, restored }[view.kind] ?? (view.params.back ? restoring : asked))(view);

const frame = (view, main, foot) => page({ mast: mast({ title: title(view), where: say("app.name") }), main: html`<main class="stack wide">${main}</main>`, deck: deck({ act: act(foot) }) });

const toToday = () => ({ label: say("done.today"), mark: "back", href: "#/" });

const password = (id, label) => field({ id, name: "password", label, type: "password", needed: true });

const asked = (view) => frame(view, html`${storage(view)}${form({ id: "backup", does: { do: "back_up" }, inside: html`${password("backup-word", say("backup.word"))}<p class="soft">${say("backup.word_note")}</p>` })}
  ${note({ text: say("backup.what") })}${moved(view, "send.saving")}${way({ label: say("restore.title"), note: say("restore.note"), href: "#/backup/back" })}`, { label: say("backup.act"), note: say("backup.act_note"), form: "backup" });

/** Returns the last backup and the free space, each with what is wrong with it. */
const storage = ({ storage: { free_bytes: free, low, backed_up_ms: last, backup_due: due } = {}, now }) => facts([
  { label: say("backup.last"), value: last === null || last === undefined ? say("backup.never") : date(last, now?.offset_min ?? 0), note: due ? say("backup.due") : "" },
  ...(free === null || free === undefined ? [] : [{ label: say("backup.free"), value: gigabytes(free), note: low ? say("backup.low") : "" }]),
]);

const made = (view) => frame(view, html`${moved(view, "send.saving")}${facts([{ label: view.name, value: gigabytes(view.bytes), note: say("backup.files", { n: view.files }) }])}${note({ lead: say("backup.away"), text: say("backup.away_text") })}
  ${way({ label: say("send.save_again"), note: view.name, does: { do: "piece", name: view.name, from: 0, bytes: view.bytes } })}`, toToday());

const restoring = (view) => frame(view, html`${moved(view, "take.bringing")}<p class="lead">${say("restore.text")}</p>${form({ id: "restore", large: true, does: { do: "restore" }, inside: html`
  ${file({ id: "restore-file", name: "file", label: say("restore.file"), accept: ".age", problem: problemOf(view.problems, "restore-file") })}${password("restore-word", say("restore.word"))}` })}
  ${note({ text: say("restore.device") })}`, { label: say("restore.act"), note: say("restore.act_note"), form: "restore" });

const restored = (view) => frame(view, html`${facts([{ label: say("send.pick"), value: String(view.repairs) }, { label: say("restore.files"), value: String(view.files) }])}
  ${view.damaged > 0 && note({ text: say("restore.damaged", { n: view.damaged }), accent: true })}${note({ text: say("restore.people") })}`, toToday());
