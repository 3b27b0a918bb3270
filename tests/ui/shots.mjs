// Every screen that there is, one after the other, with its state on a real core: for pictures in any engine.

import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { codePicture } from "./code-picture.mjs";
import { emptyFolder, serveMendline } from "./mendline.mjs";
import { stages } from "./stages.mjs";
import { WARM } from "./views.mjs";
import { Walk, asker } from "./walk.mjs";

const PHOTOS = new URL("../../fixtures/photos/", import.meta.url);
const LINE = [[100, 500], [300, 200], [500, 700], [700, 300], [900, 600]];

/**
 * Yields { name, hash, act? } of each screen in turn; the core stands as it should until the next one is asked for. `act(hands)`
 * is what a person does there before it looks as it is called.
 */
export async function* shots(api) {
  yield { name: "first-run", hash: "#/" };
  for (const step of ["language", "units", "crew", "contract", "sheets"]) yield { name: `setup-${step}`, hash: `#/setup/${step}` };
  yield { name: "first-run-begun", hash: "#/" };
  yield { name: "intake-empty", hash: "#/intake" };
  yield { name: "lost", hash: "#/no/such" };
  yield* office(api);
  for await (const { name, hash } of stages(api)) yield { name: name.replaceAll(/\W+/g, "-"), hash };
  yield* rehearsed(api);
  yield* handed(api);
  yield* today(api);
  yield* end(api);
  yield* shelf();
}

async function* office(api) {
  const opened = await new Walk(api).open({ number: "R-07" });
  const { files } = await api.ask({ do: "inspections" });
  yield { name: "intake", hash: "#/intake" };
  for (const [name, line] of [["line", "SS-03107"], ["line-tallow", "SS-03214"], ["line-against", "SS-03122"]]) {
    yield { name, hash: `#/intake/${files[0].file}/${files[0].inspections.find((one) => one.line === line).index}` };
  }
  yield { name: "by-hand", hash: "#/by-hand" };
  yield { name: "checks", hash: "#/checks" };
  for (const check of ["wall-thickness", "end-thrust", "pressure-decay"]) yield { name: `check-${check}`, hash: `#/repair/${opened.id}/checks/${check}` };
  yield { name: "taken", hash: `#/repair/${opened.id}` };
  yield { name: "plan", hash: `#/repair/${opened.id}/plan` };
  const warm = async (hands) => { for (const [place, mc] of Object.entries(WARM)) if (mc !== null) await hands.type(`#${place}`, String(mc / 1000)); };
  yield { name: "plan-refused", hash: `#/repair/${opened.id}/plan`, act: warm };
  await opened.plan();
  await opened.goOn();
  yield { name: "label", hash: `#/repair/${opened.id}/label` };
  yield { name: "tasks", hash: `#/repair/${opened.id}/tasks` };
  yield { name: "paper", hash: `#/repair/${opened.id}/paper` };
}

async function* rehearsed(api) {
  const repair = await (await (await new Walk(api).open({ number: "RH-9", rehearsal: true })).plan()).to("hold");
  yield { name: "rehearsal-hold", hash: `#/repair/${repair.id}` };
}

// A hold on its way from one phone to another: both sides.
async function* handed(api) {
  const first = await serveMendline();
  try {
    const there = asker(first.address);
    await there.ask({ do: "take_examples" });
    const offered = await (await (await new Walk(there).open({ number: "R-21" })).plan()).to("wet_out");
    await readUntilNow(offered);
    await offered.tell({ command: "hand_over", to: "" });
    yield { name: "follow", hash: "#/follow" };
    const { handed: { code } } = await there.ask({ do: "repair", repair: offered.id });
    await api.ask({ do: "follow", photo: codePicture(code).toString("base64") });
    yield { name: "followed", hash: `#/follow/${offered.id}` };
    yield { name: "today-followed", hash: "#/" };
    await carried(there, api, offered.id);
    yield { name: "offer-tied", hash: `#/repair/${offered.id}` };
    await api.ask({ do: "unfollow", repair: offered.id });
    yield { name: "offer", hash: `#/repair/${offered.id}` };
    await api.ask({ do: "take_over", repair: offered.id });
  } finally {
    await first.stop();
  }
  const own = await (await (await new Walk(api).open({ number: "R-22" })).plan()).to("hold");
  yield { name: "handing", hash: `#/repair/${own.id}/handover` };
  await own.tell({ command: "hand_over", to: "Mika" });
  yield { name: "given", hash: `#/repair/${own.id}` };
  yield { name: "given-hold", hash: `#/repair/${own.id}/hold` };
}

/** Carries a repair from one core to another, as its file does. */
export async function carried(from, to, repair) {
  const { name, bytes: of } = await from.ask({ do: "pack", repairs: [repair] });
  for (let at = 0; at < of;) {
    const { bytes } = await from.ask({ do: "piece", name, from: at });
    ({ here: at } = await to.ask({ do: "bring", name, of, from: at, bytes }));
  }
  await to.ask({ do: "take_in", name, of });
}

/** Brings a repair from wet-out into a hold with readings. */
async function readUntilNow(walk) {
  await walk.go();
  await walk.report({ what: "joined" }, 75);
  await walk.report({ what: "target_reached", gauge_pa: 131_000 }, 52);
  for (const [gauge_pa, ago] of [[130_000, 45], [129_000, 38], [128_000, 25], [127_000, 17], [126_000, 8]]) await walk.report({ what: "reading", gauge_pa, pipe_mc: 12_000, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
}

async function* today(api) {
  const at = async (stage, number) => (await (await new Walk(api).open({ number })).plan()).to(stage);
  await readUntilNow(await at("wet_out", "R-05"));
  const mixed = await at("wet_out", "R-10");
  await mixed.go();
  await mixed.report({ what: "joined" }, 13);
  yield { name: "today", hash: "#/" };
}

async function* end(api) {
  const done = await (await (await new Walk(api).open({ number: "R-03" })).plan()).to("deflation");
  const to = (name, side = "", more = {}) => ({ name, hash: `#/repair/${done.id}${side}`, ...more });
  await done.answer("deflation");
  await done.goOn();
  yield to("verification");
  yield to("rest", "/rest");
  await done.report({ what: "at_the_mark", beyond_um: -3_000 });
  await done.answer("wet_out", "placement", "inflation", "hold", "verification");
  yield to("lateral", "/lateral/1");
  await done.report({ what: "lateral_opened", lateral: 1, open_pct: 94, coupon: true });
  const jpeg = (await readdir(PHOTOS)).find((name) => name.endsWith(".jpg"));
  const bytes = (await readFile(new URL(jpeg, PHOTOS))).toString("base64");
  const { repair: { photos } } = await api.ask({ do: "keep_photo", repair: done.id, label: "Downstream edge, seen again", bytes });
  yield to("photo-taken", "/photo");
  yield to("mark", `/mark/${photos.at(-1).sha256}`);
  yield to("correct", "/correct");
  yield to("review", "/review");
  for (const one of done.view.review.broken.filter(({ waived, waivable }) => waivable && !waived)) await done.waive(one.rule, one.subject);
  yield to("review-waived", "/review");
  await done.tell({ command: "judge", accept: true, reasons: [] }, "varga");
  yield to("sign");
  for (const person of ["ekdal", "varga"]) await done.tell({ command: "sign", name: "", statement: "I sign.", strokes: [LINE] }, person);
  await api.ask({ do: "issue", repair: done.id });
  yield to("issued");
  yield { name: "send-one", hash: `#/send/${done.id}` };
  yield* checked(api, done.id);
}

async function* checked(api, id) {
  yield { name: "check", hash: "#/check" };
  const folder = await emptyFolder();
  const record = Buffer.from((await api.ask({ do: "record", repair: id })).bytes, "base64");
  const files = { valid: record, changed: Buffer.from(record.toString().replace("Kettle Row", "Kettle Raw")) };
  for (const [name, bytes] of Object.entries(files)) {
    const path = join(folder.path, `${name}.json`);
    await writeFile(path, bytes);
    yield {
      name: `check-${name}`, hash: "#/check",
      act: async (hands) => { await hands.file("#record", path); await hands.click(".deck > .act"); await hands.until(() => hands.run(`return document.querySelector(".verdict") !== null`), "a verdict"); },
    };
  }
  await folder.remove();
}

async function* shelf() {
  for (const name of ["search", "people", "shelf", "help", "send", "take"]) yield { name, hash: `#/${name}` };
  for (const kind of ["contract", "resin", "patch", "packer", "instrument", "method"]) yield { name: `shelf-${kind}`, hash: `#/shelf/${kind}` };
  yield { name: "sheet-resin", hash: "#/shelf/resin/Q30" };
  yield { name: "sheet-contract", hash: "#/shelf/contract/QM-2026-31" };
}
