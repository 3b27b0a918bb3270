// What the core is asked for the calculations. It stands apart from the screen, so that the question need not wait for it.

/** Returns the id of the form in which a calculation of a repair is typed. */
export const formOf = (repair, name) => `checks-${repair ?? ""}-${name}`;

/** Returns what the core is asked: with what was typed, one check is worked out as well. */
export const asks = ({ id, name }, _, asked) => ({ do: "checks", ...(id && { repair: id }), ...(name && { name, input: asked[formOf(id, name)]?.input ?? {} }) });
