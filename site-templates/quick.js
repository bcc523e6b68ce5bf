// The quick check of the first page: six fields, a card for each state chosen. No rule is known here.
import { element } from "./answer.js";
import { ask, start, today } from "./asking.js";
import { bar, headline } from "./card.js";
import { spelt } from "./spelling.js";

const form = document.getElementById("quick");
const answers = document.getElementById("answers");
const note = document.getElementById("quick-note");
const facts = [...form.querySelectorAll("[data-fact]")];
let opening, pause, turn = 0;

const open = () => opening ??= start(done => { note.textContent = `Loading the evaluator: ${Math.round(100 * done)} %`; }).then(() => { note.textContent = ""; });

/** What the form says as a job, registered in a place; without a day in an address where nobody has set one. */
function job(place, isAddress = false) {
  const value = name => form.elements[name].value.trim();
  const lift = spelt.amount(value("lift"));
  const tyres = { placard: spelt.tyre(value("placard")), fitted: spelt.tyre(value("fitted")) };
  return {
    "registered-in": place,
    ...(isAddress && isToday() ? {} : { on: value("on") || today() }),
    vehicle: { ...Object.fromEntries(facts.filter(field => field.value).map(field => [field.dataset.fact, field.value])), ...(tyres.placard && { tyres: [tyres.placard] }) },
    modification: { ...(lift && { "suspension-lift": /^[+-]?\d+(\.\d+)?$/.test(lift) ? `${lift} mm` : lift }), ...(tyres.fitted && { tyres: tyres.fitted }) },
  };
}

const isToday = () => form.elements.on.dataset.today === "yes" || !form.elements.on.value;

async function answer() {
  clearTimeout(pause);
  const mine = ++turn;
  const places = new FormData(form).getAll("place");
  history.replaceState(null, "", `${location.pathname}${location.search}#${new URLSearchParams([...new FormData(form)].filter(([name, value]) => value && !(name === "on" && isToday())))}`);
  if (!places.length) {
    note.textContent = "Choose one state or several.";
    return answers.replaceChildren();
  }
  try {
    await open();
  } catch (error) {
    note.textContent = `The evaluator could not be loaded: ${error.message}. The same limits are in the tables.`;
    return answers.replaceChildren();
  }
  answers.classList.add("before");
  const given = await ask("Beside", JSON.stringify(job(places[0])), places.join(" "), today());
  if (mine !== turn) return;
  answers.classList.remove("before");
  note.textContent = given.problems ? given.problems.map(problem => `${problem.text}${problem.tip ? ` (${problem.tip})` : ""}`).join("; ") : given.failure ? `No answer could be made: ${given.failure}` : `${given.answers.length === 1 ? "One answer" : `${given.answers.length} answers`}, by the rules of each state on the day.`;
  answers.replaceChildren(...(given.answers ?? []).map(card));
}

function card(given) {
  const box = element("article", "", "quick-card");
  const link = element("a", "Reasons, what to show, who certifies");
  link.href = `check.html#${encodeURIComponent(JSON.stringify(job(given.place, true)))}`;
  link.setAttribute("aria-label", `${given.name}: reasons, what to show, who certifies`);
  box.append(element("h3", given.name), element("p", headline(given), "verdict " + given.headline));
  if (given.margin) box.append(element("p", `${given.margin.subject} ${given.margin.says}`, "says"), bar(given.margin));
  for (const asked of given.questions.slice(0, 2)) box.append(element("p", asked.ask, "question"));
  box.append(link);
  return box;
}

function kind() {
  const chosen = JSON.parse(form.elements.vehicle.selectedOptions[0].dataset.facts);
  for (const field of facts) field.value = chosen[field.dataset.fact] ?? "";
}

form.hidden = false;
form.elements.on.value = today();
form.elements.on.dataset.today = "yes";
kind();
if (location.hash.length > 1) {
  const given = new URLSearchParams(location.hash.slice(1));
  for (const [name, value] of given) {
    const field = form.elements[name];
    if (name === "place") for (const each of form.querySelectorAll("[name=place]")) each.checked ||= each.value === value;
    else if (field instanceof HTMLElement) {
      field.value = value;
      delete field.dataset.today;
    }
  }
  answer();
}
// The states are one stop of the Tab key; arrow keys go from one to the next.
const chips = [...form.querySelectorAll("[name=place]")];
const stop = chip => { for (const each of chips) each.tabIndex = each === chip ? 0 : -1; };
stop(chips.find(chip => chip.checked) ?? chips[0]);
form.querySelector(".chips").addEventListener("focusin", event => stop(event.target));
form.querySelector(".chips").addEventListener("keydown", event => {
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (!step) return;
  event.preventDefault();
  chips.at((chips.indexOf(event.target) + step) % chips.length).focus();
});
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("focusin", () => open().catch(() => {}), { once: true });
form.addEventListener("input", event => {
  if (event.target.name === "vehicle") kind();
  if (event.target.name === "on") delete event.target.dataset.today;
  turn++;
  answers.classList.add("before");
  clearTimeout(pause);
  // A text is checked when it is left.
  if (event.target.matches("select, [type=checkbox], [type=date]")) answer();
  else pause = setTimeout(answer, 500);
});
form.addEventListener("change", event => { if (event.target.matches("[type=text]")) answer(); });
