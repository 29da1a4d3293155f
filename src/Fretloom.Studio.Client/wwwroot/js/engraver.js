// Staves for the handout beside the editor. The engraver is fetched when a lesson first has an exercise, and started once.
const library = "assets/verovio/verovio-toolkit-wasm.js";
const longestStart = 30_000;
const look = 20;
let toolkit;

// Answers whether it runs.
export async function start() {
  try {
    if (!globalThis.verovio) await load();
    toolkit ??= await ready();
    return true;
  } catch {
    return false;
  }
}

// Answers in JSON with a picture for each page, or with what is wrong.
export function engrave(score, options) {
  try {
    toolkit.resetOptions();
    toolkit.setOptions(JSON.parse(options));
    if (!toolkit.loadData(score)) return JSON.stringify({ error: toolkit.getLog() || "it cannot read the score" });
    const pages = [];
    for (let page = 1; page <= toolkit.getPageCount(); page++) pages.push(toolkit.renderToSVG(page));
    return JSON.stringify({ pages });
  } catch (error) {
    return JSON.stringify({ error: String(error) });
  }
}

function load() {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = library;
    script.onload = resolve;
    script.onerror = () => {
      script.remove();
      reject(new Error(library));
    };
    document.head.append(script);
  });
}

// Its machine code is made ready in the background; until then it makes no toolkit.
async function ready() {
  for (const end = performance.now() + longestStart; ; ) {
    try {
      verovio.enableLog(verovio.LOG_WARNING);
      verovio.enableLogToBuffer(true);
      return new verovio.toolkit();
    } catch (error) {
      if (performance.now() > end) throw error;
      await new Promise(resolve => setTimeout(resolve, look));
    }
  }
}
