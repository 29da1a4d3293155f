// What happens around the page that concerns what is being written.
/// The listener is told: FileChanged(name, etag or null), Asked("rest") when the page may go away, Asked("online"), NotKept().
export function watch(listener) {
  let [source, isBehind] = [null, false];
  let isAtRisk = false;
  let timer = 0;
  const open = () => {
    clearTimeout(timer);
    source?.close();
    source = new EventSource("api/changes");
    source.onmessage = event => {
      const { name, etag } = JSON.parse(event.data);
      listener.invokeMethodAsync("FileChanged", name, etag ?? null);
    };
    source.onopen = () => {
      if (isBehind) listener.invokeMethodAsync("Asked", "online");
      isBehind = false;
    };
    source.onerror = () => {
      isBehind = true;
      // A browser gives up for good when the answer was no stream of events.
      if (source?.readyState === EventSource.CLOSED) timer = setTimeout(open, 5000);
    };
  };
  // A browser has few connections to one host, and a stream holds one: only the tab that is seen listens, and reads again when it comes back.
  const turn = () => {
    if (document.visibilityState === "visible") {
      open();
      return;
    }
    listener.invokeMethodAsync("Asked", "rest");
    clearTimeout(timer);
    source?.close();
    [source, isBehind] = [null, true];
  };
  const online = () => listener.invokeMethodAsync("Asked", "online");
  const notKept = () => listener.invokeMethodAsync("NotKept");
  const warn = event => {
    if (isAtRisk) event.preventDefault();
  };
  if (document.visibilityState === "visible") open();
  else isBehind = true;
  document.addEventListener("visibilitychange", turn);
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
      document.removeEventListener("visibilitychange", turn);
      removeEventListener("online", online);
      removeEventListener("fretloom-not-kept", notKept);
      removeEventListener("beforeunload", warn);
    },
  };
}
