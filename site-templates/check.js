// Drives the form: makes a job of it, asks the evaluator, shows what it says. No rule is known here.
import { element, show } from "./answer.js";

const form = document.getElementById("job");
const fields = [...form.querySelectorAll("[name]")];
const rest = document.getElementById("rest");
const at = id => document.getElementById(id);
let evaluator, last = "", timer;

// The job as an object, and back.
function get(job, path) {
  return path.split(".").reduce((inner, key) => inner?.[key], job);
}

function set(job, path, value) {
  const keys = path.split(".");
  const end = keys.pop();
  let inner = job;
  for (const key of keys) inner = inner[key] = isMap(inner[key]) ? inner[key] : {};
  inner[end] = value;
}

function isMap(value) {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function remove(job, path) {
  const keys = path.split(".");
  const end = keys.pop();
  const inner = get(job, keys.join(".")) ?? (keys.length ? undefined : job);
  if (!isMap(inner)) return;
  delete inner[end];
  if (keys.length && Object.keys(inner).length === 0) remove(job, keys.join("."));
}

function written(field) {
  const text = field.value.trim();
  if (field.dataset.list !== undefined) return text.split(",").map(each => each.trim()).filter(each => each);
  if (field.dataset.unit && /^[+-]?\d+(\.\d+)?$/.test(text)) return `${text} ${field.dataset.unit}`;
  return text;
}

function merge(into, from) {
  for (const [key, value] of Object.entries(from)) {
    if (isMap(value) && Object.hasOwn(into, key) && isMap(into[key])) merge(into[key], value);
    else Object.defineProperty(into, key, { value, enumerable: true, configurable: true, writable: true });
  }
  return into;
}

function read() {
  const job = {};
  for (const field of fields) if (field.value.trim()) set(job, field.name, written(field));
  if (job.dates) delete job.on;
  const text = rest.value.trim();
  return text ? merge(job, JSON.parse(text)) : job;
}

function fill(job) {
  const left = structuredClone(job);
  for (const field of fields) {
    const value = get(job, field.name);
    const text = Array.isArray(value) && value.every(each => typeof each !== "object") ? value.join(", ")
      : value === true ? "yes" : value === false ? "no" : value === undefined || value === null || typeof value === "object" ? "" : String(value);
    field.value = field.dataset.unit && text.endsWith(" " + field.dataset.unit) ? text.slice(0, -field.dataset.unit.length - 1) : text;
    if (text && field.value.length > 0) {
      remove(left, field.name);
      const around = field.closest("details");
      if (around) around.open = true;
    }
  }
  rest.value = Object.keys(left).length ? JSON.stringify(left, null, 2) : "";
  if (rest.value) at("rest-part").open = true;
}

// Answering.
function ask() {
  clearTimeout(timer);
  for (const field of fields) {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  }
  for (const said of form.querySelectorAll(".wrong")) said.remove();
  at("problems").replaceChildren();

  let job;
  try {
    job = read();
  } catch (error) {
    return complain([{ at: "", text: `The other keys cannot be read as JSON: ${error.message}`, tip: "" }]);
  }

  last = JSON.stringify(job);
  const address = Object.keys(job).length ? "#" + encodeURIComponent(last) : "";
  if (location.hash !== address) history.replaceState(null, "", location.pathname + location.search + address);
  if (!evaluator) return;
  at("more").hidden = true;
  if (!job["registered-in"]) {
    at("said").replaceChildren(element("p", "Choose where the vehicle is registered: that state's rules decide."));
    return;
  }

  const answer = JSON.parse(evaluator.Assess(last, ""));
  if (answer.problems) return complain(answer.problems);
  show(at("said"), answer);
  brief(answer.blocks[0].text);
  at("json").textContent = answer.json;
  at("told").lastElementChild.textContent = JSON.stringify(job, null, 2);
  at("more").hidden = false;
  for (const name of ["across", "margin"]) at(name).lastElementChild.replaceChildren();
  timer = setTimeout(further, 150);
}

// On a narrow screen the answer stands below the form; this button keeps the verdict in sight and leads there.
function brief(text) {
  at("brief").hidden = !text;
  at("brief").textContent = text;
}

function further() {
  for (const [name, call] of [["across", "Across"], ["margin", "Margin"]]) {
    const part = at(name);
    if (!part.open || part.lastElementChild.hasChildNodes()) continue;
    const answer = JSON.parse(evaluator[call](last));
    if (answer.blocks) show(part.lastElementChild, answer);
  }
}

function complain(problems) {
  brief(evaluator && last !== "{}" ? "The job cannot be read yet" : "");
  at("said").replaceChildren();
  at("more").hidden = true;
  const list = element("ul");
  problems.forEach((problem, i) => {
    const text = problem.text + (problem.tip ? ` (${problem.tip})` : "");
    const field = fields.find(each => each.name === problem.at.replace(/\[\d+\]$/, ""));
    if (!field) return list.append(element("li", (problem.at ? problem.at + ": " : "") + text));
    const said = element("span", text, "wrong");
    said.id = "wrong-" + i;
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", said.id);
    field.closest("p").append(said);
    list.append(element("li", `${field.labels[0].textContent}: ${text}`));
  });
  at("problems").replaceChildren(element("p", "The job cannot be read yet:"), list);
}

function save(name, text) {
  const link = element("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

function fromAddress() {
  if (location.hash.length < 2) return;
  try {
    const job = JSON.parse(decodeURIComponent(location.hash.slice(1)));
    if (isMap(job)) fill(job);
  } catch {
    complain([{ at: "", text: "The address holds no job that can be read.", tip: "" }]);
  }
}

async function load() {
  at("loading").hidden = false;
  const progress = at("progress");
  const [{ dotnet }, book] = await Promise.all([
    import("./_framework/dotnet.js"),
    fetch("data/book.json").then(answer => answer.text()),
  ]);
  const runtime = await dotnet
    .withModuleConfig({ onDownloadResourceProgress: (done, all) => { if (all) progress.value = done / all; } })
    .create();
  const exported = await runtime.getAssemblyExports(runtime.getConfig().mainAssemblyName);
  evaluator = exported.RuleBook.Browser.Evaluator;
  evaluator.Open(book);
  at("loading").hidden = true;
  document.documentElement.dataset.ready = "yes";
  ask();
}

let typing;
at("brief").addEventListener("click", () => { at("answer").scrollIntoView(); at("answer").focus({ preventScroll: true }); });
form.hidden = false;
if (!at("i-on").value) at("i-on").value = new Date().toLocaleDateString("sv");
fromAddress();
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.type === "file") return;
  clearTimeout(typing);
  typing = setTimeout(ask, 120);
});
window.addEventListener("hashchange", () => { fromAddress(); ask(); });
at("save").addEventListener("click", () => save(`${(JSON.parse(last).job ?? "job")}.json`.replace(/[^\w.-]/g, "_"), JSON.stringify(JSON.parse(last), null, 2) + "\n"));
at("open").addEventListener("change", async event => {
  const file = event.target.files[0];
  event.target.value = "";
  if (!file) return;
  if (file.size > 1024 * 1024) return complain([{ at: "", text: "The file is larger than 1 MiB.", tip: "" }]);
  try {
    const job = JSON.parse(await file.text());
    if (!isMap(job)) throw new Error("a job is keys with values");
    fill(job);
    ask();
  } catch (error) {
    complain([{ at: "", text: `The file cannot be read as a job: ${error.message}`, tip: "save it as JSON" }]);
  }
});
at("afresh").addEventListener("click", () => { fill({}); ask(); });
at("print").addEventListener("click", () => { at("told").open = true; window.print(); });
at("save-answer").addEventListener("click", () => save("answer.json", at("json").textContent));
for (const name of ["across", "margin"]) at(name).addEventListener("toggle", () => evaluator && further());
load().catch(error => {
  at("loading").hidden = true;
  complain([{ at: "", text: `The evaluator could not be loaded: ${error.message}`, tip: "the same limits are in the tables" }]);
});
if ("serviceWorker" in navigator && location.protocol !== "file:") navigator.serviceWorker.register("worker.js").catch(() => {});
