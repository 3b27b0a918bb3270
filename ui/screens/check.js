// Check a record that somebody brings: the verdict, the chain, what was looked at, what it says. Nothing leaves this device.

import { html } from "../html.js";
import { chain } from "../drawings/chain.js";
import { figure } from "../drawings/svg.js";
import { form } from "../parts/action.js";
import { conditions } from "../parts/conditions.js";
import { act, deck } from "../parts/deck.js";
import { file } from "../parts/field.js";
import { icon } from "../parts/icon.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say, within } from "../text/say.js";
import { keys } from "./check/keys.js";
import { originals } from "./check/originals.js";
import { told } from "./check/told.js";

export const title = (view) => (view.finding ? view.name : say("check.title"));

const MARKS = { valid: "tick", changed: "cross", unreadable: "cross", rehearsal: "rehearsal" };

export const render = (view) => page({
  mast: mast({ title: title(view), where: say(view.finding ? "check.title" : "app.name"), side: [say("check.stays")] }),
  main: html`<main class="check ${view.finding && `check-${view.finding}`}">${view.finding && html`${verdict(view)}${drawn(view)}
    <div class="check-cols"><div>${looked(view)}${originals(view)}</div><div>${keys(view)}${told(view)}</div></div>`}
    ${form({ id: "check", does: { do: "check_record" }, inside: html`${file({ id: "record", name: "bytes", label: say(view.finding ? "check.other" : "check.file"), accept: ".pdf,.json,application/pdf,application/json", named: true })}<p class="soft">${say("check.what")}</p>` })}</main>`,
  deck: deck({ act: act({ label: say("check.act"), note: say("check.act_note"), form: "check" }) }),
});

const verdict = ({ finding, says, looked: all }) => html`<section class="verdict" aria-live="polite" tabindex="-1" data-focus data-key="verdict"><div class="verdict-mark">${icon(MARKS[finding])}</div><h2>${say(`check.${finding}`)}</h2>
  <p class="verdict-lead">${says} ${say(photoAlone(all) ? "check.photo_lead" : `check.${finding}_lead`)}</p></section>`;

// Where nothing but an original photo was changed, the file itself is as it was.
const photoAlone = (all) => {
  const wrong = all.filter(({ right }) => !right);
  return wrong.length === 1 && wrong[0].at === "originals";
};

// The stages stand where they begin; an entry that does not fit stands below.
function drawn({ entries, flags, breaks_at: broken }) {
  if (entries === 0) return "";
  return figure({ kind: "chain", inside: chain({
    entries, label: say("check.chain", { n: entries }), flags: roomy(flags, entries),
    broken: broken === null ? undefined : { entry: broken, says: say("check.breaks", { n: broken }) },
  }) });
}

/** The width of the drawing in px on a laptop and on a phone, and of a letter. */
const [WIDE, NARROW, LETTER] = [1150, 320, 7.5];

// A name that would run into the one before it is left out; one that would on a phone is left out there.
function roomy(flags, entries) {
  const named = flags.map(({ entry, stage }) => ({ entry, name: within(say(`stage.${stage}`)) }));
  const wide = fitting(named, entries, WIDE);
  const narrow = fitting(wide, entries, NARROW);
  return wide.map((flag) => ({ ...flag, minor: !narrow.includes(flag) }));
}

function fitting(flags, entries, width) {
  let free = 0;
  return flags.filter(({ entry, name }) => {
    const from = (entry / entries) * width;
    const fits = from >= free && from + name.length * LETTER < width - 6 * LETTER;
    if (fits) free = from + (name.length + 1) * LETTER;
    return fits;
  });
}

const looked = ({ looked: all, entries, head }) => all.length > 0 && section({ id: "looked", title: say("check.looked"), kind: "", inside: conditions(all.map(({ at, right }) => ({
  state: right ? "met" : "failed", text: say(`looked.${at}${right ? "" : "_wrong"}`), note: say(`looked.${at}_note`, { n: right ? entries : 0, head: head.slice(0, 12) }),
})), "checks") });
