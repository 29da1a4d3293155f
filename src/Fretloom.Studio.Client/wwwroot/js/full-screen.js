// A dialog over everything, in full screen where the browser allows it.
export function show(id) {
  const dialog = document.getElementById(id);
  dialog.showModal();
  dialog.requestFullscreen?.().catch(() => {});
}

export function end(id) {
  if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
  document.getElementById(id)?.close();
}
