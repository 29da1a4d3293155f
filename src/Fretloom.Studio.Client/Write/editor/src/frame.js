// The studio's end of the frame that shows the handout.
/// The listener is told: PreviewReady() when the frame is there, and again when it was loaded anew; PreviewClicked(line).
export function preview(frame, listener) {
  const heard = event => {
    if (event.source !== frame.contentWindow || event.origin !== location.origin) return;
    if (event.data?.fretloom === "ready") {
      theme();
      listener.invokeMethodAsync("PreviewReady");
    }
    if (event.data?.fretloom === "line") listener.invokeMethodAsync("PreviewClicked", event.data.line);
  };
  const theme = () => frame.contentWindow?.fretloom?.theme(document.documentElement.dataset.theme ?? "");
  const themes = new MutationObserver(theme);
  themes.observe(document.documentElement, { attributeFilter: ["data-theme"] });
  addEventListener("message", heard);
  if (frame.contentWindow?.fretloom) {
    theme();
    listener.invokeMethodAsync("PreviewReady");
  }
  return {
    show: page => frame.contentWindow?.fretloom?.show(JSON.parse(page)) ?? false,
    see: line => frame.contentWindow?.fretloom?.see(line),
    close: () => {
      themes.disconnect();
      removeEventListener("message", heard);
    },
  };
}
