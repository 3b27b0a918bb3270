// The line with hose, rope, mark and patch, and the detail at the defect.

import { html } from "../../html.js";
import { detail } from "../../drawings/detail.js";
import { lineView } from "../../drawings/line.js";
import { figure } from "../../drawings/svg.js";
import { down, quantity, unitOf } from "../../format.js";
import { say } from "../../text/say.js";

const mm = (um) => Math.floor(um / 1000);

/** Returns both drawings of what the core computed of the place. */
export function pictures({ repair: { repair }, proposal, shelf }, place) {
  const { line, defect } = repair;
  const { choice } = proposal;
  const packer = shelf.packers.find(({ id }) => id === choice.packer);
  const [patch] = place.patches;
  const upstream = choice.from_node === "upstream";
  const [here, there] = upstream ? [line.upstream.name, line.downstream.name] : [line.downstream.name, line.upstream.name];
  const long = patch.to_um - patch.from_um;
  const cover = [mm(place.cover.upstream_um), mm(place.cover.downstream_um)];
  return html`<div class="plan-draw">${figure({
    inside: lineView({
      label: say("plan.drawing", { from: line.upstream.name, to: line.downstream.name, at: quantity("m", place.from_upstream_um) }),
      length_m: line.length_um / 1e6, nodes: [line.upstream.name, line.downstream.name], laterals_m: line.laterals.map(({ station_um: um }) => um / 1e6),
      target_m: place.from_upstream_um / 1e6, detail: true, packer: { at_m: place.from_upstream_um / 1e6, length_m: (packer?.body_um ?? long) / 1e6 }, patch: { at_m: place.from_upstream_um / 1e6, length_m: long / 1e6 },
      hose_from: upstream ? "start" : "end", rope_from: choice.way_in === "rope" ? (upstream ? "end" : "start") : undefined,
    }),
    caption: html`${say(`plan.caption_${choice.way_in}`, { here, there })}; <b>${say("plan.caption_read", { at: say(`reading_point.${choice.reading_point.kind}`) })}</b>. ${choice.below ? say("plan.caption_below", { who: choice.below }) : say("plan.caption_nobody")} ${say("plan.caption_scale")}`,
  })}${figure({ flush: true, inside: detail({
    packer_mm: mm(packer?.body_um ?? long), patch_mm: mm(long), defect_mm: mm(defect.to_um - defect.from_um), offset_mm: place.offset_um / 1000, cover_mm: cover, hose_left: upstream,
    label: say("plan.detail", { patch: quantity("mm", long), up: down("mm", place.cover.upstream_um), down: `${down("mm", place.cover.downstream_um)}\u00a0${unitOf("mm")}` }),
  }), caption: html`<b>${say("plan.detail_name")}</b>${say("plan.detail_caption", { n: place.cover.errors.length, unit: unitOf("mm") })}` })}</div>`;
}
