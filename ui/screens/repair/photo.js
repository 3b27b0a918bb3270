// Photos: what the contract asks for in this stage, and the screen that keeps one.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, small } from "../../parts/deck.js";
import { field, file } from "../../parts/field.js";
import { section } from "../../parts/section.js";
import { problemOf } from "../../parts/problem-list.js";
import { say } from "../../text/say.js";
import { frame, to } from "./frame.js";

/** Returns the photos that the contract asks for in a stage: taken or missing. Nothing where it asks for none. */
export function photosAsked(view, stage) {
  const asks = view.photos.filter((photo) => photo.stage === stage);
  const missing = asks.filter(({ taken }) => !taken).length;
  return asks.length > 0 && section({ id: "photos", title: say("photos.title"), aside: say("photos.of", { n: asks.length - missing, of: asks.length }),
    inside: conditions(asks.map((photo) => ({ state: photo.taken ? "met" : "open", text: photo.label, inside: !photo.taken && html`<a class="way" href="${to(view, `photo/${photo.key}`)}"><b>${say("photos.take")}</b></a>` }))) });
}

export const title = () => say("photo.title");

/** The screen of one photo: one that is asked for, or another one. */
export function render(view) {
  const asked = view.photos.find(({ key }) => key === view.params.key);
  const others = view.photos.filter(({ key, taken }) => !taken && key !== asked?.key);
  return frame(view, {
    title: title(),
    main: html`${form({
      id: "photo-form", kind: "stack", then: to(view), does: { do: "keep_photo", repair: view.repair.id, ...(asked && { key: asked.key, label: asked.label }) },
      inside: html`<p class="lead">${asked ? asked.label : say("photo.other")}</p>
        ${!asked && field({ id: "photo-label", name: "label", label: say("photo.label"), value: view.drafts?.["photo-form"]?.label ?? "", needed: true, problem: problemOf(view.problems, "photo-label") })}
        ${file({ id: "photo-camera", name: "bytes", label: say("photo.camera"), accept: "image/*", camera: true, problem: problemOf(view.problems, "photo-camera") })}
        ${file({ id: "photo-file", name: "bytes", label: say("photo.gallery"), accept: "image/*" })}<p class="soft">${say("photo.kept")}</p>`,
    })}
    ${others.length > 0 && section({ id: "photos", title: say("photos.title"), aside: say("photos.open", { n: others.length }), inside: others.map(({ key, label }) => html`<a class="way" href="${to(view, `photo/${key}`)}"><b>${label}</b></a>`) })}`,
    foot: deck({ more: [small({ mark: "cross", label: say("stop.back"), href: to(view) }), small({ mark: "note", label: say("deck.note"), href: to(view, "note") })], act: act({ label: say("photo.act"), note: say("photo.act_note"), mark: "tick", form: "photo-form" }) }),
  });
}
