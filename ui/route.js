// Which screen an address means. `#/repair/R-07/reading` becomes { name, params }.

const ROUTES = [
  { name: "today", path: /^\/?$/, params: [] },
  { name: "plan", path: /^\/repair\/([^/]+)\/plan$/, params: ["id"] },
  { name: "branches", path: /^\/repair\/([^/]+)\/branches$/, params: ["id"] },
  { name: "checks", path: /^\/repair\/([^/]+)\/checks(?:\/([a-z0-9-]+))?$/, params: ["id", "name"] },
  { name: "checks", path: /^\/checks(?:\/([a-z0-9-]+))?$/, params: ["name"] },
  { name: "paper", path: /^\/repair\/([^/]+)\/paper$/, params: ["id"] },
  { name: "repair", path: /^\/repair\/([^/]+)(?:\/([a-z]+)(?:\/([^/]+))?)?$/, params: ["id", "sub", "key"] },
  { name: "line", path: /^\/intake\/([^/]+)\/(\d+)$/, params: ["file", "index"] },
  { name: "intake", path: /^\/intake$/, params: [] },
  { name: "by_hand", path: /^\/by-hand$/, params: [] },
  { name: "search", path: /^\/search$/, params: [] },
  { name: "shelf", path: /^\/shelf(?:\/([a-z]+)(?:\/([^/]+)(?:\/([^/]+))?)?)?$/, params: ["kind", "id", "task"] },
  { name: "setup", path: /^\/setup(?:\/([a-z]+))?$/, params: ["step"] },
  { name: "send", path: /^\/send(?:\/([^/]+))?$/, params: ["repair"] },
  { name: "backup", path: /^\/backup(?:\/(back))?$/, params: ["back"] },
  { name: "follow", path: /^\/follow$/, params: [] },
  { name: "followed", path: /^\/follow\/([^/]+)$/, params: ["id"] },
  { name: "take", path: /^\/take$/, params: [] },
  { name: "numbers", path: /^\/numbers$/, params: [] },
  { name: "people", path: /^\/people$/, params: [] },
  { name: "practice", path: /^\/practice$/, params: [] },
  { name: "check", path: /^\/check$/, params: [] },
  { name: "help", path: /^\/help$/, params: [] },
];

/** Returns the route of a location hash, or the route "lost" with the path that nothing stands behind. */
export function route(hash) {
  const path = hash.replace(/^#/, "");
  for (const { name, path: shape, params } of ROUTES) {
    const found = shape.exec(path);
    if (found) return { name, params: Object.fromEntries(params.map((param, i) => [param, read(found[i + 1])])) };
  }
  return { name: "lost", params: { path: read(path) } };
}

// An id may hold any letter, a slash too. What can't be read stays as it is.
function read(text) {
  try { return text === undefined ? undefined : decodeURIComponent(text); } catch { return text; }
}
