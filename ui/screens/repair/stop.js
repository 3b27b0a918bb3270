// Stop: emergency release, held, at any minute and without a PIN; or say what happened.

import { html } from "../../html.js";
import { minutes } from "../../format.js";
import { act, deck, small } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { doNow } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { agoLink, attempt, frame, report, to } from "./frame.js";

export const title = () => say("stop.title");

const HAPPENINGS = ["pressure_lost", "burst", "stuck", "water_coming", "gas_alarm"];

export function render(view) {
  const { hold: shown } = view;
  const resin = attempt(view)?.joined;
  const pressed = shown && !shown.released_ms;
  return frame(view, {
    title: title(),
    main: html`<p class="lead"><b>${pressed
      ? say("stop.held", { counted: minutes(shown.counted_ms), needed: Math.ceil(shown.required_ms / 60e3) })
      : say(resin ? "stop.resin" : "stop.none")}</b></p>
      ${pressed && doNow([say("stop.do_1"), say("stop.do_2"), say("stop.do_3")])}
      ${section({ id: "happened", title: say("stop.happened"), inside: html`${HAPPENINGS.map((what) => way({ label: say(`stop.${what}`), note: say("stop.recorded"), mark: "tick", does: report(view, { what }), then: to(view) }))}
        ${way({ label: say("stop.stopped"), note: say("stop.recorded"), mark: "tick", does: report(view, { what: "stopped", why: "" }), then: to(view) })}` })}
      ${attempt(view) && !attempt(view).ended && section({ id: "give-up", title: say("stop.end"), inside: way({ label: say(resin ? "stop.end_mixed" : "stop.end_dry"), note: say("stop.end_note"), href: to(view, "ended") }) })}`,
    foot: deck({
      more: [small({ mark: "cross", label: say("stop.back"), href: to(view) }), small({ mark: "ago", label: say("deck.ago", { n: agoLink(view).min }), href: agoLink(view).href })],
      act: pressed
        ? hold({ alarm: true, label: say("stop.release"), note: say("stop.release_note"), does: report(view, { what: "released", emergency: true }), then: to(view) })
        : act({ label: say("stop.back"), href: to(view) }),
    }),
  });
}

