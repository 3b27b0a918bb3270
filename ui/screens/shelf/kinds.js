// The kinds of document: in which list of the shelf each stands, and its fields. `base` is what a document holds without a field being filled in.

import { CONTRACT } from "./fields/contract.js";
import { INSTRUMENT } from "./fields/instrument.js";
import { METHOD } from "./fields/method.js";
import { PACKER } from "./fields/packer.js";
import { PATCH } from "./fields/patch.js";
import { PERSON } from "./fields/person.js";
import { RESIN } from "./fields/resin.js";

export const KINDS = {
  contract: { list: "contracts", table: CONTRACT, base: { photos: [] } },
  resin: { list: "resins", table: RESIN },
  patch: { list: "patches", table: PATCH },
  packer: { list: "packers", table: PACKER },
  instrument: { list: "instruments", table: INSTRUMENT },
  method: { list: "methods", table: METHOD },
  person: { list: "people", table: PERSON },
};

/** Returns what a document is called. */
export const nameOf = (sheet) => sheet.name ?? sheet.title ?? "";

/** Says whether a document is one of the invented examples: its name or one of its sources says so. */
export const invented = (sheet) => JSON.stringify(sheet).includes("(invented)");
