// Banner: what is true of every screen at once: no answer, reports on their way, a refusal, an error.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";
import { problemList, refusalNote } from "./problem-list.js";

/** Returns what stands above the screen, or nothing. `state` is the store's. */
export const banner = ({ unreachable, outbox, refusal, error, problems }) => {
  const rows = [
    unreachable && row("unreachable", say("unreachable.title"), say("unreachable.text")),
    unreachable && outbox.length > 0 && row("waiting", say("waiting", { n: outbox.length })),
    // What the core asks back is asked on the screen itself.
    error && error.code !== "same_hour" && html`<section class="note problems" tabindex="-1" data-focus data-key="error"><h2>${say("error.title")}</h2><p>${error.says}</p><p class="soft">${say("error.kept")}</p></section>`,
    refusalNote(refusal),
    problemList(problems),
  ].filter(Boolean);
  return rows.length > 0 ? html`<section class="banner" data-key="banner" aria-label="${say("banner.label")}">${rows}</section>` : "";
};

const row = (key, title, text) => html`<div class="gate" data-key="${key}">${icon("open")}<p><b>${title}</b>${text && html`<small>${text}</small>`}</p></div>`;
