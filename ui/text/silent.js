// What has to be said before the core, which holds the catalogue, has answered for the first time.

export const SILENT = {
  "app-name": "Mendline",
  "app-loading": "Opening",
  "banner-label": "Before anything else",
  "unreachable-title": "The record does not answer",
  "unreachable-text": "Nothing typed is lost. It is asked again every few seconds.",
};
