// Walks a repair through its stages by asking the core, as a crew would tap, so that tests and pictures begin in any stage.

import { readFile } from "node:fs/promises";

const EXAMPLE = new URL("../../fixtures/inspections/quillmere.txt", import.meta.url);

/** Returns { ask, tell } for an address that `mendline serve` printed. Every answer that is no `ok` is thrown. */
export function asker(address) {
  const { origin, hash } = new URL(address);
  const token = hash.replace("#token=", "");
  let n = 0;
  const raw = async (request, person = "ekdal") => {
    n += 1;
    const body = JSON.stringify({ id: `walk-${Date.now()}-${n}`, person, request });
    const reply = await fetch(`${origin}/ask`, { method: "POST", headers: { "content-type": "application/json", "x-mendline-token": token, origin }, body });
    return reply.json();
  };
  const ask = async (request, person) => {
    const answer = await raw(request, person);
    if (!answer.ok) throw new Error(`${JSON.stringify(request).slice(0, 200)}: ${JSON.stringify(answer.refusal?.broken.map(({ says }) => says) ?? answer.error)}`);
    return answer.ok;
  };
  return { ask, raw };
}

/** A repair on its way through the stages. */
export class Walk {
  constructor({ ask }) { this.ask = ask; }

  /** Takes the examples and the example inspection, and opens the crack of Kettle Row. */
  async open({ rehearsal = false, number = "" } = {}) {
    const shelf = await this.ask({ do: "shelf" });
    if (shelf.contracts.length === 0) await this.ask({ do: "take_examples" });
    const bytes = (await readFile(EXAMPLE)).toString("base64");
    const { files } = await this.ask({ do: "import_inspection", name: "quillmere.txt", bytes });
    const { file, inspections } = files.find(({ name }) => name === "quillmere.txt");
    const line = inspections.find((one) => one.line === "SS-03107");
    const view = await this.ask({ do: "inspection", file, index: line.index });
    const crack = view.observations.find((one) => one.code === "BAB B A" && one.other_end !== null);
    this.view = await this.ask({ do: "open_from_inspection", file, index: line.index, observations: [crack.index], contract: "QM-2026-31", rehearsal, number, video_before: "V-031-A" });
    this.id = this.view.repair.id;
    return this;
  }

  async plan(change = {}) {
    const { proposal } = await this.ask({ do: "plan", repair: this.id });
    const warm = { resin_mc: 19_200, air_mc: 13_100, pipe_mc: 12_800, water_mc: 13_400 };
    const choice = { ...(proposal.choice ?? (await this.choice())), diameter_least_um: 196_500, diameter_most_um: 199_000, diameter_measured: true, temperatures: warm, head_um: 800_000, ...change };
    choice.reading_point = { ...choice.reading_point, offset_um: 400_000 };
    this.view = await this.ask({ do: "accept_plan", repair: this.id, choice });
    return this;
  }

  async tell(command, person) {
    this.view = await this.ask({ do: "tell", repair: this.id, command }, person);
    return this;
  }

  report(happening, minutesAgo = 0) { return this.tell({ command: "report", happening, ...(minutesAgo > 0 && { ago_ms: Math.round(minutesAgo * 60_000) }) }); }

  goOn() { return this.tell({ command: "go_on" }); }

  /** Answers every open task of the stages named, and keeps the photos that are asked for. */
  async answer(...stages) {
    for (const task of this.view.tasks.filter((one) => stages.includes(one.stage) && !one.answer && one.mandatory)) {
      await this.tell({ command: "answer", task: task.key, answer: { kind: "done", values: this.values(task) } });
    }
    for (const photo of this.view.photos.filter((one) => stages.includes(one.stage) && !one.taken)) {
      this.view = await this.ask({ do: "keep_photo", repair: this.id, key: photo.key, label: photo.label, bytes: JPEG });
    }
    return this;
  }

  values(task) {
    const now = Date.now();
    const numbers = { at_ms: now, until_ms: now + 8 * 3600e3, least_um: 196_500, most_um: 199_000, gauge_pa: 50_000, held_ms: 300_000, drop_pa: 0, stored_least_mc: 10_000, stored_most_mc: 20_000,
      resin_mc: 19_200, air_mc: 13_100, pipe_mc: 12_800, front_um: 198_000, rear_um: 202_000, mass_a_mg: 812_000, mass_b_mg: 406_000, mixed_ms: 190_000, oxygen_permille: 209, pct: 88, hour: 5, mass_g: 2_000, height_um: 2_000, carbon_monoxide_ppm: 2, outside_pa: 101_300 };
    const texts = { expires_a: "2030-02-11", expires_b: "2030-02-09", lot_a: "26-0811-A", lot_b: "26-0809-B", lot_patch: "GM-5512", gauge: "G-04", thermometer: "T-09", counter: "C-02", number: "CS-1014-1", entry: "none", how: "weighed", where_to: "Quillmere yard", what: "gloves, wipes" };
    return Object.fromEntries(task.fields.filter((one) => !one.optional || ["mass_a_mg", "mass_b_mg", "outside_pa"].includes(one.key)).map(({ key, shape }) => {
      if (shape.kind === "number" || shape.kind === "time") return [key, numbers[key] ?? shape.least ?? 0];
      if (shape.kind === "choice" && !texts[key]) return [key, shape.options[0][0]];
      return [key, texts[key] ?? "as planned"];
    }));
  }

  /** Goes to the beginning of a stage; everything before it as planned. */
  async to(stage) {
    const steps = {
      staging: () => this.goOn(),
      test_push: async () => { await this.answer("staging"); await this.goOn(); },
      sleeve_change: async () => {
        await this.report({ what: "push_begun" }, 6);
        await this.report({ what: "mark_reached" }, 1);
        await this.report({ what: "packer_back", sound: true });
        await this.answer("test_push");
        await this.goOn();
      },
      wet_out: async () => { await this.answer("sleeve_change"); await this.goOn(); },
      joined: async () => { await this.go(); await this.report({ what: "joined" }); },
      hold: async () => { await this.report({ what: "target_reached", gauge_pa: 130_000 }); },
      deflation: async () => {
        await this.report({ what: "reading", gauge_pa: 130_000, pipe_mc: 12_800, upstream_um: 300_000, by: "hand", gauge: "G-04" });
        await this.report({ what: "sample_felt", hard: true });
        await this.waive("hold_short", "");
        await this.tell({ command: "release" });
      },
      verification: async () => { await this.answer("deflation"); await this.goOn(); },
    };
    for (const [name, step] of Object.entries(steps)) {
      await step();
      if (name === stage) return this;
    }
    throw new Error(`no stage ${stage}`);
  }

  go() { return this.tell({ command: "second_go", temperatures: { resin_mc: 19_200, air_mc: 13_100, pipe_mc: 12_800 } }); }

  waive(rule, subject) { return this.tell({ command: "waive", rule, subject, reason: "Looked at on the street.", foreman: "varga" }); }
}

// The smallest picture that is one: a grey dot.
export const JPEG = "/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wAALCAABAAEBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAACf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AVN//2Q==";
