// Shows and hides what the page holds; the state lives in the address. No rule is known here.
import { addColumn } from "./beside.js";

const form = document.getElementById("choose");
const table = document.getElementById("comparison");
const facts = [...form.querySelectorAll("[data-fact]")];
const columns = [...form.querySelectorAll("[name=column]")];
const also = document.getElementById("also");
const added = [];
const on = document.getElementById("on");
const days = [...document.querySelectorAll("a[data-day]")].map(link => link.textContent);

// A kind of vehicle is a bit; the last fact changes fastest (see VehicleKinds).
function wanted() {
  const sizes = facts.map(fact => fact.options.length - 1);
  const count = sizes.reduce((product, size) => product * size, 1);
  let set = 0n;
  for (let kind = 0; kind < count; kind++) {
    let rest = kind, holds = true;
    for (let i = facts.length - 1; i >= 0; i--) {
      const word = facts[i].options[1 + rest % sizes[i]].value;
      rest = Math.floor(rest / sizes[i]);
      if (facts[i].value && facts[i].value !== word) holds = false;
    }
    if (holds) set |= 1n << BigInt(kind);
  }
  return set;
}

function show() {
  const set = wanted();
  for (const cell of table.querySelectorAll("tbody td:not(.fill)")) {
    let any = false;
    for (const rule of cell.querySelectorAll("div")) {
      let binds = false;
      for (const line of rule.querySelectorAll("p")) {
        const kinds = line.dataset.k;
        line.hidden = kinds !== undefined && (BigInt("0x" + kinds) & set) === 0n;
        binds ||= !line.hidden;
      }
      rule.hidden = !binds;
      any ||= binds;
    }
    const said = cell.querySelector("i") ?? cell.appendChild(Object.assign(document.createElement("i"), { textContent: "nothing for this vehicle" }));
    said.hidden = any;
  }
  const hidden = new Set(columns.filter(box => !box.checked).map(box => box.value));
  const heads = [...table.tHead.rows[0].cells];
  for (const row of table.querySelectorAll("tr:not(.group)")) for (const cell of row.cells) cell.hidden = hidden.has(heads[cell.cellIndex].dataset.c);
  for (const fill of table.querySelectorAll(".fill")) fill.colSpan = Math.max(1, columns.length - hidden.size);
}

function state() {
  const search = new URLSearchParams();
  for (const fact of facts) if (fact.value) search.set(fact.name, fact.value);
  const kept = columns.filter(box => box.checked).map(box => box.value);
  if (added.length) search.set("also", added.join(" "));
  if (kept.length < columns.length) search.set("columns", kept.join(" "));
  return search;
}

function remember() {
  const search = state();
  if (on.value && on.value !== form.dataset.on) search.set("on", on.value);
  const text = search.toString();
  history.replaceState(null, "", location.pathname + (text ? "?" + text : "") + location.hash);
}

function goTo(day) {
  const search = state();
  const earlier = days.filter(each => each <= day);
  const change = earlier.length ? earlier[earlier.length - 1] : days[0];
  search.set("on", day);
  location.assign(new URL(`${form.dataset.folder}${change}.html?${search}${location.hash}`, location.href));
}

function read() {
  const search = new URLSearchParams(location.search);
  for (const fact of facts) {
    const word = search.get(fact.name);
    if ([...fact.options].some(option => option.value === word)) fact.value = word;
  }
  const kept = search.get("columns")?.split(" ");
  if (kept) for (const box of columns) box.checked = kept.includes(box.value);
  if (kept) form.querySelector(".columns-of").open = true;
  const day = search.get("on");
  if (day && /^\d{4}-\d\d-\d\d$/.test(day)) {
    on.value = day;
    const change = days.filter(each => each <= day).pop() ?? days[0];
    const shown = days.filter(each => each <= form.dataset.on).pop() ?? days[0];
    if (change !== undefined && change !== shown) goTo(day);
  }
}

async function copy() {
  const rows = [...table.rows].map(row => [...row.cells].filter(cell => !cell.hidden).map(text).join("\t"));
  await navigator.clipboard.writeText(rows.join("\n"));
  document.getElementById("said").textContent = "Copied.";
}

function text(cell) {
  const tidy = part => part.textContent.trim().replace(/\s+/g, " ");
  const rules = [...cell.querySelectorAll("div:not([hidden])")].map(rule => {
    const said = [...rule.querySelectorAll("p:not([hidden])")].map(tidy).join("; ");
    const when = rule.querySelector(":scope > small");
    return when ? `${tidy(when)}: ${said}` : said;
  });
  return (rules.length ? rules.join("; ") : [...cell.childNodes]
    .filter(node => !node.hidden && !node.classList?.contains("here")).map(node => node.textContent).join(" ").trim().replace(/\s+/g, " "));
}

// A column of another nation, with its box among the others.
async function add(id) {
  const option = also && [...also.options].find(each => each.value === id);
  if (!id || !option || added.includes(id)) return;
  option.disabled = true;
  try {
    await addColumn(id, option.parentElement.dataset.page, form.dataset.on);
  } catch {
    option.disabled = false;
    document.getElementById("said").textContent = `${option.textContent} could not be loaded.`;
    return;
  }
  added.push(id);
  const label = document.createElement("label");
  const box = Object.assign(document.createElement("input"), { type: "checkbox", name: "column", value: id, checked: true });
  label.append(box, ` ${option.textContent}`);
  form.querySelector("fieldset").append(label);
  columns.push(box);
}

form.hidden = false;
for (const id of new URLSearchParams(location.search).get("also")?.split(" ") ?? []) await add(id);
read();
show();
form.addEventListener("submit", event => { event.preventDefault(); if (on.value) goTo(on.value); });
form.addEventListener("change", async event => {
  if (event.target === on) return;
  if (event.target === also) {
    await add(also.value);
    also.value = "";
  }
  show();
  remember();
});
document.getElementById("copy").addEventListener("click", copy);
