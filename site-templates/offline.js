// One switch keeps every page of the site in this browser; the worker does the keeping and goes on where it stopped.
const root = new URL("./", import.meta.url);
const every = `rulebook:${root.pathname}:pages:`;
const box = document.getElementById("offline");
const keep = box.querySelector("input");
const said = box.querySelector("[role=status]");
const say = text => { said.textContent = text; };

const held = async () => (await caches.keys()).filter(key => key.startsWith(every));

async function fill() {
  await navigator.serviceWorker.register(new URL("worker.js", root));
  const { active } = await navigator.serviceWorker.ready;
  const { port1, port2 } = new MessageChannel();
  port1.addEventListener("message", ({ data }) => {
    if (!keep.checked) return;
    if (data.failed) say("Not all pages are kept yet: the connection failed. The next visit goes on.");
    else say(data.kept < data.of ? `${data.kept} of ${data.of} files kept.` : "Every page works without a connection.");
  });
  port1.start();
  active.postMessage("keep", [port2]);
}

keep.addEventListener("change", async () => {
  try {
    if (keep.checked) return await fill();
    for (const key of await held()) await caches.delete(key);
    say("Only the check page is kept.");
  } catch (error) {
    keep.checked = false;
    say(`The browser keeps nothing: ${error.message}`);
  }
});

if ("serviceWorker" in navigator && "caches" in window) {
  box.hidden = false;
  keep.checked = (await held()).length > 0;
  if (keep.checked) fill().catch(() => {});
}
