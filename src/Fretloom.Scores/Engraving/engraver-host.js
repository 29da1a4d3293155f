// Wraps the engraver in plain functions. An exception of the engraver's own that left the script would end the process.
globalThis.engraver = (() => {
  let toolkit;

  return {
    start() {
      verovio.enableLog(verovio.LOG_WARNING);
      verovio.enableLogToBuffer(true);
      toolkit = new verovio.toolkit();
    },

    // Answers with a picture for each page, or with what is wrong.
    engrave(source, options) {
      try {
        toolkit.resetOptions();
        toolkit.setOptions(JSON.parse(options));
        const isLoaded = toolkit.loadData(source);
        const log = toolkit.getLog();
        if (!isLoaded) return { error: log || "The engraver cannot read the score." };
        const pages = [];
        for (let page = 1; page <= toolkit.getPageCount(); page++) pages.push(toolkit.renderToSVG(page));
        return { pages: JSON.stringify(pages), log };
      } catch (error) {
        return { error: String(error), hasCrashed: true };
      }
    },
  };
})();
