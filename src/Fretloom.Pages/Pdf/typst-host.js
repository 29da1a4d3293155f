// Prepares a bare engine for the Typst compiler and wraps the compiler in plain functions.
import { initSync, TypstCompilerBuilder } from "typst_ts_web_compiler.mjs";

let compiler;
let memory;

globalThis.typst = {
  start(wasm, fonts) {
    memory = initSync({ module: new WebAssembly.Module(wasm) }).memory;
    const builder = new TypstCompilerBuilder();
    builder.set_dummy_access_model();
    for (const font of fonts) builder.add_raw_font(font);
    builder.build().then((built) => { compiler = built; });
  },

  // Bytes the compiler has taken; it remembers earlier documents and never gives any back.
  memoryInUse: () => memory.buffer.byteLength,

  forgetFiles: () => compiler.reset_shadow(),

  addFile: (path, bytes) => compiler.map_shadow(path, bytes),

  // Answers with the PDF, if there is one, and the diagnostics as text. After a crash the compiler is not to be used again.
  compile(path, source) {
    try {
      compiler.add_source(path, source);
      const answer = compiler.compile(path, null, "pdf", 3);
      return { pdf: answer.result, diagnostics: JSON.stringify(answer.diagnostics ?? []) };
    } catch (error) {
      return { hasCrashed: true, diagnostics: JSON.stringify([{ path: "", range: "", severity: "error", message: String(error) }]) };
    }
  },
};
