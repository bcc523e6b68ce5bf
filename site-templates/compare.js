// Shows and hides what the page holds; the state lives in the address. No rule is known here.
import { addPlace } from "./beside.js";

const form = document.getElementById("choose");
const comparison = document.getElementById("comparison");
const vehicle = document.getElementById("vehicle");
const also = document.getElementById("also");
const on = document.getElementById("on");
const said = document.getElementById("said");
const sections = [...comparison.querySelectorAll(".compared")];
const tabs = [...document.querySelectorAll(".tabs a")];
const days = [...document.querySelectorAll("a[data-day]")].map(link => link.textContent);
const added = [];
const isDay = text => /^\d{4}-\d\d-\d\d$/.test(text ?? "") && !isNaN(Date.parse(text));
const words = day => new Date(`${day}T00:00:00Z`).toLocaleDateString("en-AU", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
const boxes = () => [...form.querySelectorAll("[name=state]")];
const changeOf = day => days.filter(each => each <= day).pop() ?? days[0];

function show() {
  const states = new Set(boxes().filter(box => box.checked).map(box => box.value));
  for (const row of comparison.querySelectorAll("tbody tr"))
    row.hidden = !states.has(row.dataset.c) || !(row.dataset.v === "*" || row.dataset.v.split(" ").includes(String(vehicle.selectedIndex)));
  document.getElementById("vehicle-shown").textContent = vehicle.selectedOptions[0].textContent;
}

function showTopic() {
  const wanted = sections.find(section => section.id === decodeURIComponent(location.hash.slice(1)).split(".")[0]) ?? sections[0];
  for (const section of sections) section.classList.toggle("aside-tab", section !== wanted);
  tabs.forEach((tab, i) => sections[i] === wanted ? tab.setAttribute("aria-current", "true") : tab.removeAttribute("aria-current"));
}

function state() {
  const search = new URLSearchParams();
  const all = boxes();
  const kept = all.filter(box => box.checked).map(box => box.value);
  if (vehicle.selectedIndex > 0) search.set("vehicle", vehicle.value);
  if (added.length) search.set("also", added.join(" "));
  if (kept.length < all.length) search.set("states", kept.join(" "));
  return search;
}

function remember() {
  const search = state();
  if (isDay(on.value) && on.value !== form.dataset.on) search.set("on", on.value);
  const text = search.toString();
  history.replaceState(null, "", location.pathname + (text ? "?" + text : "") + location.hash);
}

function goTo(day) {
  const search = state();
  search.set("on", day);
  location.assign(new URL(`${form.dataset.folder}${changeOf(day)}.html?${search}${location.hash}`, location.href));
}

// The day asked for is the day shown: a page holds from its day to the next on which something changes.
function showDay(day) {
  on.value = day;
  for (const each of document.querySelectorAll("[data-day-shown]")) each.textContent = words(day);
  document.querySelector("[data-since]").hidden = changeOf(day) === day;
  for (const caption of comparison.querySelectorAll("caption")) caption.textContent = caption.textContent.replace(/ on [^,]*$/, ` on ${words(day)}`);
}

// The vehicle by its name, or by the facts of an older link.
function chosenVehicle(search) {
  const options = [...vehicle.options];
  const facts = ["category", "four-wheel-drive", "stability-control", "vehicle-kind"].filter(fact => search.get(fact)).map(fact => `${fact}=${search.get(fact)}`);
  return options.find(option => option.value === search.get("vehicle"))
    ?? (facts.length ? options.find(option => facts.every(fact => option.dataset.facts.split(" ").includes(fact))) : undefined);
}

function read() {
  const search = new URLSearchParams(location.search);
  const wanted = chosenVehicle(search);
  if (wanted) wanted.selected = true;
  const kept = (search.get("states") ?? search.get("columns"))?.split(" ");
  if (kept) for (const box of boxes()) box.checked = kept.includes(box.value) || added.includes(box.value);
  const day = search.get("on");
  if (!isDay(day)) return;
  if (changeOf(day) !== undefined && changeOf(day) !== changeOf(form.dataset.on)) goTo(day);
  else showDay(day);
}

const tidy = part => part.textContent.trim().replace(/\s+/g, " ");

async function copy(what, text) {
  try {
    await navigator.clipboard.writeText(text);
    said.textContent = `${what} copied.`;
  } catch {
    said.textContent = `The browser did not let the ${what.toLowerCase()} be copied.`;
  }
}

function tableText() {
  const table = sections.find(section => !section.classList.contains("aside-tab")).querySelector("table");
  const cell = each => [...each.children].length ? [...each.children].map(tidy).join("; ") : tidy(each);
  return [tidy(table.caption), ...[...table.rows].filter(row => !row.hidden).map(row => [...row.cells].map(cell).join("\t"))].join("\n");
}

// A state of another nation, with its box among the others.
async function add(id) {
  const option = also && [...also.options].find(each => each.value === id && each.value);
  if (!option || added.includes(id)) return;
  option.disabled = true;
  try {
    await addPlace(id, option.parentElement.dataset.page, isDay(on.value) ? on.value : form.dataset.on);
  } catch {
    option.disabled = false;
    said.textContent = `${option.textContent} could not be loaded.`;
    return;
  }
  added.push(id);
  const label = document.createElement("label");
  const box = Object.assign(document.createElement("input"), { type: "checkbox", name: "state", value: id, checked: true });
  label.append(box, Object.assign(document.createElement("span"), { textContent: option.textContent }));
  form.querySelector("fieldset").append(label);
}

// Every rule has its report of a mistake beside it: the link is made when the clause opens, so that the page need not hold each address twice.
document.addEventListener("beforetoggle", ({ target, newState }) => {
  if (newState !== "open" || target.querySelectorAll("a").length > 2) return;
  const [rule, line] = target.querySelectorAll("a");
  const report = Object.assign(document.createElement("a"), { textContent: "correction report" });
  report.setAttribute("href", rule.getAttribute("href").replace("#", "#report."));
  line.after("; ", report);
}, true);

// On a phone a card a state is a long page: of many states the first ones are chosen, unless the address says which.
const few = 8;
function shorten() {
  const search = new URLSearchParams(location.search);
  if (boxes().length <= 12 || search.has("states") || search.has("columns") || !matchMedia("(max-width: 48rem)").matches) return;
  for (const box of boxes().slice(few)) if (!added.includes(box.value)) box.checked = false;
  said.textContent = `${few} of ${boxes().length} states are chosen.`;
}

form.hidden = false;
document.querySelector(".vehicle-shown").hidden = true;
showTopic();
for (const id of new URLSearchParams(location.search).get("also")?.split(" ") ?? []) await add(id);
shorten();
read();
show();
window.addEventListener("hashchange", showTopic);
form.addEventListener("submit", event => { event.preventDefault(); if (isDay(on.value)) goTo(on.value); });
form.addEventListener("change", async event => {
  if (event.target === on) return;
  if (event.target === also) {
    await add(also.value);
    also.value = "";
  }
  show();
  remember();
});
document.getElementById("few").addEventListener("click", event => {
  const any = boxes().some(box => box.checked);
  for (const box of boxes()) box.checked = !any;
  event.target.textContent = any ? "All of them" : "None of them";
  show();
  remember();
});
document.getElementById("copy").addEventListener("click", () => copy("Table", tableText()));
document.getElementById("link").addEventListener("click", () => { remember(); copy("Link", location.href); });
document.documentElement.dataset.shown = "";
