// The photos of the attempt, stage by stage, to be looked at before the decision.

import { grouped } from "../../../group.js";
import { html } from "../../../html.js";
import { photos } from "../../../parts/photos.js";
import { section } from "../../../parts/section.js";
import { say } from "../../../text/say.js";
import { shown } from "../photo.js";

/** Returns the photos of the attempt that is reviewed, folded until somebody looks; open where the attempt is doubtful. */
export function looked(view) {
  const own = view.repair.photos.filter(({ attempt }) => attempt === view.attempt);
  const stages = grouped(own, ({ stage }) => stage);
  return own.length > 0 && section({ id: "looked-at", title: say("signs.photos"), aside: String(own.length), inside: stages.map(([stage, taken]) =>
    html`<details ${stage === "verification" && view.review.doubtful && html`open`} data-key="photos-${stage}"><summary>${say(`stage.${stage}`)}, ${taken.length}</summary>${photos(taken.map((one) => shown(view, one)))}</details>`) });
}
