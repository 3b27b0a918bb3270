// The sample in the manhole: soft forbids release, hard alone proves nothing.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { choice } from "../../parts/choice.js";
import { say } from "../../text/say.js";
import { agoLink, agoOf, frame, tell, to } from "./frame.js";

export const title = () => say("hold.sample_feel");

export function render(view) {
  const ago = agoOf(view, "sample_felt");
  return frame(view, {
    title: title(),
    main: html`<p class="lead-in">${say("hold.sample_how")}</p>${form({
      id: "sample", does: tell(view, { command: "report", ...(ago > 0 && { ago_ms: ago }), happening: { what: "sample_felt" } }), then: to(view),
      inside: choice({ legend: say("hold.sample_is"), name: "command.happening.hard", as: "yes", needed: true, picked: view.drafts?.sample?.["command.happening.hard"],
        options: [{ value: "yes", strong: say("hold.hard"), note: say("hold.hard_note") }, { value: "no", strong: say("hold.soft"), note: say("hold.soft_note") }] }),
    })}`,
    foot: deck({ more: [small({ mark: "cross", label: say("stop.back"), href: to(view) }), small({ mark: "ago", label: say("deck.ago", { n: agoLink(view, "sample_felt").min }), href: to(view, "ago/sample_felt") })], act: act({ label: say("hold.sample_record"), note: say("tasks.records"), mark: "tick", form: "sample" }) }),
  });
}
