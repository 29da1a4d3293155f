// Cuts the text faces down to the characters of Western handouts, so that a page can carry its fonts inside itself.
// Call: node subset.mjs FOLDER OUT, where FOLDER holds node_modules; writes OUT/*.woff2.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join, resolve } from "node:path";

const [folder, out] = process.argv.slice(2).map((path) => resolve(path));
const subsetFont = createRequire(join(folder, "package.json"))("subset-font");

const faces = [
  "source-serif-4/400Regular/SourceSerif4_400Regular.ttf",
  "source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf",
  "source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf",
  "source-serif-4/600SemiBold_Italic/SourceSerif4_600SemiBold_Italic.ttf",
  "source-sans-3/400Regular/SourceSans3_400Regular.ttf",
  "source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf",
  "source-sans-3/700Bold/SourceSans3_700Bold.ttf",
];

// First and last code point, inclusive: Latin with its extensions, punctuation, super- and subscripts, currency,
// letterlike signs and fractions, arrows, mathematical signs, geometric shapes and tick marks.
const ranges = [
  [0x20, 0x7e], [0xa0, 0x17f], [0x218, 0x21b], [0x2c6, 0x2dd], [0x1e80, 0x1e85], [0x1e9e, 0x1e9e],
  [0x2000, 0x206f], [0x2070, 0x209f], [0x20ac, 0x20ac], [0x2100, 0x215f], [0x2190, 0x21ff],
  [0x2200, 0x22ff], [0x25a0, 0x25ff], [0x2700, 0x27bf],
];

const text = ranges
  .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)))
  .join("");

mkdirSync(out, { recursive: true });
for (const face of faces) {
  const font = readFileSync(join(folder, "node_modules/@expo-google-fonts", face));
  const subset = await subsetFont(font, text, { targetFormat: "woff2" });
  writeFileSync(join(out, `${basename(face, ".ttf")}.woff2`), subset);
}
