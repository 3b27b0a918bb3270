// Photos by their hash: fetched when they come into sight, kept as long as the page lives; the one that was just chosen; a copy with lines on it.

/** Returns a function that fills every `img[data-photo]` in sight below `root`. `ask(sha256, px)` returns { media_type, bytes } in base64, or nothing. */
export function createPhotos(root, ask) {
  const kept = new Map();
  return () => {
    for (const image of root.querySelectorAll("img[data-photo]:not([src])")) {
      if (image.closest("details:not([open])")) continue;
      const { photo, px } = image.dataset;
      const key = `${photo}/${px}`;
      if (!kept.has(key)) kept.set(key, ask(photo, Number(px)).then(addressOf, () => undefined));
      kept.get(key).then((address) => { if (address) image.src = address; else kept.delete(key); });
    }
  };
}

const addressOf = (answer) => answer && URL.createObjectURL(new Blob([Uint8Array.from(atob(answer.bytes), (letter) => letter.charCodeAt(0))], { type: answer.media_type }));

/** Remembers the picture that was chosen in a form and not yet sent. */
export function createChosen() {
  let chosen = null;
  const drop = () => { if (chosen) URL.revokeObjectURL(chosen.address); chosen = null; };
  return {
    now: () => chosen,
    drop,
    /** Takes the choice of `input`; the other ways of its form hold nothing then. */
    take(input) {
      drop();
      const [file] = input.files;
      for (const other of input.form.elements) if (other !== input && other.type === "file") other.value = "";
      if (file?.type.startsWith("image/")) chosen = { form: input.form.id, name: file.name, address: URL.createObjectURL(file) };
    },
  };
}

/** How good the JPEG of a marked-up copy is, and how broad a line is as a share of the shorter side. */
const [QUALITY, BREADTH] = [0.9, 0.008];

/** Returns a JPEG of `image` with `strokes` in thousandths of it drawn over in `colour`, in base64. */
export function marked(image, strokes, colour) {
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
  const ink = canvas.getContext("2d");
  ink.drawImage(image, 0, 0);
  ink.lineCap = ink.lineJoin = "round";
  const breadth = Math.max(2, BREADTH * Math.min(canvas.width, canvas.height));
  // A bright edge, so that the line is seen on dark and on light.
  for (const [style, width] of [["#ffffff", 2 * breadth], [colour, breadth]]) {
    ink.strokeStyle = style;
    ink.lineWidth = width;
    for (const stroke of strokes) {
      ink.beginPath();
      for (const [x, y] of stroke) ink.lineTo((x * canvas.width) / 1000, (y * canvas.height) / 1000);
      ink.stroke();
    }
  }
  return canvas.toDataURL("image/jpeg", QUALITY).split(",")[1];
}
