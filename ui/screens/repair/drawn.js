// The line as the plan says it, for every screen that asks for a distance.

import { quantity } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { lineView } from "../../drawings/line.js";
import { say } from "../../text/say.js";

/**
 * Returns the drawing of the line with the packer at its place, to scale along the pipe. `patch` false draws it dry, `kind` is
 * a class of the figure, `says` the words below it. `at_m` rules another station than the middle of the patch, as somebody
 * types it; `beyond_m` draws packer and patch so far past their mark.
 */
export function lineOf(view, { patch: loaded = true, kind, says, at_m: asked, beyond_m: beyond = 0 } = {}) {
  const { line, plan } = view.repair;
  if (!plan) return "";
  const patch = plan.computed.patches[0];
  const upstream = plan.choice.from_node === "upstream";
  const station = (patch.from_um + patch.to_um) / 2 + (upstream ? 1 : -1) * beyond * 1e6;
  const ruled = asked === undefined || asked * 1e6 > line.length_um ? station : asked * 1e6;
  const label = say(ruled === station ? "drawn.line" : "drawn.asked", { at: quantity("m", ruled), node: line.upstream.name });
  const { choice } = plan;
  const place = { at_m: station / 1e6, length_m: (patch.to_um - patch.from_um) / 1e6 };
  return figure({
    kind,
    inside: lineView({
      label,
      length_m: line.length_um / 1e6,
      nodes: [line.upstream.name, line.downstream.name],
      laterals_m: line.laterals.map(({ station_um: um }) => um / 1e6),
      target_m: ruled / 1e6,
      // Near the reading point the figure would run into its name; the caption says it anyway.
      target_named: ruled > line.length_um * 0.3,
      packer: { at_m: station / 1e6, length_m: plan.packer.body_um / 1e6 },
      patch: loaded ? place : undefined,
      hose_from: upstream ? "start" : "end",
      rope_from: choice.way_in === "rope" ? (upstream ? "end" : "start") : undefined,
    }),
    caption: says ?? label,
  });
}
