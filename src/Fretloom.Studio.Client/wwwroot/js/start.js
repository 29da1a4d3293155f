// Starts the program, and what keeps it for times without a host.
Blazor.start();
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" }).catch(() => {});
}
