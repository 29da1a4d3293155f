// Starts the program, and once it is seen what keeps it for times without a host: that fetches everything again, and would hold the first sight up.
Blazor.start();
if ("serviceWorker" in navigator) {
  studio.whenReady.then(() => navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" })).catch(() => {});
}
