// One photo, large. Lines drawn over it are kept as a copy; the original stays as it is.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { field } from "../../parts/field.js";
import { LARGE, photo } from "../../parts/photos.js";
import { say } from "../../text/say.js";
import { at, frame, to } from "./frame.js";
import { name } from "./gate.js";
import { ink } from "./sign.js";

const found = (view) => view.repair.photos.find(({ sha256 }) => sha256 === view.params.key);

export const title = (view) => found(view)?.label || say("photo.title");

export function render(view) {
  const one = found(view);
  if (!one) return frame(view, { title: title(view), main: html`<p>${say("mark.none")}</p>`, foot: deck({ act: act({ label: say("photo.back"), mark: "back", href: to(view, "photo") }) }) });
  const id = `mark-${one.sha256}`;
  const open = view.standing === "underway";
  const kept = view.drafts?.[id]?.strokes ?? "[]";
  const drawn = JSON.parse(kept);
  const over = open && html`<canvas class="mark-pad" data-key="pad-${one.sha256}" data-pad="strokes" width="1000" height="750" tabindex="0" role="application" aria-label="${say("mark.pad")}"></canvas><span class="pad-pen"></span>${ink(drawn)}`;
  const large = photo({ sha256: one.sha256, px: LARGE, label: one.label || say("photo.other"), note: "", over });
  return frame(view, {
    title: title(view), mainKind: "stage mark",
    main: open ? form({ id, then: to(view, "photo"), does: { do: "keep_photo", repair: view.repair.id, copy_of: one.sha256 }, inside: html`${large}<div>${facts(of(view, one))}
      <p class="soft">${say("mark.how")} ${say("pad.keys")}</p><input type="hidden" name="strokes" data-as="json" value="${kept}">
      ${field({ id: "mark-label", name: "label", label: say("mark.label"), value: view.drafts?.[id]?.label ?? "" })}${drawn.length > 0 && html`<button type="button" class="way" data-pad-clear><b>${say("mark.clear")}</b></button>`}</div>` })
      : html`${large}<div>${facts(of(view, one))}</div>`,
    foot: deck({ more: [small({ mark: "cross", label: say("photo.back"), href: view.came ?? to(view, "photo") })], act: open ? act({ label: say("mark.act"), note: say("mark.act_note"), mark: "tick", form: id }) : undefined }),
  });
}

const of = (view, one) => [
  { label: say("mark.taken"), value: at(view, one.at.moment.at_ms, true), note: name(view, one.at.person) ?? "" },
  { label: say("mark.stage"), value: say(`stage.${one.stage}`) },
  { label: say("mark.file"), value: say("mark.bytes", { n: Math.round(one.bytes / 1000) }), note: `SHA-256 ${one.sha256.slice(0, 12)}…` },
  ...(one.copy_of ? [{ label: say("mark.copy_of"), value: view.repair.photos.find(({ sha256 }) => sha256 === one.copy_of)?.label || `${one.copy_of.slice(0, 12)}…` }] : []),
];
