// Two repeat signs, moved by mouse, finger or keys, choose the bars that go round. They stand in a strip of their own below the staves.
const steps = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -4, PageUp: 4, Home: -Infinity, End: Infinity };

class RepeatSigns {
  constructor(staves, bars, changed) {
    [this.staves, this.bars, this.changed] = [staves, bars, changed];
    [this.first, this.last] = [1, bars];
    this.signs = { first: this.sign("first", "Repeat from"), last: this.sign("last", "Repeat to") };
    new ResizeObserver(() => this.measure()).observe(staves);
    this.measure();
  }

  sign(which, words) {
    const sign = document.createElement("div");
    sign.className = `sign ${which}`;
    sign.tabIndex = 0;
    sign.setAttribute("role", "slider");
    sign.setAttribute("aria-label", words);
    sign.addEventListener("keydown", event => {
      if (!(event.key in steps)) return;
      event.preventDefault();
      this.move(which, this[which] + steps[event.key]);
    });
    sign.addEventListener("pointerdown", event => {
      event.preventDefault();
      sign.focus();
      sign.setPointerCapture(event.pointerId);
    });
    sign.addEventListener("pointermove", event => {
      if (sign.hasPointerCapture(event.pointerId)) this.move(which, this.nearestTo(which, event.clientX, event.clientY));
    });
    this.staves.append(sign);
    return sign;
  }

  bounds(which) {
    return which === "first" ? [1, this.last] : [this.first, this.bars];
  }

  move(which, bar) {
    const [least, most] = this.bounds(which);
    bar = Math.min(most, Math.max(least, bar));
    if (bar === this[which]) return;
    this[which] = bar;
    this.place();
    this.changed();
  }

  nearestTo(which, clientX, clientY) {
    const host = this.staves.getBoundingClientRect();
    const [x, y] = [clientX - host.left, clientY - host.top];
    const far = box => {
      const above = Math.max(0, box.rowTop - y, y - box.rowBottom);
      return 4 * above + Math.abs(x - (which === "first" ? box.left : box.right));
    };
    const all = [...this.boxes].map(([bar, box]) => ({ bar, far: far(box) }));
    return all.reduce((best, one) => (one.far < best.far ? one : best), { bar: this[which], far: Infinity }).bar;
  }

  // Where every bar lies, which changes only with the size of the staves.
  measure() {
    const host = this.staves.getBoundingClientRect();
    this.boxes = new Map();
    for (let bar = 1; bar <= this.bars; bar++) {
      const box = this.boxOf(bar, host);
      if (box) this.boxes.set(bar, box);
    }
    this.place();
  }

  boxOf(bar, host) {
    const part = [...this.staves.querySelectorAll(`[data-bar="${bar}"]`)].find(one => one.getClientRects().length > 0);
    if (!part) return undefined;
    const lines = [...part.querySelectorAll(".staff > path")];
    const boxes = (lines.length > 0 ? lines : [part]).map(one => one.getBoundingClientRect());
    const edges = (names, side) => [...part.querySelectorAll(names)].map(one => one.getBoundingClientRect()[side]);
    const row = part.closest("div.system, .bars").getBoundingClientRect();
    // Where a system begins, the bar begins after its clef and signs.
    const head = Math.min(Infinity, ...edges("[data-note]", "left"));
    const signs = edges(".clef, .keySig, .meterSig", "right").filter(right => right <= head);
    const left = Math.max(Math.min(...boxes.map(one => one.left)), ...signs);
    return {
      left: left - host.left,
      right: Math.max(...boxes.map(one => one.right)) - host.left,
      top: Math.min(...boxes.map(one => one.top)) - host.top,
      bottom: Math.max(...boxes.map(one => one.bottom)) - host.top,
      rowTop: row.top - host.top,
      rowBottom: row.bottom - host.top,
    };
  }

  place() {
    for (const [which, sign] of Object.entries(this.signs)) {
      const bar = this[which];
      const [least, most] = this.bounds(which);
      sign.setAttribute("aria-valuemin", least);
      sign.setAttribute("aria-valuemax", most);
      sign.setAttribute("aria-valuenow", bar);
      sign.setAttribute("aria-valuetext", `bar ${bar}`);
      sign.dataset.shows = bar;
      const box = this.boxes.get(bar);
      sign.hidden = !box;
      if (!box) continue;
      sign.style.left = `${which === "first" ? box.left : box.right}px`;
      sign.style.top = `${box.rowBottom}px`;
    }
    this.mark();
  }

  // A line in the strip below the chosen bars; behind them a tint, where they are not all of them.
  mark() {
    this.staves.querySelectorAll(".chosen, .span").forEach(one => one.remove());
    const rows = new Map();
    for (let bar = this.first; bar <= this.last; bar++) {
      const box = this.boxes.get(bar);
      if (!box) continue;
      const row = rows.get(box.rowTop);
      if (row) row.right = box.right;
      else rows.set(box.rowTop, { ...box });
    }
    const areAll = this.first === 1 && this.last === this.bars;
    for (const row of rows.values()) {
      this.strip("span", row.left, row.rowBottom, row.right - row.left);
      if (!areAll) this.strip("chosen", row.left, row.top - 6, row.right - row.left, row.bottom - row.top + 12);
    }
  }

  strip(name, left, top, width, height) {
    const strip = document.createElement("div");
    strip.className = name;
    strip.style.left = `${left}px`;
    strip.style.top = `${top}px`;
    strip.style.width = `${width}px`;
    if (height) strip.style.height = `${height}px`;
    this.staves.prepend(strip);
  }
}
