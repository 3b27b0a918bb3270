// Lists of the verification: laterals, photos, the site, and what is still open from earlier stages.

import { html } from "../../../html.js";
import { quantity } from "../../../format.js";
import { conditions } from "../../../parts/conditions.js";
import { section } from "../../../parts/section.js";
import { photos as smallPhotos } from "../../../parts/photos.js";
import { way } from "../../../parts/way.js";
import { say } from "../../../text/say.js";
import { shown } from "../photo.js";
import { answered } from "../fields.js";
import { at, attempt, computed, sending, to, upTo } from "../frame.js";
import { openTask } from "../task.js";

/** Returns what was left while the resin ran, as one row. */
export function earlier(view) {
  const n = view.tasks.filter(({ overdue }) => overdue).length;
  return n > 0 && way({ label: say("verify.earlier", { n }), note: say("verify.earlier_note"), kind: "later", href: to(view, "fill") });
}

/** Returns the laterals under the patch: closed until full cure, then opened. A report is never closed: it may have happened. */
export function laterals(view) {
  const covered = computed(view).covered;
  if (covered.length === 0) return "";
  const opened = (index) => attempt(view).laterals.findLast((one) => one.lateral === index);
  return section({ id: "laterals", title: say("verify.laterals"), aside: say("verify.laterals_count", { covered: covered.length, opened: covered.filter(opened).length }),
    inside: conditions(covered.map((index) => lateral(view, index, opened(index)))) });
}

function lateral(view, index, opened) {
  const { station_um: um, clock } = view.repair.line.laterals[index];
  const text = say("verify.lateral", { at: quantity("m", um), hour: clock });
  if (opened) return { state: "met", text, note: say(opened.coupon ? "verify.opened" : "verify.opened_no_coupon", { pct: opened.open_pct, at: at(view, opened.at.moment.at_ms) }) };
  const early = view.cure && !view.cure.reached;
  return { state: early ? "closed" : "open", text, note: early ? say("verify.closed_until", { at: upTo(view, view.cure.until_ms) }) : say("verify.may_open"), inside: html`<a class="way" href="${to(view, `lateral/${index}`)}"><b>${say("verify.say_opened")}</b></a>` };
}

/** Returns the photos that the contract asks for here. */
export function photos(view) {
  const asks = view.photos.filter(({ stage }) => stage === "verification");
  return asks.length > 0 && section({ id: "photos", title: say("verify.photos"), aside: say("verify.of", { n: asks.filter(({ taken }) => taken).length, of: asks.length }),
    inside: html`${conditions(asks.map(({ key, label, taken }) => ({ state: taken ? "met" : "open", text: label, inside: !taken && html`<a class="way" href="${to(view, `photo/${key}`)}"><b>${say("photos.take")}</b></a>` })))}${thumbs(view)}` });
}

const thumbs = (view) => {
  const own = view.repair.photos.filter(({ attempt, stage }) => attempt === view.attempt && stage === "verification");
  return own.length > 0 && smallPhotos(own.map((one) => shown(view, one)));
};

/** Returns the other tasks; the one that is at hand is asked here. */
export function site(view, tasks, one) {
  const done = tasks.filter(({ answer }) => answer).length;
  return section({ id: "site", title: say("verify.site"), aside: say("verify.of", { n: done, of: tasks.filter(({ mandatory, answer }) => mandatory || answer).length }), inside: html`
    ${conditions([...tasks.filter((task) => task === one).map((task) => openTask(view, task, true)), ...tasks.filter((task) => task !== one).map((task) => row(view, task))])}` });
}

const STATES = { done: "met", does_not_apply: "waived", not_right: "failed" };

const row = (view, task) => ({
  state: task.answer ? STATES[task.answer.kind] : "open", text: task.label, note: task.answer ? answered(view, task) : !task.mandatory && say("verify.if_asked"),
  inside: task.answer?.kind !== "done" && html`<a class="way" href="${to(view, `verify/${task.key}`)}"><b>${say(task.answer ? "tasks.again" : "tasks.answer")}</b></a>`,
});

/** Returns the ways aside: a note, another photo, the end of the attempt. */
export const aside = (view) => section({ id: "aside", title: say("today.more"), inside: html`${way({ label: say("verify.note"), href: to(view, "note") })}${way({ label: say("verify.photo"), href: to(view, "photo") })}${way({ label: say("review.correct"), note: say("review.both_printed"), href: to(view, "correct") })}
  ${way({ label: say("verify.photos_all", { n: view.repair.photos.length }), note: say("verify.record_so_far"), does: { do: "record", repair: view.repair.id } })}${way({ label: say("stop.title"), note: say("verify.stop"), href: to(view, "stop") })}${sending(view)}` });
