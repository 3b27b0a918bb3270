// Repairs from another device: the file that carries them, and what came of it.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { field, file } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { moved } from "../parts/moved.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { problemOf } from "../parts/problem-list.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { grouped } from "./send.js";

const news = ({ repairs }) => repairs.some(({ fresh }) => fresh > 0);

export const title = (view) => (view.kind === "taken" ? say(news(view) ? "take.done" : "take.nothing_new") : say("take.title"));

export const render = (view) => (view.kind === "taken" ? taken(view) : asked(view));

const asked = (view) => page({
  mast: mast({ title: title(view), where: say("app.name") }),
  main: html`<main class="stack wide">${moved(view, "take.bringing")}${form({ id: "take", large: true, does: { do: "take_in" }, inside: html`
    ${file({ id: "take-file", name: "file", label: say("take.file"), accept: ".mendline", problem: problemOf(view.problems, "take-file") })}
    ${field({ id: "take-key", name: "key", label: say("take.key"), value: view.drafts?.take?.key ?? "" })}<p class="soft">${say("take.key_note")}</p>` })}
    ${view.known?.length > 0 && note({ text: say("take.known", { n: view.known.length }) })}${note({ text: say("send.half") })}
    ${section({ id: "take-without", title: say("follow.no_file"), inside: way({ label: say("follow.title"), note: say("follow.note"), mark: "photo", href: "#/follow" }) })}</main>`,
  deck: deck({ act: act({ label: say("take.act"), note: say("take.act_note"), form: "take" }) }),
});

const taken = (view) => page({
  mast: mast({ title: title(view), where: say("take.title") }),
  main: html`<main class="stack wide">${view.first_met && note({ lead: say("take.first"), text: say("take.first_text"), accent: true })}${facts([
    { label: say("take.from"), value: view.device.slice(0, 8) },
    { label: say("take.its_key"), value: html`<span class="hash">${grouped(view.key)}</span>` },
    ...(view.photos > 0 ? [{ label: say("take.photos"), value: String(view.photos) }] : []),
  ])}${section({ id: "taken", title: say("send.pick"), aside: String(view.repairs.length), inside: view.repairs.map(one) })}</main>`,
  deck: deck({ act: act({ label: say("done.today"), mark: "back", href: "#/" }) }),
});

const one = ({ repair, number, fresh, heads }) => way({
  label: number, note: [say("take.fresh", { n: fresh }), heads > 1 && say("take.apart", { n: heads })].filter(Boolean).join(". "),
  href: heads > 1 ? `#/repair/${repair}/branches` : `#/repair/${repair}`,
});
