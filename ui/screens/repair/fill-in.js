// What was left while the resin ran. Each answer is marked late.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, usual } from "../../parts/deck.js";
import { say } from "../../text/say.js";
import { frame, to } from "./frame.js";
import { asked } from "./tasks.js";

export const title = () => say("fill.title");

export function render(view) {
  const open = view.tasks.filter((task) => !task.answer && task.mandatory);
  const one = open.find((task) => task.key === view.params.key) ?? open[0];
  const photos = view.photos.filter((photo) => !photo.taken);
  return frame(view, {
    title: title(),
    main: html`<p class="lead">${say("fill.text", { n: open.length })}</p>
      ${one && asked(view, one)}
      ${conditions(open.filter((task) => task !== one).map((task) => ({ state: "open", text: task.label, inside: html`<a class="way" href="${to(view, `fill/${task.key}`)}"><b>${say("tasks.answer")}</b></a>` })))}
      ${conditions(photos.map((photo) => ({ state: "open", text: photo.label, inside: html`<a class="way" href="${to(view, `photo/${photo.key}`)}"><b>${say("photos.take")}</b></a>` })))}`,
    foot: one
      ? deck({ more: usual({ repair: view.repair.id }), act: act({ label: one.label, note: say("fill.late"), mark: "tick", form: `task-${one.key}` }) })
      : deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("fill.done"), note: say("fill.done_note"), href: to(view) }) }),
  });
}
