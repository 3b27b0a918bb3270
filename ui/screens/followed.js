// The clock of a hold on another phone. Its record is there: nothing on this screen is one.

import { html } from "../html.js";
import { figure, minSec, minutes, range, time, unitOf } from "../format.js";
import { count } from "../parts/count.js";
import { act, deck, gate } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { readings } from "../parts/readings.js";
import { section } from "../parts/section.js";
import { pending, tape } from "../parts/tape.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { figures, label } from "./followed/words.js";

export const title = ({ kind }) => say(kind === "followed" ? "followed.title" : "followed.gone");

export const render = (view) => (view.kind === "followed" ? clock(view) : gone(view));

const at = (view, ms) => time(ms, view.now.offset_min);

function clock(view) {
  const { repair: { id, number, node, street, rehearsal }, restarted } = view;
  return page({
    rehearsal,
    mast: mast({ title: title(view), strong: node || number, where: street, side: [number, at(view, view.now.at_ms)], rehearsal }),
    main: html`<main class="stage two-cols"><div>${counted(view)}${note({ lead: say("followed.record"), text: say("followed.paper"), accent: true })}</div>
      <div>${restarted && note({ lead: say("followed.restarted"), text: say("followed.restarted_text"), accent: true })}${key(view)}
      ${section({ id: "followed-code", title: say("followed.code"), aside: at(view, view.told_ms), kind: "", inside: told(view) })}
      ${way({ label: say("followed.anew"), note: say("followed.anew_note"), mark: "photo", href: "#/follow" })}
      ${way({ label: say("followed.off"), note: say("followed.off_note"), mark: "cross", does: { do: "unfollow", repair: id }, then: "#/" })}</div></main>`,
    deck: deck({ gate: gate(release(view)), act: act({ label: say("followed.take"), note: say("followed.take_note"), href: "#/take" }) }),
  });
}

function gone(view) {
  const { params: { id } } = view;
  const here = view.holding.some(({ summary }) => summary.repair === id);
  return page({
    mast: mast({ title: title(view), where: say("app.name") }),
    main: html`<main class="stack"><p class="lead">${say("followed.gone_text")}</p></main>`,
    deck: deck({ act: here ? act({ label: say("offer.title"), href: `#/repair/${id}` }) : act({ label: say("done.today"), mark: "back", href: "#/" }) }),
  });
}

function counted(view) {
  const { hold } = view;
  const [done, waits, needed] = figures(hold);
  const due = hold.reading_due_ms - view.now.at_ms;
  return html`${count({ figure: String(done), lines: [say("hold.of", { n: needed }), say("followed.counted", { at: at(view, hold.last_ms) })] })}
    ${tape({ n: needed, label: label(hold), parts: [{ kind: "full", m: Math.min(done, needed) }, { kind: "pend", m: Math.min(waits, Math.max(0, needed - done)) }] })}
    ${waits > 0 && pending(say("followed.pending", { n: waits }))}
    ${readings([{ label: say("hold.next_in"), value: minSec(Math.max(0, due)), then: say("followed.every", { at: at(view, hold.reading_due_ms), n: minutes(hold.interval_ms) }) }])}`;
}

const told = (view) => facts([
  { label: say("paper.window"), value: range("bar", view.hold.lower_pa, view.hold.upper_pa) },
  { label: say("today.last"), value: figure("bar", view.hold.last_pa), note: say("today.bar_at", { unit: unitOf("bar"), at: at(view, view.hold.last_ms) }) },
  { label: say("planned.line"), value: `${view.repair.upstream} – ${view.repair.downstream}` },
  { label: say("followed.phone"), value: view.device.slice(0, 8) },
]);

const key = ({ key: known }) => known !== "known" && note({ lead: say(`followed.key_${known}`), text: say(`followed.key_${known}_text`), accent: known === "false" });

const release = (view) => ({
  reason: say(view.now.at_ms < view.hold.earliest_release_ms ? "followed.not_before" : "followed.may_be", { at: at(view, view.hold.earliest_release_ms) }), note: say("followed.if"),
});
