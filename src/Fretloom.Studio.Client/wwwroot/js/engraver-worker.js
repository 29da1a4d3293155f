// The thread that the engraver works in. It says when it is ready; then it answers each { score, options } with { pages }, with the { error } that
// is wrong with the score, or with the { crash } after which it is good for nothing.
importScripts("../assets/verovio/verovio-toolkit-wasm.js");

const longestStart = 30_000;
const look = 20;

ready().then(
  toolkit => {
    onmessage = ({ data }) => postMessage(engraved(toolkit, data));
    postMessage({});
  },
  problem => postMessage({ missing: String(problem) }),
);

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

function engraved(toolkit, { score, options }) {
  try {
    toolkit.resetOptions();
    toolkit.setOptions(options);
    if (!toolkit.loadData(score)) return { error: toolkit.getLog() || "it cannot read the score" };
    const pages = [];
    for (let page = 1; page <= toolkit.getPageCount(); page++) pages.push(toolkit.renderToSVG(page));
    return { pages };
  } catch (error) {
    return { crash: String(error) };
  }
}
