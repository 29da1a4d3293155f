// What is shown to a class: a dialog over everything, in full screen where the browser allows it, that hears keys wherever the focus is.
let dialog;
let listener;
let isLeaving = false;
const heard = new WeakSet();

export function show(id, to) {
  listener = to;
  if (dialog?.id !== id) {
    dialog = document.getElementById(id);
    listen(window);
    // Frames have keys of their own: one that was clicked on has the focus.
    dialog.addEventListener("load", event => listenIn(event.target), true);
    new ResizeObserver(measure).observe(dialog);
    document.addEventListener("fullscreenchange", () => {
      if (!document.fullscreenElement && dialog.open && !isLeaving) end(id);
      isLeaving = false;
      listener.invokeMethod("Filled", document.fullscreenElement !== null);
    });
  }
  dialog.showModal();
  dialog.focus();
  dialog.querySelectorAll("iframe").forEach(listenIn);
  takeScreen();
  measure();
}

export function end(id) {
  if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
  document.getElementById(id)?.close();
}

export function toggle() {
  if (!document.fullscreenElement) return takeScreen();
  isLeaving = true;
  return document.exitFullscreen().catch(() => (isLeaving = false));
}

// A dialog may not take the screen itself (Fullscreen API, 3): the page does, and the dialog lies over it.
function takeScreen() {
  return document.documentElement.requestFullscreen?.().catch(() => {});
}

function measure() {
  const room = dialog.querySelector(".picture, .page");
  if (dialog.open && room?.clientHeight > 0) listener.invokeMethod("Resized", room.clientWidth / room.clientHeight);
}

function listenIn(frame) {
  const inside = frame.contentDocument;
  if (inside) listen(inside);
}

function listen(target) {
  if (heard.has(target)) return;
  heard.add(target);
  target.addEventListener("keydown", pressed, true);
}

function pressed(event) {
  if (!dialog?.open || event.ctrlKey || event.metaKey || event.altKey) return;
  const at = event.target;
  // Who walks by the Tab key presses buttons with Space, and moves within a field with the arrows.
  if (event.key === " " && at.matches?.("button:focus-visible, summary:focus-visible, input")) return;
  if (at.matches?.("input, select, textarea") && !/^Page|^Escape$/.test(event.key)) return;
  if (!listener.invokeMethod("Pressed", event.key)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
}
