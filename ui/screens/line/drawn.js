// The line in side view with everything that was seen in it.

import { defectsView } from "../../drawings/line.js";
import { figure } from "../../drawings/svg.js";
import { note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { short, stations } from "./seen.js";

/** As many marks as stand side by side without running into each other; the list has them all. */
const MARKS = 12;

/** Returns the drawing, or why there is none. */
export function drawn({ listed, against_flow: against }, shown, picked) {
  if (!listed.length_um || against === null) return note({ text: say("line.no_drawing") });
  const placed = shown.filter((one) => stations(one));
  const first = placed.filter((one) => picked.includes(one.index) || !one.lateral);
  const marks = [...first, ...placed.filter((one) => !first.includes(one))].slice(0, MARKS);
  return figure({
    inside: defectsView({ nodes: [listed.upstream, listed.downstream], length_m: listed.length_um / 1e6, observations: marks.map((one) => mark(one, picked)), label: say("line.drawing", { n: shown.length, from: listed.upstream, to: listed.downstream }) }),
    caption: `${say("line.caption", { node: listed.upstream })}${placed.length > MARKS ? ` ${say("line.more", { n: placed.length - MARKS })}` : ""}`,
  });
}

function mark(one, picked) {
  const [from, to] = stations(one);
  const ranged = one.clock_from && one.clock_to && one.clock_from !== one.clock_to;
  return { at_m: (from + to) / 2e6, name: short(one), picked: picked.includes(one.index), minor: one.lateral, arc: ranged ? [one.clock_from, one.clock_to] : undefined, dots: one.clock_from && !ranged ? [one.clock_from] : undefined };
}
