// Shows the handout part by part: what is as it was stays where it is, with its scroll, what is open in it and what plays.
(() => {
  const root = document.documentElement;
  const article = document.querySelector("article");
  const styles = document.getElementById("handout");
  const running = document.getElementById("running");
  // The elements of each part, by its key, and the line of each: nothing of the page is touched that stays as it was.
  let parts = new Map();
  let lines = new Map();

  const elementsOf = html => {
    const box = document.createElement("template");
    box.innerHTML = html;
    return [...box.content.children];
  };

  // A problem that is told in the place of a block leads to its line.
  let words = "{0}";
  const lead = element => {
    const told = [...element.querySelectorAll(".problem > strong")];
    if (element.matches(".problem")) told.push(element.querySelector("strong"));
    for (const strong of told) {
      const line = Number(/\d+/.exec(strong.textContent));
      const button = Object.assign(document.createElement("button"), { type: "button", className: "to-line", textContent: words.replace("{0}", line) });
      button.addEventListener("click", () => tell(line));
      strong.replaceChildren(button);
    }
  };
  const tell = line => parent.postMessage({ fretloom: "line", line }, location.origin);

  // Until an exercise is engraved again, its former picture stands in the place of its tablature, also when it could not be read in between.
  let formers = [];
  const within = (elements, selector) => elements.map(element => element.querySelector(selector)).find(Boolean);
  const remember = (elements, former, at) => {
    const seen = (formers[at] = within(former, ".former, .staves:has(> div > .system)") ?? formers[at]);
    const busy = within(elements, ".staves[aria-busy]");
    if (!busy || !seen) return;
    const copy = Object.assign(seen.cloneNode(true), { className: "former" });
    // It shows other notes than those that are played.
    for (const one of copy.querySelectorAll("[data-note], [data-bar]")) {
      delete one.dataset.note;
      delete one.dataset.bar;
    }
    busy.querySelector(".tablature").hidden = true;
    busy.prepend(copy);
  };

  const attach = element => {
    lead(element);
    const found = [...element.querySelectorAll("[data-exercise]")];
    if (element.matches("[data-exercise]")) found.push(element);
    for (const exercise of found) players.push(new Player(exercise));
  };

  const detach = element => {
    for (let at = players.length - 1; at >= 0; at--) {
      if (!element.contains(players[at].root)) continue;
      players[at].stop();
      players.splice(at, 1);
    }
  };

  // Most browsers keep what is seen in its place by themselves; asking where it is would have them lay out the page at once.
  const anchor = () => {
    if (CSS.supports("overflow-anchor", "auto")) return null;
    for (const element of article.children) {
      const { top, bottom } = element.getBoundingClientRect();
      if (bottom > 0) return { element, top };
    }
    return null;
  };

  /// A page: { language, title, styles or null, order: [[key, line]...], html: { key: its HTML if it is new } }. Answers whether every part is known.
  const show = page => {
    if (page.order.some(([key]) => !parts.has(key) && page.html[key] === undefined)) return false;
    if (page.styles !== null) styles.textContent = page.styles;
    if (root.lang !== page.language) root.lang = page.language;
    if (document.title !== page.title) document.title = page.title;
    const kept = anchor();
    const next = new Map();
    lines = new Map();
    const before = [...parts.values()];
    const isSameLength = before.length === page.order.length;
    if (!isSameLength) formers = [];
    for (const [at, [key, line]] of page.order.entries()) {
      const known = parts.get(key);
      const elements = known ?? elementsOf(page.html[key]);
      if (!known && isSameLength) remember(elements, before[at], at);
      for (const element of elements) lines.set(element, line);
      next.set(key, elements);
    }
    for (const [key, elements] of parts) {
      if (next.has(key)) continue;
      for (const element of elements) {
        detach(element);
        element.remove();
      }
    }
    // Of a whole handout the first part stands above the others.
    const [first, ...others] = root.dataset.alone === undefined ? [...next.values()] : [[], ...next.values()];
    if (running.firstChild !== first?.[0]) running.replaceChildren(...(first ?? []));
    let place = article.firstElementChild;
    for (const element of others.flat()) {
      if (element === place) {
        place = place.nextElementSibling;
        continue;
      }
      const isNew = !element.isConnected;
      article.insertBefore(element, place);
      if (isNew) attach(element);
    }
    parts = next;
    if (kept?.element.isConnected) scrollBy(0, kept.element.getBoundingClientRect().top - kept.top);
    fit();
    root.dataset.shown = String(Number(root.dataset.shown ?? 0) + 1);
    return true;
  };

  /// Brings the part of a line into view, unless it is there.
  const see = line => {
    const element = [...article.children].findLast(one => lines.get(one) <= line);
    const { top, bottom } = element?.getBoundingClientRect() ?? {};
    if (element && (bottom < 40 || top > innerHeight - 40)) element.scrollIntoView({ block: "center" });
  };

  // What is shown alone is as wide as it can be with its staves, or all of it, in view, down to half of the room.
  const widths = [100, 90, 80, 70, 60, 50];
  const fit = () => {
    if (root.dataset.alone === undefined) return;
    const seen = article.querySelector(".staves") ?? article;
    for (const width of innerWidth < 600 ? [100] : widths) {
      article.style.width = `${width}%`;
      if (scrollY + seen.getBoundingClientRect().bottom <= root.clientHeight) return;
    }
  };
  const alone = () => {
    if (root.dataset.alone !== undefined) return;
    root.dataset.alone = "";
    new ResizeObserver(fit).observe(root);
  };

  document.addEventListener("click", event => {
    const link = event.target.closest("a[href]");
    if (link) {
      event.preventDefault();
      open(link.href, "_blank", "noopener");
      return;
    }
    if (event.target.closest("button, input, select, label, summary") || !getSelection().isCollapsed) return;
    const part = [...lines.keys()].find(element => element.contains(event.target));
    if (part) tell(lines.get(part));
  });

  globalThis.fretloom = {
    show,
    see,
    alone,
    speak: said => (words = said),
    theme: name => {
      if (name) root.dataset.theme = name;
      else delete root.dataset.theme;
    },
  };
  parent.postMessage({ fretloom: "ready" }, location.origin);
})();
