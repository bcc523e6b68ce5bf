// Keeps the check page for use without a connection, and every page once somebody has switched that on (offline.js); everything else is asked for
// as usual. What it keeps is named by the site's own path, so that two sites on one host leave each other alone.
const root = new URL("./", self.location);
const mine = `rulebook:${root.pathname}:`;
const name = mine + version;
const every = `${mine}pages:`;
const together = 12;

const fresh = file => new Request(new URL(file, root), { cache: "no-cache" });

/** Keeps what is not kept yet of all pages, some at a time, and says how many are. */
async function keepPages(say = () => {}) {
  const cache = await caches.open(every + version);
  const kept = new Set((await cache.keys()).map(request => request.url));
  const missing = pages.filter(file => !kept.has(new URL(file, root).href));
  for (let i = 0; i <= missing.length; i += together) {
    say({ kept: pages.length - missing.length + i, of: pages.length });
    await cache.addAll(missing.slice(i, i + together).map(fresh));
  }
  say({ kept: pages.length, of: pages.length });
}

const isSwitchedOn = async () => (await caches.keys()).some(key => key.startsWith(every));

self.addEventListener("install", event => event.waitUntil(
  caches.open(name).then(cache => cache.addAll(files.map(fresh)))
    .then(async () => { if (await isSwitchedOn()) await keepPages(); })
    .then(() => self.skipWaiting())));

self.addEventListener("activate", event => event.waitUntil(
  caches.keys()
    .then(keys => Promise.all(keys.filter(key => key.startsWith(mine) && key !== name && key !== every + version).map(key => caches.delete(key))))
    .then(() => self.clients.claim())));

self.addEventListener("message", event => {
  const [port] = event.ports;
  event.waitUntil(keepPages(state => port.postMessage(state)).catch(error => port.postMessage({ failed: error.message })));
});

async function kept(request) {
  const url = new URL(request.url);
  const asked = url.pathname.endsWith("/") ? new URL("index.html", url) : request;
  for (const each of [name, every + version])
    if (await caches.has(each)) {
      const found = await (await caches.open(each)).match(asked, { ignoreSearch: true });
      if (found) return found;
    }
}

self.addEventListener("fetch", event => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith(kept(event.request).then(found => found ?? fetch(event.request)));
});
