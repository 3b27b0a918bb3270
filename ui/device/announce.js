// Says a sentence to a screen reader, without moving the focus.

/** Returns announce(sentence). The same sentence twice is said twice: the region is emptied first. */
export const createAnnouncer = (region, later) => (sentence) => {
  region.textContent = "";
  later(50, () => { region.textContent = sentence; });
};
