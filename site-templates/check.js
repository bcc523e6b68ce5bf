// Drives the form: makes a job of it, asks the evaluator, shows what it says. No rule is known here.
import { element, show } from "./answer.js";
import { ask, start, today } from "./asking.js";
import { card, comply, headline } from "./card.js";
import { fieldAt, fields, fill, isMap, read, respell } from "./form.js";
import { vehicles } from "./vehicles.js";
import { yaml } from "./yaml.js";

const at = id => document.getElementById(id);
const form = at("job");
const folds = { reasons: "Reasons", across: "Across", margin: "Margin" };
let opened = false, unloaded, last = "{}", turn = 0, pause, readable, before;

/** Answers what stands in the form. While a field is being typed in, nobody is told that it cannot be read yet. */
async function answer(typing = false) {
  clearTimeout(pause);
  const mine = ++turn;
  let job;
  try {
    job = read();
    last = JSON.stringify(job);
  } catch (error) {
    return complain([{ at: "", text: `The other keys cannot be read as JSON: ${error.message}`, tip: "" }]);
  }

  if (!typing || !job["registered-in"]) keep(job);
  if (!opened) return unloaded && complain(unloaded);
  if (!job["registered-in"]) {
    clear();
    at("said").replaceChildren(element("p", "Choose where the vehicle is registered: that state's rules decide. Or open a job file. The answer stands here and follows what you type.", "plate"));
    return settled();
  }

  stale();
  const given = await ask("Assess", last, today());
  if (mine !== turn) return;
  if (given.problems && typing) return outdate();
  if (given.problems) return complain(given.problems, undefined, given.unlisted);
  if (given.failure) return fail(given.failure);
  try {
    tell(given, job);
    if (typing) await quiet();
    if (mine !== turn) return;
    if (typing) keep(job);
    const whole = await ask("Record", last, today());
    if (mine !== turn) return;
    if (whole.failure) return fail(whole.failure);
    comply(at("said"), whole);
    at("json").textContent = whole.json;
    at("sheet").replaceChildren(...new DOMParser().parseFromString(whole.sheet, "text/html").body.childNodes);
  } catch (error) {
    return fail(error.message);
  }
  further();
  settled();
}

/** What takes longer waits until nobody types. */
const quiet = () => new Promise(done => setTimeout(done, 400));

function tell(given, job) {
  unmark();
  card(at("said"), given, { answer: set, title });
  at("said").inert = false;
  at("said").classList.remove("before");
  at("before").hidden = true;
  brief(headline(given), given.headline);
  if (at("headline").textContent !== headline(given)) at("headline").textContent = headline(given);
  at("told").lastElementChild.textContent = JSON.stringify(job, null, 2);
  for (const name in folds) at(name).lastElementChild.replaceChildren();
  at("json").textContent = "";
  at("sheet").replaceChildren();
  at("more").hidden = false;
}

/** The answer that stands is of what stood in the form before: it stays, and is not to be taken for the answer. */
function stale() {
  at("sheet").replaceChildren(); // what is printed is the answer to what stands in the form, or nothing
  at("answer").setAttribute("aria-busy", "true");
  if (!at("said").querySelector(".verdict")) return at("said").replaceChildren();
  at("said").classList.add("before");
  at("brief").classList.add("before");
}

/** What stands in the form cannot be read: the answer before is marked as that, and can be neither used nor saved. */
function outdate() {
  unanswered();
  if (at("said").querySelector(".verdict")) {
    at("said").classList.add("before");
    at("said").inert = true;
    at("before").hidden = false;
  } else at("said").replaceChildren();
  settled();
}

/** For whoever waits until the page has nothing more to say. */
function settled() {
  at("answer").setAttribute("aria-busy", "false");
  document.dispatchEvent(new Event("settled"));
}

// A browser may refuse an address that is too long or changes too often; the answer is given all the same. To change it takes long, so it waits
// until nobody types. A day that is today because nobody has set one is left out: whoever opens the address later asks about that day.
function keep(job) {
  const kept = { ...job };
  if (at("i-on").dataset.today) delete kept.on;
  const address = Object.keys(kept).length ? "#" + encodeURIComponent(JSON.stringify(kept)) : "";
  try {
    if (location.hash !== address) history.replaceState(null, "", location.pathname + location.search + address);
  } catch {
    // The job then stands in the form alone.
  }
}

function unmark() {
  for (const field of fields()) {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  }
  for (const said of form.querySelectorAll(".wrong")) said.remove();
  at("problems").replaceChildren();
}

/** Nothing of an earlier answer stays, whatever comes next. */
function clear() {
  unmark();
  at("said").replaceChildren();
  at("said").classList.remove("before");
  at("said").inert = false;
  at("before").hidden = true;
  unanswered();
}

/** There is no answer to print or to save. */
function unanswered() {
  at("sheet").replaceChildren();
  at("headline").textContent = "";
  at("json").textContent = "";
  at("more").hidden = true;
  brief("");
  for (const name in folds) at(name).lastElementChild.replaceChildren();
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
  settled();
}

// On a narrow screen the answer stands below the form; this button keeps the verdict in sight and leads there.
function brief(text, style = "") {
  at("brief").hidden = !text;
  at("brief").className = style;
  at("brief").replaceChildren(element("span", text));
}

async function further() {
  const mine = turn;
  for (const [name, call] of Object.entries(folds)) {
    const part = at(name);
    if (!part.open || part.lastElementChild.hasChildNodes() || at("more").hidden) continue;
    const given = await ask(call, last);
    if (mine !== turn) return;
    if (given.blocks) show(part.lastElementChild, given);
    else part.lastElementChild.replaceChildren(failed(given.failure ?? "the job was refused"));
  }
}

const title = path => {
  const field = fieldAt(path);
  return field?.getAttribute("aria-label") ?? field?.labels[0]?.textContent ?? path;
};

/** What is wrong, at its field; the answer before stays in sight where the form was only typed in, and is marked as that. */
function complain(problems, lead = "The job cannot be read yet:", unlisted = 0) {
  unmark();
  outdate();
  brief(opened && last !== "{}" ? "The job cannot be read yet" : "");
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
    list.append(element("li", `${title(problem.at)}: ${text}`));
  });
  if (unlisted) list.append(element("li", `and ${unlisted} more`));
  at("problems").replaceChildren(element("p", lead), list);
}

const without = (job, key) => Object.fromEntries(Object.entries(job).filter(([name]) => name !== key));

/** Takes a job into the form; without a day of its own it is asked about today. */
function take(job) {
  const dated = Object.hasOwn(job, "on") || Object.hasOwn(job, "dates");
  fill(dated ? job : { ...job, on: today() });
  if (dated) delete at("i-on").dataset.today;
  else at("i-on").dataset.today = "yes";
  readable = true;
}

/** Sets a fact that the answer asks for, or leads to its field. */
function set(path, value) {
  const field = fieldAt(path);
  if (!field) return;
  for (let around = field.closest("details"); around; around = around.parentElement.closest("details")) around.open = true;
  if (value !== undefined) {
    field.value = value;
    answer();
    at("answer").focus({ preventScroll: true });
  }
  if (value === undefined || field.value !== value) {
    field.scrollIntoView({ block: "center" });
    field.focus({ preventScroll: true });
  }
}

// Whether the address leaves a job to ask for.
function fromAddress() {
  readable = true;
  if (location.hash.length < 2) return true;
  try {
    const job = JSON.parse(decodeURIComponent(location.hash.slice(1)));
    if (!isMap(job)) throw new Error("not a job");
    at("said").replaceChildren();
    take(job);
  } catch {
    clear();
    complain([{ at: "", text: "The address holds no job that can be read.", tip: "open a job file, or fill in the form" }], "No answer:");
    readable = false;
  }
  return readable;
}

function save(name, text, type = "application/json") {
  const link = element("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

function saveJob(ending, write, type) {
  const job = JSON.parse(last || "{}");
  save(`${job.job ?? "job"}`.replace(/[^\w.-]/g, "_") + ending, write(job), type);
}

async function open(file) {
  clear();
  if (file.size > 1024 * 1024) return complain([{ at: "", text: "The file is larger than 1 MiB.", tip: "" }]);
  const given = await ask("Read", await file.text());
  if (given.problems) return complain(given.problems, "The file cannot be read as a job:", given.unlisted);
  if (given.failure) return fail(given.failure);
  take(given.job);
  answer();
}

form.hidden = false;
take({});
fromAddress();
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.type === "file") return;
  // One day, or a day for each: what is typed last holds.
  if (event.target.name === "on") for (const each of fields().filter(field => field.name.startsWith("dates."))) each.value = "";
  if (event.target.name?.startsWith("dates.")) at("i-on").value = "";
  if (event.target.name === "on" || event.target.name?.startsWith("dates.")) delete at("i-on").dataset.today;
  readable = true;
  at("undone").hidden = true;
  clearTimeout(pause);
  turn++;
  stale();
  pause = setTimeout(answer, 120, true);
});
// A field is checked when it is left, and is shown as it was read.
form.addEventListener("change", event => {
  if (event.target.type === "file") return;
  respell(event.target);
  answer();
});
window.addEventListener("hashchange", () => fromAddress() && answer());

at("brief").addEventListener("click", () => { at("answer").scrollIntoView(); at("answer").focus({ preventScroll: true }); });
at("save").addEventListener("click", () => saveJob(".yaml", yaml, "application/yaml"));
at("save-json").addEventListener("click", () => saveJob(".json", job => JSON.stringify(job, null, 2) + "\n"));
at("open").addEventListener("change", event => {
  const file = event.target.files[0];
  event.target.value = "";
  if (!file) return;
  if (opened) open(file);
  else complain([{ at: "", text: "The evaluator, which reads the file, is still loading.", tip: "open it again in a moment" }]);
});
at("afresh").addEventListener("click", () => {
  at("sure").showModal();
  at("sure-no").focus();
});
at("sure-no").addEventListener("click", () => at("sure").close());
at("sure-yes").addEventListener("click", () => {
  at("sure").close();
  before = last;
  clear();
  take({});
  answer();
  at("undone").hidden = before === "{}";
});
at("undo").addEventListener("click", () => {
  at("undone").hidden = true;
  take(JSON.parse(before));
  answer();
  at("afresh").focus();
});
at("print").addEventListener("click", () => window.print());
at("save-answer").addEventListener("click", () => save("answer.json", at("json").textContent));
at("reload").addEventListener("click", () => location.reload());
vehicles({
  read: () => JSON.parse(last),
  take: kept => {
    const { vehicle, ...job } = JSON.parse(last);
    take({ ...(at("i-on").dataset.today ? without(job, "on") : job), "registered-in": kept["registered-in"] ?? job["registered-in"], vehicle: kept.vehicle });
    answer();
  },
  save,
});
for (const name in folds) at(name).addEventListener("toggle", () => opened && further());

at("loading").hidden = false;
start(done => { at("progress").value = done; }).then(() => {
  opened = true;
  at("loading").hidden = true;
  document.documentElement.dataset.ready = "yes";
  if (readable) answer();
}, error => {
  at("loading").hidden = true;
  unloaded = [{ at: "", text: `The evaluator could not be loaded: ${error.message}`, tip: "the same limits are in the tables" }];
  complain(unloaded);
});
if ("serviceWorker" in navigator && location.protocol !== "file:") {
  // A newer edition came in beside the one that answers here; it answers from the next load on.
  if (navigator.serviceWorker.controller) navigator.serviceWorker.addEventListener("controllerchange", () => { at("newer").hidden = false; });
  navigator.serviceWorker.register("worker.js").catch(() => {});
}
