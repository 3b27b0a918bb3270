// The frame of every screen of a repair: its mast, the other clocks, its foot.

import { html } from "../../html.js";
import { time } from "../../format.js";
import { mast } from "../../parts/mast.js";
import { others } from "../../parts/others.js";
import { page } from "../../parts/page.js";
import { STAGES } from "../../parts/stages.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { nowOf, where } from "./about.js";
import { refused } from "./gate.js";
import { keying } from "./keyed.js";
import { sights } from "./practice.js";
import { whoDialog, whoTaps } from "./who.js";

export * from "./about.js";

/** Returns the mast with the rule of stages. */
export const head = (view, title, kind) => mast({
  title, kind, ...where(view), rehearsal: view.repair.rehearsal, stage: stageAt(view), who: whoTaps(view),
  side: [view.repair.number, view.now && time(view.now.at_ms, view.now.offset_min)].filter(Boolean),
});

const stageAt = ({ standing, stage }) => (standing === "complete" ? STAGES.length - 1 : STAGES.indexOf(stage) === -1 ? undefined : STAGES.indexOf(stage));

/**
 * Returns a whole screen of a repair; other live clocks stay in sight below the mast. `top` stands for the mast, `mastKind`
 * is its class; `refusal` false leaves what was refused to the screen.
 */
export const frame = (view, { title, top, kind, mastKind, main, mainKind = "stage", foot, refusal = true }) => page({
  kind: `${kind ?? ""}`, rehearsal: view.repair.rehearsal,
  mast: html`${top ?? head(view, title, mastKind)}${clocks(view)}`,
  main: html`<main class="${mainKind}">${apart(view)}${handing(view)}${keying(view)}${sights(view)}${refusal && refused(view)}${main}${whoDialog(view)}</main>`,
  deck: foot,
});

// Until the foreman has chosen, this device shows its own branch and says so on every screen.
const apart = ({ repair }) => (repair.branches ?? []).length > 1 && html`<div class="apart">${way({ label: say("apart.way", { n: repair.branches.length }), note: say("apart.way_note"), href: `#/repair/${repair.id}/branches` })}</div>`;

// A hold that is another phone's says so on every screen but its own.
const handing = ({ handed, repair, params }) => (handed?.offered || handed?.away) && params.sub && html`<div class="apart">${way({ label: say(handed.offered ? "offer.title" : "given.title"), note: say(handed.offered ? "offer.way_note" : "given.way_note"), href: `#/repair/${repair.id}` })}</div>`;

const clocks = (view) => others((view.others ?? []).map(({ repair, node, due_ms: due, holding, followed }) => ({ repair, manhole: node, holding, followed, due_ms: due - nowOf(view) })));

/** Returns the way to send this repair to another device. */
export const sending = ({ repair }) => way({ label: say("send.one"), note: say("send.one_note"), href: `#/send/${repair.id}` });
