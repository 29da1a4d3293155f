// Pointing, walking and choosing on the neck. Its cells are written by the program; here one listener serves them all.
export function serve(listener) {
  const grid = document.getElementById("neck-grid");
  const scroll = document.getElementById("neck");
  const cellOf = event => event.target.closest?.("[data-spot]");
  const at = spot => grid.querySelector(`[data-spot="${spot}"]`);
  let pointed = "";
  let last = "";

  const point = spot => {
    if (spot === pointed) return;
    pointed = spot;
    listener.invokeMethod("Pointed", spot);
  };
  const choose = cell => {
    const spot = cell.dataset.spot;
    listener.invokeMethod("Chose", spot);
  };
  const walk = (cell, across, along) => {
    const [string, fret] = cell.dataset.spot.split(":").map(Number);
    if (grid.dataset.mirrored && Number.isFinite(along)) along = -along;
    let row = cell.parentElement;
    // Strings may be left out, and a short string lacks frets: on to the next one that has this fret.
    while (across !== 0 && row) {
      row = across > 0 ? row.nextElementSibling : row.previousElementSibling;
      const found = row?.querySelector(`[data-spot$=":${fret}"]`);
      if (found) return found;
    }
    if (across !== 0) return null;
    if (along === Infinity) return row.lastElementChild;
    if (along === -Infinity) return row.querySelector("[data-spot]");
    return at(`${string}:${fret + along}`);
  };
  const steps = {
    ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0], Home: [0, -Infinity], End: [0, Infinity],
  };

  grid.addEventListener("pointerover", event => {
    const cell = cellOf(event);
    if (cell && event.pointerType !== "touch") point(cell.dataset.spot);
  });
  grid.addEventListener("pointerleave", () => point(""));
  grid.addEventListener("focusin", event => {
    const cell = cellOf(event);
    if (!cell) return;
    grid.querySelector('[tabindex="0"]')?.setAttribute("tabindex", "-1");
    cell.tabIndex = 0;
    last = cell.dataset.spot;
    point(last);
  });
  grid.addEventListener("focusout", event => {
    if (event.relatedTarget) last = "";
  });
  document.addEventListener("pointerdown", event => {
    if (!grid.contains(event.target)) last = "";
  });
  // Cells are written anew with every change: whoever stood on one still does.
  new MutationObserver(() => {
    if (last && document.activeElement === document.body) at(last)?.focus({ preventScroll: true });
  }).observe(grid, { childList: true });
  grid.addEventListener("click", event => {
    const cell = cellOf(event);
    if (!cell) return;
    listener.invokeMethod("Heard", cell.dataset.spot);
    choose(cell);
  });
  grid.addEventListener("keydown", event => {
    const cell = cellOf(event);
    if (!cell || event.ctrlKey || event.metaKey || event.altKey) return;
    const step = steps[event.key];
    if (step) walk(cell, ...step)?.focus();
    else if (event.key === "Enter") choose(cell);
    else if (event.key === " ") listener.invokeMethod("Heard", cell.dataset.spot);
    else if (event.key === "t" || event.key === "T") listener.invokeMethod("Twin");
    else return;
    event.preventDefault();
  });
  // Whether the end with the names of the strings is out of sight.
  const push = () => {
    const beyond = grid.dataset.mirrored ? scroll.scrollWidth - scroll.clientWidth - scroll.scrollLeft : scroll.scrollLeft;
    scroll.classList.toggle("is-pushed", beyond > 8);
  };
  scroll.addEventListener("scroll", push, { passive: true });
  new ResizeObserver(() => {
    push();
    if (scroll.clientWidth > 0) listener.invokeMethod("Resized", scroll.clientWidth);
  }).observe(scroll);
}
