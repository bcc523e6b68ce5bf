// Drives the form: makes a job of it, asks the evaluator, shows what it says. No rule is known here.
import { element, show } from "./answer.js";
import { fieldAt, fields, fill, isMap, read } from "./form.js";
import { yaml } from "./yaml.js";

const at = id => document.getElementById(id);
const form = at("job");
let evaluator, last = "", timer;

// Answering.
function ask() {
  clearTimeout(timer);
  for (const field of fields()) {
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
    at("said").replaceChildren(element("p", "Choose where the vehicle is registered: that state's rules decide. Or open a job file. The answer stands here and follows what you type.", "plate"));
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

function complain(problems, lead = "The job cannot be read yet:") {
  brief(evaluator && last !== "{}" ? "The job cannot be read yet" : "");
  at("said").replaceChildren();
  at("more").hidden = true;
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
  at("problems").replaceChildren(element("p", lead), list);
}

function save(name, text, type = "application/json") {
  const link = element("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
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
fill({ on: new Date().toLocaleDateString("sv") });
fromAddress();
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.type === "file") return;
  // One day, or a day for each: what is typed last holds.
  if (event.target.name === "on") for (const each of fields().filter(field => field.name.startsWith("dates."))) each.value = "";
  if (event.target.name?.startsWith("dates.")) at("i-on").value = "";
  clearTimeout(typing);
  typing = setTimeout(ask, 120);
});
window.addEventListener("hashchange", () => { fromAddress(); ask(); });
function saveJob(ending, write, type) {
  const job = JSON.parse(last || "{}");
  save(`${job.job ?? "job"}`.replace(/[^\w.-]/g, "_") + ending, write(job), type);
}

async function open(file) {
  if (file.size > 1024 * 1024) return complain([{ at: "", text: "The file is larger than 1 MiB.", tip: "" }]);
  const opened = JSON.parse(evaluator.Read(await file.text()));
  if (opened.problems) return complain(opened.problems, "The file cannot be read as a job:");
  fill(opened.job);
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
  complain([{ at: "", text: `The evaluator could not be loaded: ${error.message}`, tip: "the same limits are in the tables" }]);
});
if ("serviceWorker" in navigator && location.protocol !== "file:") navigator.serviceWorker.register("worker.js").catch(() => {});
