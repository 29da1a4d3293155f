// What the studio asks of the browser.
globalThis.studio = (() => {
  const root = document.documentElement;

  const store = {
    read: name => {
      try {
        return localStorage.getItem("fretloom " + name);
      } catch {
        return null;
      }
    },
    write: (name, value) => {
      try {
        localStorage.setItem("fretloom " + name, value);
      } catch {
        // A browser that keeps nothing forgets the setting.
      }
    },
  };

  // Before the program runs, so that the page does not flash.
  const theme = name => {
    if (name === "auto") delete root.dataset.theme;
    else root.dataset.theme = name;
  };
  theme(store.read("theme") ?? "auto");

  // Keys of the whole page. What a field or the editor does with a key is its own affair.
  const isTyping = target => target.closest?.("input:not([type=radio]), textarea, select, [contenteditable=true], .cm-editor") != null;
  const whole = event => {
    const control = event.ctrlKey || event.metaKey;
    const key = event.key.toLowerCase();
    if (control && key === "z" && !isTyping(event.target)) return event.shiftKey ? "redo" : "undo";
    if (control && key === "y" && !isTyping(event.target)) return "redo";
    return null;
  };

  // On a phone the sentence folds to one line when it leaves the screen. Its place stays as high as it was, so that nothing jumps.
  addEventListener(
    "scroll",
    () => {
      const asking = document.getElementById("asking");
      if (!asking) return;
      const isFolded = asking.getBoundingClientRect().bottom < 48;
      if (isFolded === asking.classList.contains("is-folded")) return;
      asking.style.minHeight = isFolded ? `${asking.offsetHeight}px` : "";
      asking.classList.toggle("is-folded", isFolded);
    },
    { passive: true },
  );

  // Keys that an element uses itself: what the browser would do with them must be called off before the program hears of them.
  addEventListener(
    "keydown",
    event => {
      const own = event.target.dataset?.keys?.split(" ") ?? [];
      if (own.includes(event.key) && !event.shiftKey) event.preventDefault();
    },
    true,
  );

  // A list whose every choice opens something is opened by the keys that would else choose in it at once.
  addEventListener("keydown", event => {
    const list = event.target.closest?.("select[data-opens]");
    if (!list?.showPicker || event.ctrlKey || event.metaKey || event.altKey) return;
    if (!/^(Arrow|Page|Home|End)/.test(event.key) && (event.key.length > 1 || event.key === " ")) return;
    event.preventDefault();
    list.showPicker();
  });

  // Whoever hears of what concerns the whole page. What happens before somebody listens waits.
  let listen;
  const listener = new Promise(come => (listen = come));
  const tell = (what, ...words) => void listener.then(one => one.invokeMethod(what, ...words));
  addEventListener("popstate", () => tell("Elsewhere"));
  addEventListener("keydown", event => {
    const name = whole(event);
    if (name === null) return;
    event.preventDefault();
    tell("Pressed", name);
  });

  // A page that is not seen paints nothing, and need not be waited for.
  const painted = wait =>
    document.hidden ? Promise.resolve() : new Promise(done => requestAnimationFrame(() => setTimeout(done, wait)));
  // What is painted is then brought to the screen by other threads, which need the processor for about three frames.
  const seen = () => painted(48);
  const asked = name => new URLSearchParams(location.search).get(name);
  const said = () => history.state?.said ?? null;
  const above = () => history.state?.above ?? null;
  const isWriting = () => !!asked("lesson") || store.read("writing") === "true";
  // As wide as the window without the dock's edges; once it is there the dock tells its width itself.
  const neckRoom = () => root.clientWidth - (matchMedia("(max-width: 900px)").matches ? 32 : 64);
  let neck = null;
  let tellReady;
  const whenReady = new Promise(done => (tellReady = done));
  const idle = () => new Promise(done => (globalThis.requestIdleCallback ?? setTimeout)(done));

  return {
    asked,
    forget: name => {
      const url = new URL(location.href);
      url.searchParams.delete(name);
      history.replaceState(history.state, "", url);
    },
    address: (sentence, names, said, above, isStep) => {
      const url = new URL(location.href);
      url.searchParams.set("show", sentence);
      if (names) url.searchParams.set("names", names);
      else url.searchParams.delete("names");
      const isSame = url.href === location.href;
      if (isSame && history.state?.said === said && history.state.above === above) return;
      if (isStep && !isSame) history.pushState({ said, above }, "", url);
      else history.replaceState({ said, above }, "", url);
    },
    said,
    // In this order: the link's sentence and names, what was said, what the lesson beside it said of itself, whether the lesson is to be written, language, theme, whether fingers point, the room
    // for the neck, whether a neck is seen.
    opening: () => [
      asked("show"),
      asked("names"),
      said(),
      above(),
      String(isWriting()),
      store.read("language") ?? navigator.language,
      store.read("theme"),
      String(matchMedia("(pointer: coarse)").matches),
      String(neckRoom()),
      String((neck = document.querySelector(".opening-neck svg")) !== null),
    ],
    isWriting,
    neckRoom,
    remembered: store.read,
    remember: store.write,
    theme: name => {
      store.write("theme", name);
      theme(name);
    },
    speaks: language => (root.lang = language),
    ready: () => {
      if (neck) document.querySelector(".opened")?.append(neck);
      root.dataset.ready = "true";
      return seen().then(tellReady);
    },
    whenReady,
    sound: (figures, midis, gapSeconds) => import("./sound.js").then(sound => sound.pluck(figures, midis, gapSeconds)),
    save: (name, bytes) => import("./files.js").then(files => files.save(name, bytes)),
    saveSvg: (name, svg) => import("./files.js").then(files => files.saveSvg(name, svg)),
    savePng: (name, svg) => import("./files.js").then(files => files.savePng(name, svg)),
    copyPng: svg => import("./files.js").then(files => files.copyPng(svg)),
    saveStaves: (name, frame) => import("./files.js").then(files => files.saveStaves(name, frame)),
    showClass: (id, to) => import("./class.js").then(shown => shown.show(id, to)),
    endClass: id => import("./class.js").then(shown => shown.end(id)),
    toggleFullScreen: () => void import("./class.js").then(shown => shown.toggle()),
    neck: to => import("./neck.js").then(neck => neck.serve(to)),
    painted,
    seen,
    idle,
    giveBackFocus: element =>
      painted(0).then(() => {
        const now = document.activeElement;
        // A phrase that was left unsaid has no button any more.
        if (now === document.body || now === null) (element.isConnected ? element : document.getElementById("sentence")).focus();
      }),
    // A list that would reach beyond the right edge is moved back into the window.
    within: element => {
      const beyond = element.getBoundingClientRect().right + 8 - document.documentElement.clientWidth;
      if (beyond > 0) element.style.left = `${-beyond}px`;
    },
    reveal: id => setTimeout(() => document.getElementById(id)?.scrollIntoView({ block: "nearest" })),
    focus: selector => setTimeout(() => document.querySelector(selector)?.focus()),
    listen,
  };
})();
