// A form that computes asks the core again when the fingers rest. Nothing is written.

import { controlsOf, readForm } from "./form.js";
import { hear } from "./heard.js";

const REST_MS = 300;

/** Returns the live forms. `look()` asks the core for what is shown, with `asked` of the forms; `sure` holds what was said to be meant. */
export function createLive({ store, look, sure }) {
  const asked = {};
  let resting = null;

  async function run(form) {
    resting = null;
    const heard = await hear(controlsOf(form), store.ask, sure);
    if (heard.problems.length > 0) return store.fault(heard.problems);
    const { fields, problems } = readForm(heard.controls);
    if (problems.length > 0) return store.fault(problems);
    store.fault([]);
    asked[form.id] = fields;
    return look();
  }

  return {
    /** By the id of a form, the fields with which the core was asked last. */
    asked,
    /** Asks when the fingers rest. */
    again(form) {
      clearTimeout(resting?.timer);
      resting = { form, timer: setTimeout(run, REST_MS, form) };
    },
    /** Says whether something was typed that the core has not heard yet. */
    rests: () => resting !== null,
    /** Asks what rests at once: nobody accepts what was computed from something else than what stands in the fields. */
    now() {
      clearTimeout(resting.timer);
      return run(resting.form);
    },
  };
}
