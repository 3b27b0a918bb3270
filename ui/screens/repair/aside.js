// The small side screens: a photo, a note, how long ago, the end of an attempt.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { choice } from "../../parts/choice.js";
import { act, deck } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { field, file, lines } from "../../parts/field.js";
import { hold } from "../../parts/hold.js";
import { note as bar } from "../../parts/note.js";
import { readings } from "../../parts/readings.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { agoOf, at, attempt, frame, tell, to } from "./frame.js";

/** A photo that the contract asks for, or another one. */
export const photo = {
  title: () => say("photo.title"),
  render: (view) => {
    const asked = view.photos.find(({ key }) => key === view.params.key);
    const open = view.photos.filter(({ taken }) => !taken);
    return frame(view, {
      title: say("photo.title"),
      main: html`${form({
        id: "photo", then: to(view), does: { do: "keep_photo", repair: view.repair.id, ...(asked && { key: asked.key, label: asked.label }) },
        inside: html`<p class="lead">${asked ? asked.label : say("photo.other")}</p>
          ${!asked && field({ id: "photo-label", name: "label", label: say("photo.label"), value: view.drafts?.photo?.label ?? "" })}
          ${file({ id: "photo-camera", name: "bytes", label: say("photo.camera"), accept: "image/*", camera: true })}
          ${file({ id: "photo-file", name: "bytes", label: say("photo.gallery"), accept: "image/*" })}`,
      })}<p class="soft">${say("photo.kept")}</p>
      ${open.length > 0 && html`<h2 class="head-row">${say("photos.title")} <small>${say("photos.open", { n: open.length })}</small></h2>${open.map(({ key, label }) => way({ label, href: to(view, `photo/${key}`) }))}`}`,
      foot: deck({ act: act({ label: say("photo.act"), note: say("photo.act_note"), mark: "tick", form: "photo" }) }),
    });
  },
};

/** A note in words. */
export const note = {
  title: () => say("note.title"),
  render: (view) => frame(view, {
    title: say("note.title"),
    main: form({ id: "note", then: to(view), does: tell(view, { command: "note" }), inside: lines({ id: "note-text", name: "command.text", label: say("note.label"), value: view.drafts?.note?.["command.text"] ?? "" }) }),
    foot: deck({ act: act({ label: say("note.act"), note: say("tasks.records"), mark: "tick", form: "note" }) }),
  }),
};

/** How long ago the next report happened. Both times are kept. */
export const ago = {
  title: () => say("ago.title"),
  render: (view) => {
    const id = `ago-${view.repair.id}`;
    const ms = agoOf(view);
    const now = view.now?.at_ms ?? 0;
    return frame(view, {
      title: say("ago.title"),
      main: html`${form({ id, does: {}, inside: entry({ id: "min", label: say("ago.was"), aside: say("ago.zero"), unit: say("ago.unit"), step: 1, min: 0, max: 120, value: view.drafts?.[id]?.min ?? "0" }) })}
        ${readings([{ label: say("ago.happened"), value: at(view, now - ms) }, { label: say("ago.tapped"), value: at(view, now) }], "two")}
        ${bar({ lead: say("ago.both"), text: say("ago.rule") })}`,
      foot: deck({ act: act({ label: say("ago.act", { n: ms / 60_000 }), note: say("ago.act_note"), href: to(view) }) }),
    });
  },
};

/** The attempt is over without an accepted patch. */
export const ended = {
  title: () => say("ended.title"),
  render: (view) => {
    const mixed = Boolean(attempt(view)?.joined);
    const typed = view.drafts?.ended ?? {};
    const options = mixed ? ["discarded", "left_in_pipe"] : ["abandoned"];
    return frame(view, {
      title: say("ended.title"),
      main: form({
        id: "ended", then: to(view), does: tell(view, { command: "end_attempt" }),
        inside: html`${choice({ legend: say("ended.how"), name: "command.outcome", picked: typed["command.outcome"] ?? options[0], options: options.map((value) => ({ value, strong: say(`outcome.${value}`), note: say(`outcome.${value}_note`) })) })}
          ${lines({ id: "ended-why", name: "command.reasons", as: "list", label: say("ended.why"), value: typed["command.reasons"] ?? "", rows: 2 })}
          ${lines({ id: "ended-pipe", name: "command.in_pipe", label: say("ended.in_pipe"), value: typed["command.in_pipe"] ?? "", rows: 2 })}`,
      }),
      foot: deck({ act: hold({ label: say("ended.act"), note: say("ended.act_note", { n: view.attempt }), form: "ended" }) }),
    });
  },
};
