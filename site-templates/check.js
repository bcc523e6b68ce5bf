// Drives the form: makes a job of it, asks the evaluator, shows what it says. No rule is known here.
import { element, show } from "./answer.js";
import { fieldAt, fields, fill, isMap, read } from "./form.js";
import { yaml } from "./yaml.js";

const at = id => document.getElementById(id);
const form = at("job");
let evaluator, unloaded, last = "", timer;

// Answering.
function ask() {
  try {
    answer();
  } catch (error) {
    fail(error.message);
  }
}

function answer() {
  clearTimeout(timer);
  for (const field of fields()) {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  }
  for (const said of form.querySelectorAll(".wrong")) said.remove();
  clear();

  let job;
  try {
    job = read();
    last = JSON.stringify(job);
  } catch (error) {
    return complain([{ at: "", text: `The other keys cannot be read as JSON: ${error.message}`, tip: "" }]);
  }

  keep(Object.keys(job).length ? "#" + encodeURIComponent(last) : "");
  if (!evaluator) {
    if (unloaded) complain(unloaded);
    return;
  }
  if (!job["registered-in"]) {
    at("said").replaceChildren(element("p", "Choose where the vehicle is registered: that state's rules decide. Or open a job file. The answer stands here and follows what you type.", "plate"));
    return;
  }

  const given = told("Assess", last, "");
  if (given.problems) return complain(given.problems, undefined, given.unlisted);
  if (given.failure) return fail(given.failure);
  show(at("said"), given);
  // What stands in the way comes first, the pathway second.
  brief(given.headline === "blocked" ? given.blocks[0].text + " " + given.blocks.find(block => block.kind === "line").text : given.blocks[0].text, given.headline);
  at("json").textContent = given.json;
  at("told").lastElementChild.textContent = JSON.stringify(job, null, 2);
  at("more").hidden = false;
  timer = setTimeout(further, 150);
}

// A browser may refuse an address that is too long or changes too often; the answer is given all the same.
function keep(address) {
  try {
    if (location.hash !== address) history.replaceState(null, "", location.pathname + location.search + address);
  } catch {
    // The job then stands in the form alone.
  }
}

// Nothing of an earlier answer stays, whatever comes next.
function clear() {
  at("problems").replaceChildren();
  at("said").replaceChildren();
  at("json").textContent = "";
  at("more").hidden = true;
  brief("");
  for (const name of ["across", "margin"]) at(name).lastElementChild.replaceChildren();
}

// What the evaluator says; where it says nothing that can be read, that it failed.
function told(call, ...given) {
  try {
    const answer = JSON.parse(evaluator[call](...given));
    return answer.blocks || answer.job || answer.problems || answer.failure ? answer : { failure: "the evaluator gave no answer" };
  } catch (error) {
    return { failure: `${error?.message ?? error}` };
  }
}

function failed(reason) {
  const plate = element("div", "", "plate failed");
  plate.append(
    element("p", "No answer could be made. Nothing on this page is a verdict on this job.", "strong"),
    element("p", `The fault is the program's, not the job's: ${reason}. Please report it with the job, which you can save above. The same limits are in the tables.`));
  return plate;
}

function fail(reason) {
  clear();
  brief("No answer could be made");
  at("problems").replaceChildren(failed(reason));
}

// On a narrow screen the answer stands below the form; this button keeps the verdict in sight and leads there.
function brief(text, headline = "") {
  at("brief").hidden = !text;
  at("brief").className = headline;
  at("brief").textContent = text;
}

function further() {
  for (const [name, call] of [["across", "Across"], ["margin", "Margin"]]) {
    const part = at(name);
    if (!part.open || part.lastElementChild.hasChildNodes()) continue;
    const answer = told(call, last);
    if (answer.blocks) show(part.lastElementChild, answer);
    else part.lastElementChild.replaceChildren(failed(answer.failure ?? "the job was refused"));
  }
}

function complain(problems, lead = "The job cannot be read yet:", unlisted = 0) {
  clear();
  brief(evaluator && last !== "{}" ? "The job cannot be read yet" : "");
  const list = element("ul");
  problems.forEach((problem, i) => {
    const text = problem.text + (problem.tip ? ` (${problem.tip})` : "");
    const field = problem.at ? fieldAt(problem.at) ?? fieldAt(problem.at.replace(/\[\d+\]$/, "")) : undefined;
    if (!field) return list.append(element("li", (problem.at ? problem.at + ": " : "") + text));
    const said = element("span", text, "wrong");
    said.id = "wrong-" + i;
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", said.id);
    field.closest("p, td").append(said);
    list.append(element("li", `${field.getAttribute("aria-label") ?? field.labels[0].textContent}: ${text}`));
  });
  if (unlisted) list.append(element("li", `and ${unlisted} more`));
  at("problems").replaceChildren(element("p", lead), list);
}

function save(name, text, type = "application/json") {
  const link = element("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

// Whether the address leaves a job to ask for.
function fromAddress() {
  if (location.hash.length < 2) return true;
  try {
    const job = JSON.parse(decodeURIComponent(location.hash.slice(1)));
    if (!isMap(job)) throw new Error("not a job");
    fill(job);
    return true;
  } catch {
    complain([{ at: "", text: "The address holds no job that can be read.", tip: "open a job file, or fill in the form" }], "No answer:");
    return false;
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
  exported.RuleBook.Browser.Evaluator.Open(book);
  evaluator = exported.RuleBook.Browser.Evaluator;
  at("loading").hidden = true;
  document.documentElement.dataset.ready = "yes";
  if (readable) ask();
}

let typing;
at("brief").addEventListener("click", () => { at("answer").scrollIntoView(); at("answer").focus({ preventScroll: true }); });
form.hidden = false;
fill({ on: new Date().toLocaleDateString("sv") });
let readable = fromAddress();
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.type === "file") return;
  // One day, or a day for each: what is typed last holds.
  if (event.target.name === "on") for (const each of fields().filter(field => field.name.startsWith("dates."))) each.value = "";
  if (event.target.name?.startsWith("dates.")) at("i-on").value = "";
  readable = true;
  clearTimeout(typing);
  typing = setTimeout(ask, 120);
});
window.addEventListener("hashchange", () => { readable = fromAddress(); if (readable) ask(); });
function saveJob(ending, write, type) {
  const job = JSON.parse(last || "{}");
  save(`${job.job ?? "job"}`.replace(/[^\w.-]/g, "_") + ending, write(job), type);
}

async function open(file) {
  if (file.size > 1024 * 1024) return complain([{ at: "", text: "The file is larger than 1 MiB.", tip: "" }]);
  let opened;
  try {
    opened = told("Read", await file.text());
    if (opened.job) fill(opened.job);
  } catch (error) {
    opened = { failure: error.message };
  }
  if (opened.problems) return complain(opened.problems, "The file cannot be read as a job:", opened.unlisted);
  if (opened.failure) return fail(opened.failure);
  readable = true;
  ask();
}

at("save").addEventListener("click", () => saveJob(".yaml", yaml, "application/yaml"));
at("save-json").addEventListener("click", () => saveJob(".json", job => JSON.stringify(job, null, 2) + "\n"));
at("open").addEventListener("change", event => {
  const file = event.target.files[0];
  event.target.value = "";
  if (!file) return;
  if (evaluator) open(file);
  else complain([{ at: "", text: "The evaluator, which reads the file, is still loading.", tip: "open it again in a moment" }]);
});
at("afresh").addEventListener("click", () => { fill({}); ask(); });
at("print").addEventListener("click", () => { at("told").open = true; window.print(); });
at("save-answer").addEventListener("click", () => save("answer.json", at("json").textContent));
for (const name of ["across", "margin"]) at(name).addEventListener("toggle", () => evaluator && further());
load().catch(error => {
  at("loading").hidden = true;
  unloaded = [{ at: "", text: `The evaluator could not be loaded: ${error.message}`, tip: "the same limits are in the tables" }];
  complain(unloaded);
});
if ("serviceWorker" in navigator && location.protocol !== "file:") {
  // A newer edition came in beside the one that answers here; it answers from the next load on.
  if (navigator.serviceWorker.controller) navigator.serviceWorker.addEventListener("controllerchange", () => { at("newer").hidden = false; });
  navigator.serviceWorker.register("worker.js").catch(() => {});
  at("reload").addEventListener("click", () => location.reload());
}
