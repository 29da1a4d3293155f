// The studio's end of the frame that shows the handout.
/// The listener is told: PreviewReady() when the frame is there, and again when it was loaded anew; PreviewClicked(line).
/// The button that leads to a line says the words, with the line in the place of {0}.
/// What is shown alone, without the rest of the handout, is made as wide as it fits.
export function preview(frame, listener, words, isAlone) {
  const heard = event => {
    if (event.source !== frame.contentWindow || event.origin !== location.origin) return;
    if (event.data?.fretloom === "ready") {
      greet();
    }
    if (event.data?.fretloom === "line") listener.invokeMethodAsync("PreviewClicked", event.data.line);
  };
  const theme = () => frame.contentWindow?.fretloom?.theme(document.documentElement.dataset.theme ?? "");
  const greet = () => {
    theme();
    frame.contentWindow.fretloom.speak(words);
    if (isAlone) frame.contentWindow.fretloom.alone();
    listener.invokeMethodAsync("PreviewReady");
  };
  const themes = new MutationObserver(theme);
  themes.observe(document.documentElement, { attributeFilter: ["data-theme"] });
  addEventListener("message", heard);
  if (frame.contentWindow?.fretloom) greet();
  return {
    show: page => frame.contentWindow?.fretloom?.show(JSON.parse(page)) ?? false,
    see: line => frame.contentWindow?.fretloom?.see(line),
    close: () => {
      themes.disconnect();
      removeEventListener("message", heard);
    },
  };
}
