// The first screen: resin that runs comes first, then holds, cures, what comes next, what waits for a signature.

import { html } from "../html.js";
import { day, time } from "../format.js";
import { light } from "../parts/light.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { first } from "./today/first.js";
import { curing, followed, holding, mixed } from "./today/live.js";
import { row } from "./today/row.js";
import { row as storageRow, warned } from "./today/storage.js";

export const title = (view) => (view.crew ? say("today.crew", { crew: view.crew }) : say("today.title"));

/** How many finished repairs stand on the first screen; the search has all. */
const DONE = 5;

export function render(view) {
  const live = [list("mixed", view.mixed, (one) => mixed(view, one), "lives"), list("holding", view.holding, (one) => holding(view, one), "lives"), list("followed", view.followed ?? [], (one) => followed(view, one), "lives")].filter(Boolean);
  const waiting = html`${closed(view)}${warned(view)}${setUp(view) ? first(view) : lists(view)}`;
  const rest = html`${tools(view)}${section({ id: "h-light", title: say("light.label"), kind: "today-light", inside: light(view.light) })}`;
  return page({
    mast: mast({ title: title(view), home: false, where: view.owner || say("app.name"), side: view.now ? [day(view.now.at_ms, view.now.offset_min), time(view.now.at_ms, view.now.offset_min)] : [] }),
    main: html`<main class="today">${live.length > 0 ? html`<div>${live}</div><div>${waiting}${rest}</div>` : html`<div>${waiting}</div><div>${rest}</div>`}</main>`,
  });
}

const closed = (view) => view.closed && html`<section class="section">${note({ lead: say("today.closed"), text: view.closed, accent: true })}</section>`;

const lists = (view) => html`${!view.who && nobody()}${none(view) && section({ id: "h-none", title: say("today.none"), kind: "", inside: html`<p>${say("today.none_text")}</p>${way({ label: say("today.intake"), note: say("today.intake_note"), href: "#/intake" })}` })}
  ${list("curing", view.curing, (one) => curing(view, one))}${["next", "review", "underway", "taken"].map((name) => list(name, view[name], row))}
  ${list("done", view.done.slice(0, DONE), row, undefined, view.done.length)}${list("damaged", view.damaged, row)}`;

// Only a new folder leads through the set-up, and nobody is led through it twice.
const setUp = (view) => !view.closed && none(view) && (view.lacks ?? []).length > 0;

const none = (view) => ["mixed", "holding", "curing", "next", "review", "underway", "taken", "done", "damaged"].every((name) => view[name].length === 0);

const list = (name, items, draw, kind, of = items.length) => items.length > 0 && section({
  id: `h-${name}`, title: say(`today.${name}`), aside: String(of), kind: "", inside: kind ? html`<div class="${kind}">${items.map(draw)}</div>` : items.map(draw),
});

const nobody = () => html`<section class="section">${note({ lead: say("today.nobody"), text: say("today.nobody_text"), accent: true })}${way({ label: say("people.who"), note: say("people.note"), href: "#/people" })}</section>`;

function tools(view) {
  const ready = Boolean(view.owner);
  const to = (name, href) => way({ label: say(`${name}.title`), note: say(`${name}.note`), href });
  return section({ id: "h-tools", title: say("today.more"), kind: "", inside: html`
    ${ready && html`${!none(view) && way({ label: say("today.intake"), note: say("today.intake_note"), href: "#/intake" })}${to("search", "#/search")}`}
    ${way({ label: say("people.title"), note: view.who ? say("today.who", { name: view.who }) : say("people.note"), href: "#/people" })}
    ${ready && to("send", "#/send")}${to("take", "#/take")}${to("follow", "#/follow")}${view.owner ? !view.storage?.backup_due && !view.storage?.low && storageRow(view) : to("restore", "#/backup/back")}${to("shelf", "#/shelf")}${to("check", "#/check")}${to("worked", "#/checks")}${to("practice", "#/practice")}${to("help", "#/help")}` });
}
