// What happens around the page that concerns what is being written.
/// The listener is told: FileChanged(name, etag or null), Asked("rest") when the page may go away, Asked("online"), NotKept().
export function watch(listener) {
  let [source, hasFailed] = [null, false];
  let isAtRisk = false;
  const open = () => {
    source = new EventSource("api/changes");
    source.onmessage = event => {
      const { name, etag } = JSON.parse(event.data);
      listener.invokeMethodAsync("FileChanged", name, etag ?? null);
    };
    source.onopen = () => {
      if (hasFailed) listener.invokeMethodAsync("Asked", "online");
      hasFailed = false;
    };
    source.onerror = () => {
      hasFailed = true;
      // A browser gives up for good when the answer was no stream of events.
      if (source?.readyState === EventSource.CLOSED) timer = setTimeout(open, 5000);
    };
  };
  let timer = 0;
  const away = () => document.visibilityState === "hidden" && listener.invokeMethodAsync("Asked", "rest");
  const online = () => listener.invokeMethodAsync("Asked", "online");
  const notKept = () => listener.invokeMethodAsync("NotKept");
  const warn = event => {
    if (isAtRisk) event.preventDefault();
  };
  open();
  document.addEventListener("visibilitychange", away);
  addEventListener("online", online);
  addEventListener("fretloom-not-kept", notKept);
  addEventListener("beforeunload", warn);
  return {
    /// Whether to warn before the page is left.
    risk: value => (isAtRisk = value),
    close: () => {
      clearTimeout(timer);
      source?.close();
      source = null;
      document.removeEventListener("visibilitychange", away);
      removeEventListener("online", online);
      removeEventListener("fretloom-not-kept", notKept);
      removeEventListener("beforeunload", warn);
    },
  };
}
