// Detail A: what lies at the defect, to one scale. Cover is what is left on each side.

import { html } from "../html.js";
import { down, figure } from "../format.js";
import { say } from "../text/say.js";
import { at, bar, drawing, line, pct, text } from "./svg.js";

/**
 * Returns the detail. Lengths in mm: `packer_mm`, `patch_mm`, `defect_mm`; `offset_mm` moves the patch towards the right;
 * `cover_mm` is [left, right] after the errors; `hose_left` says on which side the hose comes in.
 */
export function detail({ packer_mm: packer, patch_mm: patch, defect_mm: defect, offset_mm: offset = 0, cover_mm: cover, hose_left: left = true, label }) {
  const whole = Math.max(2 * packer, packer + 400);
  const x = (mm) => pct(whole / 2 + mm, whole);
  const [from, to] = [offset - patch / 2, offset + patch / 2];
  return drawing({ height: 162, label, inside: html`${wall()}
    ${line(left ? "d-heavy" : "d-dash", "0%", 67, x(offset - packer / 2), 67)}${line(left ? "d-dash" : "d-heavy", x(offset + packer / 2), 67, "100%", 67)}
    ${text("0%", 58, say(left ? "line.hose" : "line.rope"))}${text("100%", 58, say(left ? "line.rope" : "line.hose"), { end: "end" })}
    <svg x="${x(offset - packer / 2)}" y="36" width="${pct(packer, whole)}" height="62"><rect class="d-packer" width="100%" height="100%" rx="14"/></svg>
    ${bar(x(from), 31, pct(patch, whole), 7, "d-patch")}${bar(x(from), 96, pct(patch, whole), 7, "d-patch")}
    ${crack(defect, whole)}${line("d-dash", x(0), 6, x(0), 160)}
    ${text(x(offset), 58, say("detail.patch", { n: figure("mm", patch * 1e3) }), { end: "middle", bold: true, halo: true })}
    ${text(x(offset), 79, say("detail.packer", { n: figure("mm", packer * 1e3) }), { end: "middle", halo: true })}
    ${line("d-thin", x(from), 134, x(to), 134)}${[from, -defect / 2, defect / 2, to].map((mm) => html`${line("d-faint", x(mm), 118, x(mm), 139)}${at(x(mm), 134, html`<path class="d-line" d="M-4 4L4 -4"/>`)}`)}
    ${text(x(from), 138, say("detail.cover_left", { n: down("mm", cover[0] * 1e3) }), { dx: -10, end: "end", bold: true })}
    ${text(x(to), 138, say("detail.cover_right", { n: down("mm", cover[1] * 1e3) }), { dx: 10, bold: true })}
    ${text(x(0), 153, say("detail.defect", { n: figure("mm", defect * 1e3) }), { end: "middle", halo: true })}` });
}

const wall = () => html`${bar("0", 21, "100%", 9, "d-ground")}${bar("0", 104, "100%", 9, "d-ground")}
  ${[30, 104].map((y) => line("d-line", "0%", y, "100%", y))}${[21, 113].map((y) => line("d-faint", "0%", y, "100%", y))}`;

// A zigzag through the wall over the length of the defect.
function crack(defect, whole) {
  const teeth = 9;
  const x = (i) => pct(whole / 2 - defect / 2 + (i * defect) / teeth, whole);
  return Array.from({ length: teeth }, (_, i) => line("d-line", x(i), i % 2 ? 21 : 30, x(i + 1), i % 2 ? 30 : 21));
}
