// Which screen an address means. `#/repair/R-07/reading` becomes { name, params }.

const ROUTES = [
  { name: "today", path: /^\/?$/, params: [] },
];

/** Returns the route of a location hash, or the route "lost" with the path that nothing stands behind. */
export function route(hash) {
  const path = decodeURI(hash.replace(/^#/, ""));
  for (const { name, path: shape, params } of ROUTES) {
    const found = shape.exec(path);
    if (found) return { name, params: Object.fromEntries(params.map((param, i) => [param, found[i + 1]])) };
  }
  return { name: "lost", params: { path } };
}
