// Vehicles kept in this browser, and nowhere else.
import { element } from "./answer.js";

const at = id => document.getElementById(id);
const key = `rulebook:${new URL("./", import.meta.url).pathname}:vehicles`;
const list = at("vehicles");

function load() {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? "[]");
    return Array.isArray(kept) ? kept.filter(each => typeof each?.name === "string" && typeof each.vehicle === "object") : [];
  } catch {
    return [];
  }
}

function store(kept) {
  try {
    if (kept.length) localStorage.setItem(key, JSON.stringify(kept));
    else localStorage.removeItem(key);
    return true;
  } catch {
    at("vehicles-said").textContent = "The browser keeps nothing for this page.";
    return false;
  }
}

/** Shows what is kept. read gives the job of the form, take puts a kept vehicle into it, save offers a file. */
export function vehicles({ read, take, save }) {
  const say = text => { at("vehicles-said").textContent = text; };

  function show() {
    const kept = load();
    at("export-vehicles").hidden = at("forget-vehicles").hidden = kept.length === 0;
    list.replaceChildren(...kept.map(each => {
      const line = element("li");
      const use = element("button", each.name);
      use.type = "button";
      use.setAttribute("aria-label", `Take ${each.name} into the form`);
      use.addEventListener("click", () => {
        take(each);
        say(`${each.name} stands in the form.`);
      });
      line.append(use);
      return line;
    }));
  }

  at("keep-vehicle").addEventListener("click", () => {
    const job = read();
    if (!job?.vehicle) return say("There is no vehicle in the form yet.");
    const kept = load();
    const name = `${job.job ?? `vehicle ${kept.length + 1}`}`;
    if (store([...kept.filter(each => each.name !== name), { name, "registered-in": job["registered-in"], vehicle: job.vehicle }])) say(`${name} is kept in this browser.`);
    show();
  });
  at("export-vehicles").addEventListener("click", () => save("vehicles.json", JSON.stringify(load(), null, 2) + "\n"));
  at("forget-vehicles").addEventListener("click", () => {
    store([]);
    show();
    say("Nothing is kept any more.");
  });
  show();
}
