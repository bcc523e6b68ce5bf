// This edition of the site has no check page: what an earlier one left in the browser takes itself away.
const mine = `rulebook:${new URL("./", self.location).pathname}:`;

self.addEventListener("install", () => self.skipWaiting());

self.addEventListener("activate", event => event.waitUntil(
  caches.keys()
    .then(keys => Promise.all(keys.filter(key => key.startsWith(mine)).map(key => caches.delete(key))))
    .then(() => self.registration.unregister())
    .then(() => self.clients.matchAll({ type: "window" }))
    .then(pages => Promise.all(pages.map(page => page.navigate(page.url).catch(() => {}))))));
