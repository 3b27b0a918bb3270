// Verification: what the camera shows, laterals, photos, the site. One act at a time; what was touched last comes first.

import { html } from "../../html.js";
import { act, deck } from "../../parts/deck.js";
import { say } from "../../text/say.js";
import { frame, to } from "./frame.js";
import { strip } from "./gate.js";
import { cureCard, found } from "./verification/found.js";
import { aside, earlier, laterals, photos, site } from "./verification/lists.js";
import { worked } from "./worked.js";
import { SEEN, seen } from "./verification/seen.js";

export const title = () => say("stage.verification");

export function render(view) {
  const own = view.tasks.filter(({ stage }) => stage === "verification");
  const one = current(view, own);
  return frame(view, {
    title: title(), mainKind: "stage verify",
    main: html`${cureCard(view)}${earlier(view)}${found(view)}
      ${SEEN.flatMap((kind) => own.filter((task) => task.kind === kind)).map((task) => seen(view, task))}
      ${laterals(view)}${photos(view)}${site(view, own.filter(({ kind }) => !SEEN.includes(kind)), one)}${worked(view, "verification")}${aside(view)}`,
    foot: deck({ gate: strip(view, say("next.verdict")), act: next(view, one) }),
  });
}

// What somebody has begun to fill in, or else the first that is open.
function current(view, own) {
  const touched = (task) => Object.keys(view.drafts?.[`task-${task.key}`] ?? {}).length > 0;
  const open = own.filter(({ answer, mandatory }) => !answer && mandatory);
  return own.find(({ key }) => key === view.params.key) ?? own.find(touched) ?? open[0];
}

function next(view, one) {
  if (one) return act({ label: one.label, note: say("tasks.records"), mark: "tick", form: `task-${one.key}` });
  const photo = view.photos.find(({ taken, stage }) => !taken && stage === "verification");
  if (photo) return act({ label: say("photos.take"), note: photo.label, mark: "photo", href: to(view, `photo/${photo.key}`) });
  const late = view.tasks.filter(({ overdue }) => overdue).length;
  if (late > 0) return act({ label: say("verify.fill"), note: say("verify.fill_note", { n: late }), href: to(view, "fill") });
  if (view.next.act === "at_the_mark") return act({ label: say("rest.go"), note: say("rest.text"), href: to(view, "rest") });
  if (view.next.act === "open_lateral") return act({ label: say("lateral.act"), note: say("lateral.note"), href: to(view, `lateral/${view.next.key}`) });
  // What nobody photographed while it was to be seen is the foreman's to judge: a picture of now would show something else.
  return act({ label: say("review.go"), note: say("review.go_note", { n: view.review.open }), href: to(view, "review") });
}
