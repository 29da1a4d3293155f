// Keeps the studio for times without a host: everything it is made of is fetched once and answered from here.
// What the host works out, under /api, always goes to the host. A new version waits until no page of the old one is open: their parts belong together.
self.importScripts("service-worker-assets.js");

const cacheName = "fretloom " + self.assetsManifest.version;
// Fetched when it is first needed, and kept from then on.
const later = /^assets\//;
const kept = self.assetsManifest.assets.filter(asset => !/service-worker|\.(br|gz|map)$/.test(asset.url));

self.addEventListener("install", event => {
  // Where the browser can, it answers these from what is kept without asking here, and what is not kept from the host: Service Workers (W3C),
  // static routing. Their whole address must be that of what is kept.
  event.addRoutes?.(["_framework", "css", "fonts", "js"].map(folder => ({ condition: { urlPattern: `/${folder}/*` }, source: { cacheName } })));
  event.waitUntil(fill());
});
self.addEventListener("activate", event => event.waitUntil(empty()));
self.addEventListener("message", event => {
  if (later.test(event.data?.keep)) event.waitUntil(keep(event.data.keep));
});
self.addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin || url.pathname.startsWith("/api/")) return;
  event.respondWith(answer(event.request, url));
});

async function fill() {
  const cache = await caches.open(cacheName);
  const before = (await caches.keys()).filter(key => key.startsWith("fretloom ") && key !== cacheName);
  await Promise.all(
    kept.map(async ({ url, hash }) => {
      const request = new Request(url, { cache: "no-cache", integrity: hash });
      const response = (await keptBefore(before, url, hash)) ?? (await fetch(request));
      if (!response.ok) throw new Error(`${url}: ${response.status}`);
      await cache.put(url, response);
    }),
  );
  await keepAgain(before);
}

// A file that another version had with the same content need not be fetched again.
async function keptBefore(names, url, hash) {
  for (const name of names) {
    const response = await (await caches.open(name)).match(url);
    if (!response) continue;
    const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
    if ("sha256-" + btoa(String.fromCharCode(...new Uint8Array(digest))) === hash) return response;
  }
  return undefined;
}

// What was fetched before this worker could keep it; the browser has it still.
async function keep(path) {
  const cache = await caches.open(cacheName);
  if (await cache.match(path)) return;
  const response = await fetch(path);
  if (response.ok) await cache.put(path, response);
}

// What was needed once is wanted in the new version too; without a host it is fetched at its next use.
async function keepAgain(names) {
  for (const name of names) {
    for (const { url } of await (await caches.open(name)).keys()) {
      const path = new URL(url).pathname.slice(1);
      if (later.test(path)) await keep(path).catch(() => {});
    }
  }
}

async function empty() {
  const names = (await caches.keys()).filter(key => key.startsWith("fretloom ") && key !== cacheName);
  await Promise.all(names.map(name => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request, url) {
  const cache = await caches.open(cacheName);
  const path = url.pathname.slice(1);
  // The door, where there is one, is the host's own page.
  const isPage = request.mode === "navigate" && path !== "login" && !/\.[a-z0-9]+$/i.test(path);
  const found = await cache.match(isPage ? "index.html" : path);
  if (found) return found;
  const response = await fetch(request);
  if (response.ok && later.test(path)) await cache.put(path, response.clone());
  return response;
}
