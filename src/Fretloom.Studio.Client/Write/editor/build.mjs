// Bundles the editor, and puts the player's scripts and the preview's into one file: node build.mjs FOLDER
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build, transform } from "esbuild";

const folder = process.argv[2];
const here = import.meta.dirname;
const player = join(here, "../../../Fretloom.Pages/Html/Player");

await mkdir(folder, { recursive: true });
await build({
  entryPoints: [join(here, "src/editor.js")],
  outfile: join(folder, "editor.js"),
  bundle: true,
  minify: true,
  format: "esm",
  target: "es2022",
  legalComments: "none",
});
const names = (await readFile(join(player, "order.txt"), "utf8")).split("\n").filter(Boolean);
const scripts = await Promise.all([...names.map(name => join(player, name)), join(here, "src/preview.js")].map(path => readFile(path, "utf8")));
const { code } = await transform(`(() => {\n"use strict";\n${scripts.join("\n")}})();\n`, { minify: true, target: "es2022" });
await writeFile(join(folder, "preview.js"), code);
