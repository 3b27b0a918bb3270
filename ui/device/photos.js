// Fetches photos by their hash when they come into sight, and keeps them as long as the page lives.

/** Returns a function that fills every `img[data-photo]` in sight below `root`. `ask(sha256)` returns { media_type, bytes } in base64, or nothing. */
export function createPhotos(root, ask) {
  const kept = new Map();
  return () => {
    for (const image of root.querySelectorAll("details[open] img[data-photo]:not([src])")) {
      const { photo } = image.dataset;
      if (!kept.has(photo)) kept.set(photo, ask(photo).then(addressOf, () => undefined));
      kept.get(photo).then((address) => { if (address) image.src = address; else kept.delete(photo); });
    }
  };
}

const addressOf = (answer) => answer && URL.createObjectURL(new Blob([Uint8Array.from(atob(answer.bytes), (letter) => letter.charCodeAt(0))], { type: answer.media_type }));
