// Repairs to another device: which, and the file that is made of them.

import { number } from "../format.js";
import { html } from "../html.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { moved } from "../parts/moved.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";

export const title = (view) => say(view.kind === "made" ? "send.made" : "send.title");

export const render = (view) => (view.kind === "made" ? made(view) : asked(view));

/** Returns digits in groups of four, to be read out. */
export const grouped = (digits) => digits.match(/.{1,4}/g)?.join(" ") ?? "";

const FORM = "send-form";

function asked(view) {
  const typed = view.drafts?.[FORM] ?? {};
  const picked = typed.repairs ?? (view.params.repair ? [view.params.repair] : []);
  return page({
    mast: mast({ title: title(view), where: say("app.name") }),
    main: html`<main class="stack two-cols"><div>${view.repairs.length === 0 ? html`<p class="lead">${say("send.none")}</p>` : form({ id: FORM, does: { do: "pack" }, inside: html`
      ${choice({ legend: say("send.pick"), aside: say("send.pick_note"), name: "repairs", several: true, picked, options: listed(view) })}
      ${since(view, typed)}` })}</div><div>${moved(view, "send.saving")}${note({ text: say("send.kept") })}${key(view)}</div></main>`,
    deck: deck({ act: view.repairs.length > 0 ? act({ label: say("send.act"), note: say("send.act_note"), form: FORM }) : act({ label: say("done.today"), mark: "back", href: "#/" }) }),
  });
}

// The repair that one came from stands first, even where it is too old to be listed.
function listed({ repairs, params: { repair: id } }) {
  const first = id && (repairs.find(({ repair }) => repair === id) ?? { repair: id, number: id.slice(0, 8) });
  return [...(first ? [first] : []), ...repairs.filter((one) => one !== first)].map(option);
}

// A repair as it stands in the lists, to be ticked.
function option(one) {
  const nodes = one.upstream || one.downstream ? say("today.line", { from: one.upstream, to: one.downstream }) : "";
  return { value: one.repair, strong: one.number, note: [nodes, one.street].filter(Boolean).join(" · ") };
}

const since = (view, typed) => html`<label class="field" for="send-since">${say("send.since")}
  <input id="send-since" name="since_ms" type="datetime-local" value="${typed.since_ms ?? ""}" data-as="time" data-offset="${view.now?.offset_min ?? 0}"></label>`;

const key = (view) => section({ id: "own-key", title: say("send.key"), inside: html`<p class="hash">${grouped(view.key)}</p><p class="soft">${say("send.key_note")}</p>` });

function made(view) {
  const { name, bytes, repairs, photos, missing, params } = view;
  return page({
    mast: mast({ title: title(view), where: say("send.title") }),
    main: html`<main class="stack wide">${moved(view, "send.saving")}${facts([
      { label: name, value: say("send.size", { mb: number(bytes / 1e6, 1) }), note: say("send.made_n", { repairs, photos }) },
    ])}${missing > 0 && note({ text: say("send.missing", { n: missing }), accent: true })}${note({ text: say("send.half") })}
    ${way({ label: say("send.save_again"), note: name, does: { do: "piece", name, from: 0, bytes } })}
    ${way({ label: say("take.title"), note: say("take.note"), href: "#/take" })}</main>`,
    deck: deck({ act: act({ mark: "back", ...(params.repair ? { label: say("sign.back"), note: say("sign.back_note"), href: `#/repair/${params.repair}` } : { label: say("done.today"), href: "#/" }) }) }),
  });
}

