// Keeps the check page for use without a connection; everything else is asked for as usual. What it keeps is named by the site's own path, so
// that two sites on one host leave each other alone.
const mine = `rulebook:${new URL("./", self.location).pathname}:`;
const name = mine + version;

self.addEventListener("install", event => event.waitUntil(
  caches.open(name).then(cache => cache.addAll(files.map(file => new Request(file, { cache: "no-cache" })))).then(() => self.skipWaiting())));

self.addEventListener("activate", event => event.waitUntil(
  caches.keys()
    .then(keys => Promise.all(keys.filter(key => key.startsWith(mine) && key !== name).map(key => caches.delete(key))))
    .then(() => self.clients.claim())));

self.addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  event.respondWith(caches.open(name).then(cache => cache.match(event.request, { ignoreSearch: true })).then(kept => kept ?? fetch(event.request)));
});
