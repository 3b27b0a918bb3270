// What every screen of a repair knows and sends: its addresses, its requests, its moments.

import { time, timeSeen } from "../../format.js";

/** Returns the address of a side screen of this repair. */
export const to = (view, sub = "") => `#/repair/${view.repair.id}${sub && `/${sub}`}`;

/** Returns the node at which the crew works, and what the street is called. */
export const where = ({ repair }) => ({
  strong: repair.plan?.choice.from_node === "downstream" ? repair.line.downstream.name : repair.line.upstream.name,
  where: repair.line.street,
});

/** Returns a request with a command to this repair. */
export const tell = (view, command) => ({ do: "tell", repair: view.repair.id, command });

/** Returns a request with a report; how long ago it happened is what was set for this report on the screen "min ago". */
export const report = (view, happening, key = happening.what) => tell(view, { command: "report", happening, ...(agoOf(view, key) > 0 && { ago_ms: agoOf(view, key) }) });

/** Returns how long ago the report `key` happened, as set on the screen "min ago"; 0 for now. */
export const agoOf = (view, key) => Number(view.drafts?.[`ago-${key}`]?.min ?? 0) * 60_000;

/** Returns the small action that says how long ago the report `key` happened, for the foot. */
export const agoLink = (view, key) => ({ min: agoOf(view, key) / 60_000, href: to(view, `ago/${key}`) });

/** Returns a moment as local time of day. */
export const at = (view, ms, seconds = false) => time(ms, view.now?.offset_min ?? 0, seconds);

/** Returns local time of day, with its day where that is not today: a cure or a closure may end tomorrow. */
export const upTo = (view, ms) => timeSeen(ms, view.now?.at_ms ?? ms, view.now?.offset_min ?? 0);

/** Returns the core's moment, in ms. */
export const nowOf = (view) => view.now?.at_ms ?? 0;

/** Returns the plan's figures. */
export const computed = (view) => view.repair.plan.computed;

/** Returns the attempt that was begun last. */
export const attempt = (view) => view.repair.attempts.at(-1);

/** Returns the foreman's name, where there is one to call. */
export const foreman = (view) => view.people.find(({ role }) => role === "foreman")?.name;
