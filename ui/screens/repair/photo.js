// A photo that the contract asks for, or another one: two ways to a picture, what is missing, what was taken.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, small } from "../../parts/deck.js";
import { field } from "../../parts/field.js";
import { photos } from "../../parts/photos.js";
import { section } from "../../parts/section.js";
import { shots } from "../../parts/shots.js";
import { problemOf } from "../../parts/problem-list.js";
import { say } from "../../text/say.js";
import { at, frame, to } from "./frame.js";

/** Returns the photos that the contract asks for in a stage: taken or missing. Nothing where it asks for none. */
export function photosAsked(view, stage) {
  const asks = view.photos.filter((photo) => photo.stage === stage);
  const missing = asks.filter(({ taken: there }) => !there).length;
  return asks.length > 0 && section({ id: "photos", title: say("photos.title"), aside: say("photos.of", { n: asks.length - missing, of: asks.length }), inside: asked(view, asks) });
}

const asked = (view, asks) => conditions(asks.map(({ key, label, taken: there }) => ({
  state: there ? "met" : "open", text: label, inside: !there && key !== view.params.key && html`<a class="way" href="${to(view, `photo/${key}`)}"><b>${say("photos.take")}</b></a>`,
})));

export const title = () => say("photo.title");

export function render(view) {
  const one = view.photos.find(({ key }) => key === view.params.key);
  const chosen = view.chosen?.form === "photo" ? view.chosen : undefined;
  return frame(view, {
    title: title(), mainKind: "stage two-cols",
    main: html`<div>${form({
      id: "photo", then: to(view), does: { do: "keep_photo", repair: view.repair.id, ...(one && { key: one.key, label: one.label }) },
      inside: html`<p class="lead">${one ? one.label : say("photo.other")}</p>
        ${!one && field({ id: "photo-label", name: "label", label: say("photo.label"), value: view.drafts?.photo?.label ?? "", needed: true, problem: problemOf(view.problems, "photo-label") })}${shots({ id: "photo", chosen })}`,
    })}<p class="soft">${say("photo.kept")}</p></div><div>${wanted(view)}${taken(view)}</div>`,
    foot: deck({ more: [small({ mark: "cross", label: say("photo.back"), href: view.came?.startsWith(`#/repair/${view.repair.id}`) && !view.came.includes("/photo") ? view.came : to(view) }), ...(one ? [small({ mark: "photo", label: say("photo.another"), href: to(view, "photo") })] : [])],
      act: act({ label: say("photo.act"), note: chosen ? say("photo.act_note") : say("photo.act_first"), mark: "tick", form: "photo" }) }),
  });
}

const wanted = (view) => view.photos.length > 0 && section({
  id: "asked-for", title: say("photos.title"), kind: "", aside: say("photos.open", { n: view.photos.filter((one) => !one.taken).length }),
  inside: asked(view, view.photos),
});

/** Returns the photos of the attempt, small; nothing before the first. */
export const taken = (view, stage) => {
  const own = view.repair.photos.filter((one) => one.attempt === view.attempt && (!stage || one.stage === stage));
  return own.length > 0 && section({ id: "taken", title: say("photos.taken"), aside: String(own.length), inside: photos(own.map((one) => shown(view, one))) });
};

/** Returns what a small photo says of itself. */
export const shown = (view, { sha256, label, at: stamp, copy_of: copy }) => ({
  sha256, label: label || say("photo.other"), href: to(view, `mark/${sha256}`),
  note: [at(view, stamp.moment.at_ms), copy && say("mark.is_copy")].filter(Boolean).join(", "),
});
