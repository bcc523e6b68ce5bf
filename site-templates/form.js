// The form as a job, and a job as the form. Which fields there are, the page says (site-templates/form.json); no rule is known here.
import { spelt } from "./spelling.js";

const form = document.getElementById("job");
const rest = document.getElementById("rest");
const lists = [...form.querySelectorAll("[data-rows]")];

export const fields = () => [...form.querySelectorAll("[name]")];

export function isMap(value) {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The field in which the value at a path stands, or the first of those below the path. */
export function fieldAt(path) {
  const all = fields();
  return all.find(field => field.name === path) ?? form.querySelector(`[data-rows="${CSS.escape(path)}"] [data-key]`) ?? all.find(field => field.name.startsWith(path + ".") || field.name.startsWith(path + "["));
}

// "load.goods[0].mass": load, goods, 0, mass
function steps(path) {
  return path.split(".").flatMap(step => {
    const row = /^(.*)\[(\d+)\]$/.exec(step);
    return row ? [row[1], Number(row[2])] : [step];
  });
}

function get(job, path) {
  return steps(path).reduce((inner, step) =>
    (typeof step === "number" ? Array.isArray(inner) : isMap(inner)) && Object.hasOwn(inner, step) ? inner[step] : undefined, job);
}

function set(job, path, value) {
  const way = steps(path);
  let inner = job;
  way.forEach((step, i) => {
    if (i === way.length - 1) inner[step] = value;
    else inner = inner[step] ??= typeof way[i + 1] === "number" ? [] : Object.create(null);
  });
}

// Rows.
const columns = row => [...row.querySelectorAll("[data-key]")];

function addRow(list) {
  list.querySelector("tbody").append(list.querySelector("template").content.cloneNode(true));
  for (const field of columns(list.querySelector("tbody").lastElementChild)) field.dataset.label = field.getAttribute("aria-label");
}

function resize(list, count) {
  const body = list.querySelector("tbody");
  while (body.rows.length > count) body.lastElementChild.remove();
  while (body.rows.length < count) addRow(list);
}

/** Names the fields of the rows by their place in the job; an empty row has none. */
function number() {
  for (const list of lists) {
    let at = 0;
    list.querySelector("table").hidden = list.querySelector("tbody").rows.length === 0;
    [...list.querySelector("tbody").rows].forEach((row, i) => {
      const own = columns(row);
      const place = own.some(field => field.value.trim()) ? at++ : "";
      for (const field of own) {
        field.name = `${list.dataset.rows}[${place}]${field.dataset.key ? "." + field.dataset.key : ""}`;
        field.setAttribute("aria-label", `${list.dataset.one} ${i + 1}, ${field.dataset.label}`);
      }
      row.querySelector("[data-remove]").setAttribute("aria-label", `Take out ${list.dataset.one} ${i + 1}`);
    });
  }
}

form.addEventListener("click", event => {
  const button = event.target.closest("[data-add], [data-remove]");
  if (!button) return;
  const list = button.closest("[data-rows]");
  const body = list.querySelector("tbody");
  if (button.dataset.add !== undefined) {
    addRow(list);
    number();
    columns(body.lastElementChild)[0].focus();
  } else {
    const row = button.closest("tr");
    const next = (row.nextElementSibling ?? row.previousElementSibling)?.querySelector("[data-remove]") ?? list.querySelector("[data-add]");
    row.remove();
    number();
    next.focus();
    form.dispatchEvent(new Event("input", { bubbles: true }));
  }
});

// Reading.
const isNumber = text => /^[+-]?\d+(\.\d+)?$/.test(text);

function written(field) {
  const text = (spelt[field.dataset.as] ?? (same => same))(field.value.trim());
  return field.dataset.unit && isNumber(text) ? `${text} ${field.dataset.unit}` : text;
}

/** Shows what a field was read as, once it is left: `2"` in a field of millimetres is `2 in`. */
export function respell(field) {
  if (field.dataset?.as && field.value.trim()) put(field, written(field));
}

function merge(into, from) {
  for (const [key, value] of Object.entries(from)) {
    if (isMap(value) && Object.hasOwn(into, key) && isMap(into[key])) merge(into[key], value);
    else Object.defineProperty(into, key, { value, enumerable: true, configurable: true, writable: true });
  }
  return into;
}

/** The job that the form holds. Throws when the other keys cannot be read. */
export function read() {
  number();
  const job = Object.create(null);
  for (const field of fields()) if (field.value.trim()) set(job, field.name, written(field));
  const text = rest.value.trim();
  if (!text) return job;
  const others = JSON.parse(text);
  if (!isMap(others)) throw new Error("they have to be keys with values");
  return merge(job, others);
}

// Filling in.

/** What a field would show for a value; nothing where it would not come out again as it went in. */
function shown(field, value) {
  const text = typeof value === "boolean" ? (value ? "yes" : "no") : typeof value === "number" || typeof value === "string" ? String(value) : "";
  const unit = field.dataset.unit;
  if (text !== text.trim() || (unit && isNumber(text))) return "";
  return unit && text.endsWith(" " + unit) && isNumber(text.slice(0, -unit.length - 1)) ? text.slice(0, -unit.length - 1) : text;
}

function put(field, value) {
  const text = shown(field, value);
  field.value = text;
  if (field.value === text) return text !== "";
  field.value = "";
  return false;
}

/** Rows for a list that the columns can show whole; nothing of it otherwise. */
function fillRows(list, value, used) {
  const keys = columns(list.querySelector("template").content).map(field => field.dataset.key);
  const items = keys[0] === "" && Array.isArray(value) ? value.map(item => ({ "": item })) : value;
  const fits = Array.isArray(items) && items.every(item => isMap(item) && Object.keys(item).every(key => keys.includes(key)) && Object.keys(item).length > 0);
  resize(list, 0);
  resize(list, fits ? items.length : 0);
  const whole = fits && [...list.querySelector("tbody").rows].every((row, i) =>
    columns(row).every(field => !Object.hasOwn(items[i], field.dataset.key) || put(field, items[i][field.dataset.key])));
  if (!whole) resize(list, 0);
  else if (items.length > 0) used.add(list.dataset.rows);
  if (list.querySelector("tbody").rows.length === 0) resize(list, Number(list.dataset.start));
}

/** What no field shows. */
function leftover(value, path, used) {
  if (used.has(path)) return undefined;
  if (!isMap(value) || Object.keys(value).length === 0) return value;
  const left = Object.create(null);
  for (const [key, inner] of Object.entries(value)) {
    const kept = leftover(inner, path ? `${path}.${key}` : key, used);
    if (kept !== undefined) left[key] = kept;
  }
  return Object.keys(left).length > 0 ? left : undefined;
}

function openAround(element) {
  for (let around = element.closest("details"); around; around = around.parentElement.closest("details")) around.open = true;
}

/** Fills the form with a job; what no field can show stands among the other keys. */
export function fill(job) {
  const used = new Set();
  for (const list of lists) {
    const value = get(job, list.dataset.rows);
    fillRows(list, typeof value === "string" && list.querySelector("template").content.querySelector("[data-key='']") ? [value] : value, used);
    if (used.has(list.dataset.rows)) openAround(list);
  }
  number();
  for (const field of fields().filter(each => each.dataset.key === undefined)) {
    if (!put(field, get(job, field.name))) continue;
    used.add(field.name);
    openAround(field);
  }
  const left = leftover(job, "", used);
  rest.value = left === undefined || Object.keys(left).length === 0 ? "" : JSON.stringify(left, null, 2);
  if (rest.value) openAround(rest);
}
