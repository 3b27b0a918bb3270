// Two devices on one repair: what is the same, what each has that the other has not, and the foreman's choice.

import { html } from "../html.js";
import { day, time } from "../format.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { field, picks } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { keyOf, pin } from "../parts/pin.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";
import { refused } from "./repair/gate.js";

export const title = () => say("apart.title");

/** How many of the last things of a branch stand open. */
const OPEN = 8;

/** The shown repair lies within; the parts of its own screens take it as their view. */
const within = (view) => ({ ...view.repair, refusal: view.refusal, drafts: view.drafts, person: view.person, now: view.now });

export function render(view) {
  const { repair } = view.repair;
  const home = `#/repair/${repair.id}`;
  const apart = view.branches.length > 1;
  return page({
    rehearsal: repair.rehearsal,
    mast: mast({ title: title(), strong: say("today.line", { from: repair.line.upstream.name, to: repair.line.downstream.name }), between: ", ", where: repair.line.street, side: [repair.number], rehearsal: repair.rehearsal }),
    main: html`<main class="stack wide">${refused(within(view))}${apart ? both(view, home) : section({ id: "agree", title: say("apart.none"), inside: html`<p>${say("apart.none_text")}</p>` })}</main>`,
    deck: deck({ act: apart ? act({ label: say("apart.act"), note: say("apart.act_note"), mark: "tick", form: "choose" }) : act({ label: say("done.today"), mark: "back", href: home }) }),
  });
}

const both = (view, home) => html`${section({ id: "same", title: say("apart.same"), inside: html`<p>${say("apart.same_text", { n: view.shared })} ${view.shared_at && say("apart.same_until", { at: moment(view.shared_at) })}</p>${note({ text: say("apart.kept") })}` })}
  <div class="side-by-side">${view.branches.map((branch) => column(view, branch))}</div>${chooser(view, home)}`;

const column = (view, branch) => section({ id: `b-${short(branch.head)}`, title: whose(branch), aside: say("apart.count", { n: branch.steps.length }), inside: html`
  <p class="soft">${branch.devices.map((id) => say("apart.device", { id: short(id) })).join(", ")}</p>
  ${branch.steps.length > OPEN && html`<details><summary>${say("apart.earlier", { n: branch.steps.length - OPEN })}</summary>${list(view, branch.steps.slice(0, -OPEN))}</details>`}${list(view, branch.steps.slice(-OPEN))}` });

const list = (view, steps) => html`<ol class="apart-steps">${steps.map((step) => html`<li><b>${say(`apart.step.${step.what}`, { detail: step.detail })}</b><small>${[moment(step), name(view, step.person)].join(", ")}</small></li>`)}</ol>`;

const whose = ({ own }) => say(own ? "apart.own" : "apart.other");
const short = (id) => id.slice(0, 8);
const moment = ({ at_ms: at, offset_min: offset }) => `${day(at, offset)}, ${time(at, offset)}`;
const name = (view, id) => view.repair.people.find((one) => one.id === id)?.name ?? id ?? say("apart.nobody");

function chooser(view, home) {
  const { people, repair } = view.repair;
  const typed = view.drafts?.choose ?? {};
  const me = people.find(({ id }) => id === view.person);
  const foremen = people.filter(({ role }) => role === "foreman");
  const asksPin = !repair.rehearsal && foremen.some(keyOf);
  return form({ id: "choose", then: home, does: { do: "tell", repair: repair.id, command: { command: "choose_branch", ...(me?.role === "foreman" && { foreman: me.id }) } }, inside: html`
    ${choice({ legend: say("apart.choose"), name: "command.head", needed: true, picked: typed["command.head"], options: view.branches.map((branch) => ({
      value: branch.head, strong: whose(branch), note: branch.steps.length > 0 ? say("apart.pick", { who: name(view, branch.steps.at(-1).person), at: moment(branch.steps.at(-1)) }) : "" })) })}
    ${me?.role !== "foreman" && picks({ id: "choose-who", name: "command.foreman", label: say("waive.foreman"), value: typed["command.foreman"], options: foremen.map(({ id: value, name: label }) => ({ value, label })) })}
    ${field({ id: "choose-why", name: "command.reason", label: say("apart.reason"), value: typed["command.reason"] ?? "", needed: true })}${asksPin && pin("choose-pin", say("key.pin_foreman"))}` });
}
