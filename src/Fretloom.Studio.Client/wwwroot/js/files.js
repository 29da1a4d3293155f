// Files for the teacher: saved by the browser, or on the clipboard.
// The fonts of pictures, each with a letter that it has.
const faces = [
  ["Source Sans 3", 400, "SourceSans3_400Regular.woff2", "M"],
  ["Source Sans 3", 700, "SourceSans3_700Bold.woff2", "M"],
  ["Source Serif 4", 400, "SourceSerif4_400Regular.woff2", "M"],
  ["Source Serif 4", 600, "SourceSerif4_600SemiBold.woff2", "M"],
  ["Fretloom Accidentals", 400, "FretloomAccidentals.ttf", "♯"],
  ["Fretloom Accidentals", 600, "FretloomAccidentals-Bold.ttf", "♯"],
];
// The room of such a letter, in pixels.
const mark = 20;
const pixelsPerPoint = 4;
// What every browser can draw on, in pixels: on one side, and in all. From memory; telephones allow the least.
const longestSide = 16384;
const mostPixels = 16_777_216;
let styles;

export function save(name, bytes) {
  saveBlob(name, new Blob([bytes]));
}

export async function saveSvg(name, svg) {
  saveBlob(name, new Blob([await withFonts(svg)], { type: "image/svg+xml" }));
}

export async function savePng(name, svg) {
  saveBlob(name, await pngOf(svg));
}

// What a frame shows of an exercise: its systems that are seen, one below the other, in the ink of paper. Answers whether there are any.
export async function saveStaves(name, selector) {
  const frame = document.querySelector(selector).contentDocument;
  const seen = [...frame.querySelectorAll(".system > svg")].filter(svg => svg.getClientRects().length > 0);
  if (seen.length === 0) return false;
  let [width, height, systems] = [0, 0, ""];
  for (const svg of seen) {
    const room = svg.getBoundingClientRect();
    const copy = svg.cloneNode(true);
    copy.setAttribute("width", room.width);
    copy.setAttribute("height", room.height);
    copy.setAttribute("y", height);
    width = Math.max(width, room.width);
    height += room.height;
    systems += new XMLSerializer().serializeToString(copy);
  }
  await savePng(
    name,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" color="#1b1a17">${systems}</svg>`,
  );
  return true;
}

export async function copyPng(svg) {
  try {
    await navigator.clipboard.write([new ClipboardItem({ "image/png": pngOf(svg) })]);
    return true;
  } catch {
    return false;
  }
}

function saveBlob(name, blob) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

// A picture that stands alone, or is drawn as an image, sees no fonts of the page: it carries its own.
async function withFonts(svg) {
  styles ??= Promise.all(faces.map(faceOf)).then(all => `<style>${all.join("")}</style>`);
  // Fonts that did not come are asked for again.
  styles.catch(() => (styles = undefined));
  const style = await styles;
  return svg.replace(/<svg[^>]*>/, open => open + style);
}

// Its ground is transparent. A browser draws a picture before the fonts in it are ready, without its words: below the picture, where it is cut off, a
// letter of each font tells when they are.
async function pngOf(svg) {
  const { width, height } = await imageOf(svg);
  const letters = faces.map(([family, weight, , letter], at) => {
    const place = `x="${at * mark}" y="${height + mark - 4}" font-size="${mark - 4}"`;
    return `<text ${place} font-family="${family}" font-weight="${weight}">${letter}</text>`;
  });
  const image = await imageOf(
    await withFonts(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${Math.max(width, faces.length * mark)}" height="${height + mark}">${svg}${letters.join("")}</svg>`,
    ),
  );
  const scale = Math.min(
    0.75 * pixelsPerPoint,
    longestSide / Math.max(image.width, image.height),
    Math.sqrt(mostPixels / (image.width * image.height)),
  );
  const canvas = canvasOf(Math.floor(width * scale), Math.floor(height * scale));
  const test = canvasOf(faces.length * mark, mark).getContext("2d", { willReadFrequently: true });
  for (let tries = 0; tries < 100; tries++) {
    test.drawImage(image, 0, -height);
    if (faces.every((_, at) => isInked(test, at * mark))) break;
    await new Promise(done => setTimeout(done, 20));
  }
  canvas.getContext("2d").drawImage(image, 0, 0, image.width * scale, image.height * scale);
  return new Promise(done => canvas.toBlob(done, "image/png"));
}

const canvasOf = (width, height) => Object.assign(document.createElement("canvas"), { width, height });
const isInked = (context, left) => context.getImageData(left, 0, mark, mark).data.some((value, at) => at % 4 === 3 && value > 0);

async function imageOf(svg) {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  await image.decode();
  URL.revokeObjectURL(image.src);
  return image;
}

async function faceOf([family, weight, file]) {
  const bytes = new Uint8Array(await (await fetch("fonts/" + file)).arrayBuffer());
  let text = "";
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  const kind = file.endsWith("ttf") ? "ttf" : "woff2";
  return `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/${kind};base64,${btoa(text)})}`;
}
