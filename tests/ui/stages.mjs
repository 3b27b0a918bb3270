// One repair in each state of its stages, on a real core, as a crew would tap it.

import { Walk } from "./walk.mjs";

/** The whole working time of the example plan at the example temperatures, in ms, from the second go. */
export const workingTime = (repair) => repair.view.repair.attempts.at(-1).second_go.budget.working_ms;

/** Yields { name, hash } of each state in turn; the repair stands there until the next one is asked for. */
export async function* stages(api) {
  for (const part of [staging, push, joining, timeOver, holding, release, others]) yield* part(api);
}

const planned = async (api, number, options = {}) => (await new Walk(api).open({ number, ...options })).plan();
const at = async (api, stage, number, options) => (await planned(api, number, options)).to(stage);
const here = (name, { id }, side = "") => ({ name, hash: `#/repair/${id}${side}` });
const discard = (repair) => repair.tell({ command: "end_attempt", outcome: "discarded", reasons: ["The hose burst."], in_pipe: "Nothing of it is in the pipe." });

async function* staging(api) {
  const repair = await planned(api, "R-07");
  yield here("planned", repair);
  await repair.goOn();
  yield here("staging", repair);
  await repair.tell({ command: "answer", task: "weather", answer: { kind: "not_right", because: "rain from the west" } });
  const late = ["packer_test", "rope", "weather"];
  for (const task of repair.view.tasks.filter(({ key, stage }) => stage === "staging" && !late.includes(key))) await repair.tell({ command: "answer", task: task.key, answer: { kind: "done", values: repair.values(task) } });
  yield here("staging, late", repair);
  await repair.tell({ command: "answer", task: "weather", answer: { kind: "done" } });
  await repair.answer("staging");
  yield here("staging, done", repair);
  yield here("photo", repair, "/photo");
  yield here("note", repair, "/note");
}

async function* push(api) {
  const repair = await at(api, "test_push", "R-08");
  yield here("push, begin", repair);
  await repair.report({ what: "push_begun" }, 3);
  yield here("push", repair);
  await repair.report({ what: "mark_reached" });
  yield here("push, back", repair);
  await repair.report({ what: "packer_back", sound: true });
  yield here("push, tasks", repair);
  const slow = await at(api, "test_push", "R-09");
  await slow.report({ what: "push_begun" }, 25);
  await slow.report({ what: "mark_reached" });
  yield here("push, no go", slow);
  yield here("sleeve change", await at(api, "sleeve_change", "R-10"));
}

async function* joining(api) {
  const repair = await at(api, "wet_out", "R-11");
  yield here("second go", repair);
  await repair.go();
  yield here("go", repair, "/go");
  yield here("join", repair);
  yield here("joined, minutes ago", repair, "/ago/joined");
  await repair.report({ what: "joined" }, 13);
  yield here("runs", repair);
  yield here("fill in", repair, "/fill");
  yield here("stop, mixed", repair, "/stop");
  await discard(repair);
  for (const [name, left] of [["half", 12], ["ten", 8], ["five", 4], ["one", 0.7]]) {
    const pressed = await at(api, "wet_out", "R-12");
    await pressed.go();
    await pressed.report({ what: "joined" }, workingTime(pressed) / 60_000 - left);
    yield here(`runs, ${name}`, pressed);
    await discard(pressed);
  }
}

async function* timeOver(api) {
  const repair = await at(api, "wet_out", "R-13");
  await repair.go();
  await repair.report({ what: "joined" }, 34);
  yield here("time over", repair);
  for (const place of ["on_table", "in_pipe", "touching_wall", "stuck"]) {
    await repair.report({ what: "patch_is", place });
    yield here(`over, ${place}`, repair);
  }
  yield here("end", repair, "/ended");
  await discard(repair);
  yield here("between", repair);
}

async function* holding(api) {
  const repair = await at(api, "wet_out", "R-05");
  await repair.go();
  await repair.report({ what: "joined" }, 75);
  await repair.report({ what: "target_reached", gauge_pa: 131_000 }, 52);
  const read = (gauge_pa, ago, pipe_mc) => repair.report({ what: "reading", gauge_pa, pipe_mc, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
  for (const [gauge, ago, pipe] of [[130_000, 45, 12_800], [129_000, 38, 12_500], [128_000, 25, 12_000], [127_000, 18, 12_000]]) await read(gauge, ago, pipe);
  yield here("hold, late", repair);
  await read(126_000, 8, 12_000);
  yield here("hold", repair);
  yield here("reading", repair, "/reading");
  yield here("sample", repair, "/sample");
  yield here("stop, held", repair, "/stop");
  yield here("another clock runs", await at(api, "staging", "R-14"));
  await read(95_000, 0, 12_000);
  yield here("pressure low", repair);
  await read(146_000, 0, 12_000);
  yield here("pressure high", repair);
  await repair.report({ what: "released", emergency: true });
  yield here("released early", repair);
}

async function* release(api) {
  const repair = await at(api, "wet_out", "R-06");
  await repair.go();
  await repair.report({ what: "joined" }, 100);
  await repair.report({ what: "target_reached", gauge_pa: 131_000 }, 80);
  for (let ago = 70; ago >= 0; ago -= 10) await repair.report({ what: "reading", gauge_pa: 130_000, pipe_mc: 12_800, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
  yield here("hold, sample", repair);
  await repair.report({ what: "sample_felt", hard: true });
  yield here("release", repair);
  await repair.tell({ command: "release" });
  yield here("deflation", repair);
  yield here("fill in, late", repair, "/fill");
  await repair.answer("deflation");
  yield here("deflation, done", repair);
}

async function* others(api) {
  yield here("rehearsal", await at(api, "joined", "", { rehearsal: true }));
  const dry = await at(api, "staging", "R-15");
  yield here("stop, dry", dry, "/stop");
  yield here("end, dry", dry, "/ended");
}
