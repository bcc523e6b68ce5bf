// A "?" opens the meaning of a word where it stands. Without script, or where it cannot be fetched, it leads to the page of words.
const pages = new Map();
const note = Object.assign(document.createElement("div"), { popover: "auto", className: "meaning" });
document.body.append(note);

function page(address) {
  if (!pages.has(address)) {
    const loading = fetch(address)
      .then(answer => answer.ok ? answer.text() : Promise.reject(new Error(answer.status)))
      .then(text => new DOMParser().parseFromString(text, "text/html"));
    loading.catch(() => pages.delete(address));
    pages.set(address, loading);
  }
  return pages.get(address);
}

document.addEventListener("click", async event => {
  const link = event.target.closest("a.here");
  if (!link || event.button || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  const [address, anchor] = link.href.split("#");
  try {
    const word = (await page(address)).getElementById(decodeURIComponent(anchor));
    const [term, meaning] = [word.querySelector("dt").cloneNode(true), word.querySelector("dd").cloneNode(true)];
    for (const each of meaning.querySelectorAll("a")) each.remove();
    const all = Object.assign(document.createElement("a"), { href: link.href, textContent: "All words" });
    const rest = document.createElement("p");
    rest.append(all);
    note.replaceChildren(...[term, meaning].map(part => Object.assign(document.createElement("p"), { textContent: part.textContent.trim().replace(/\s+/g, " ") })), rest);
    note.showPopover({ source: link });
  } catch {
    location.assign(link.href);
  }
});
