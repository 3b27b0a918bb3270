// What every screen of a repair shares: its mast, its foot, the requests that it sends.

import { html } from "../../html.js";
import { time } from "../../format.js";
import { mast } from "../../parts/mast.js";
import { others } from "../../parts/others.js";
import { page } from "../../parts/page.js";
import { STAGES } from "../../parts/stages.js";
import { say } from "../../text/say.js";

/** Returns the address of a side screen of this repair. */
export const to = (view, sub = "") => `#/repair/${view.repair.id}${sub && `/${sub}`}`;

/** Returns the node at which the crew works, and what the street is called. */
export const where = ({ repair }) => ({
  strong: repair.plan?.choice.from_node === "downstream" ? repair.line.downstream.name : repair.line.upstream.name,
  where: repair.line.street,
});

/** Returns the mast with the rule of stages. */
export const head = (view, title) => mast({
  title, ...where(view), rehearsal: view.repair.rehearsal, stage: stageAt(view),
  side: [view.repair.number, view.now && time(view.now.at_ms, view.now.offset_min)].filter(Boolean),
});

const stageAt = ({ standing, stage }) => (standing === "complete" ? STAGES.length - 1 : STAGES.indexOf(stage) === -1 ? undefined : STAGES.indexOf(stage));

/** Returns a whole screen of a repair; other live holds stay in sight below the mast. */
export const frame = (view, { title, top, kind, main, mainKind = "stage", foot }) => page({
  kind: `${kind ?? ""}`, rehearsal: view.repair.rehearsal,
  mast: html`${top ?? head(view, title)}${holds(view)}`,
  main: html`<main class="${mainKind}">${main}</main>`,
  deck: foot,
});

const holds = (view) => others((view.others ?? []).map(({ repair, node, due_ms: due }) => ({ repair, manhole: node, due_ms: due - (view.now?.at_ms ?? 0) })));

/** Returns a request with a command to this repair. */
export const tell = (view, command) => ({ do: "tell", repair: view.repair.id, command });

/** Returns a request with a report; `ago_ms` how long ago it happened. */
export const report = (view, happening, ago_ms = agoOf(view)) => tell(view, { command: "report", happening, ...(ago_ms > 0 && { ago_ms }) });

/** Returns how long ago the next report happened, as set on the screen "min ago"; 0 for now. */
export const agoOf = (view) => Number(view.drafts?.[`ago-${view.repair.id}`]?.min ?? 0) * 60_000;

/** Returns the small action that says how long ago, for the foot. */
export const agoLink = (view) => ({ min: agoOf(view) / 60_000, href: to(view, "ago") });

/** Returns a moment as local time of day. */
export const at = (view, ms, seconds = false) => time(ms, view.now?.offset_min ?? 0, seconds);

/** Returns the plan's figures. */
export const computed = (view) => view.repair.plan.computed;

/** Returns the attempt that was begun last. */
export const attempt = (view) => view.repair.attempts.at(-1);
