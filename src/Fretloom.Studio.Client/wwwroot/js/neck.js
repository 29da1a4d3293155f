// Pointing, walking and choosing on the neck. Its cells are written by the program; here one listener serves them all.
export function serve(listener) {
  const grid = document.getElementById("neck-grid");
  const scroll = document.getElementById("neck");
  const cellOf = event => event.target.closest?.("[data-spot]");
  const at = spot => grid.querySelector(`[data-spot="${spot}"]`);
  let pointed = "";

  const point = spot => {
    if (spot === pointed) return;
    pointed = spot;
    listener.invokeMethod("Pointed", spot);
  };
  const choose = cell => {
    const spot = cell.dataset.spot;
    const hadFocus = grid.contains(document.activeElement);
    listener.invokeMethod("Chose", spot);
    // The cells were written anew.
    if (hadFocus) requestAnimationFrame(() => at(spot)?.focus({ preventScroll: true }));
  };
  const walk = (cell, across, along) => {
    const [string, fret] = cell.dataset.spot.split(":").map(Number);
    if (grid.dataset.mirrored) along = -along;
    const row = cell.parentElement;
    if (along === Infinity) return row.lastElementChild;
    if (along === -Infinity) return row.querySelector("[data-spot]");
    return at(`${string + across}:${fret + along}`);
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
    point(cell.dataset.spot);
  });
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
    else return;
    event.preventDefault();
  });
  new ResizeObserver(() => {
    if (scroll.clientWidth > 0) listener.invokeMethod("Resized", scroll.clientWidth);
  }).observe(scroll);
}
