// Draws the first screen of an answer: the decision, what is left as a bar, questions as buttons, one line a subject.
import { element } from "./answer.js";

const space = "http://www.w3.org/2000/svg";
const states = { unladen: "unladen", loaded: "loaded", planned: "hitched", "weighed-alone": "weighed", weighed: "weighed hitched" };

function shape(name, attributes) {
  const made = document.createElementNS(space, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

/** A bar from nothing up to the value, the limit as a line across it; the words beside it say the same. */
export function bar(figure, most = 1.15 * Math.max(figure.value, figure.limit)) {
  const at = value => (200 * Math.max(0, value) / most).toFixed(1);
  const drawn = shape("svg", { class: "bar", viewBox: "0 0 200 16", preserveAspectRatio: "none", "aria-hidden": "true" });
  drawn.append(
    shape("line", { class: "axis", x1: 0, y1: 14, x2: 200, y2: 14 }),
    shape("rect", { class: figure.open ? "value at-least" : "value", x: 0, y: 4, width: at(Math.min(figure.value, figure.limit)), height: 10 }),
    shape("rect", { class: "past", x: at(figure.limit), y: 4, width: at(figure.value - figure.limit), height: 10 }),
    shape("line", { class: "limit-line", x1: at(figure.limit), y1: 0, x2: at(figure.limit), y2: 16 }));
  return drawn;
}

function margin(figure) {
  const line = element("p", "", figure.over ? "margin over" : "margin");
  line.append(element("span", `${figure.subject} ${figure.says}`), element("b", figure.left), bar(figure));
  return line;
}

/** A question as buttons that set the fact; of a measure, what its stretches give and a way to its field. */
function question(asked, answer) {
  const box = element("div", "", "question");
  box.append(element("p", asked.ask));
  const choices = element("p", "", "choices");
  for (const option of asked.options) {
    const part = element(asked.word ? "button" : "span", "", "option");
    part.append(element("b", option.label), " ", element("span", option.gives));
    if (asked.word) {
      part.type = "button";
      part.addEventListener("click", () => answer(asked.at, option.label));
    }
    choices.append(part);
  }
  if (!asked.word && asked.at) choices.append(toField(asked.at, "fill it in", answer));
  box.append(choices);
  return box;
}

function toField(path, text, answer) {
  const button = element("button", text);
  button.type = "button";
  button.addEventListener("click", () => answer(path));
  return button;
}

function rows(blocks) {
  const list = element("dl", "", "subjects");
  for (const block of blocks) list.append(element("dt", block.mark), element("dd", block.text));
  return list;
}

/** Bars by subject, a state a line, on one scale a subject. */
function loads(figures, towing) {
  const box = element("section", "", "loads");
  box.append(element("h3", "Loads against ratings"), largest(figures, towing));
  const bars = element("div", "", "bars");
  for (const subject of new Set(figures.map(figure => figure.subject))) {
    const same = figures.filter(figure => figure.subject === subject);
    const most = 1.08 * Math.max(...same.flatMap(figure => [figure.value, figure.limit]));
    bars.append(element("h4", subject.replace(/^the /, "").replace(/^./, first => first.toUpperCase())));
    for (const figure of same) {
      const line = element("p", "", figure.over ? "load over" : "load");
      line.append(element("span", states[figure.state] ?? figure.state, "state"), bar(figure, most), element("span", `${figure.says}: ${figure.left}`, "says"));
      bars.append(line);
    }
  }
  box.append(bars);
  return box;
}

/** What is left to the GVM, and of a combination to the GCM and on the ball, each in its heaviest state. */
function largest(figures, towing) {
  const list = element("dl", "", "large");
  for (const [subject, title] of [["GVM", "to the GVM"], ["GCM", "to the GCM"], ["the ball load limit", "on the ball"]].slice(0, towing ? 3 : 1)) {
    const figure = figures.filter(each => each.subject === subject).pop();
    const entry = element("div", "", figure?.over ? "over" : "");
    entry.append(element("dt", title), element("dd", figure?.left ?? "not known"));
    list.append(entry);
  }
  return list;
}

function lacking(facts, title, answer) {
  const box = element("div", "", "question");
  box.append(element("p", "Not stated, and needed for the loads:"));
  const list = box.appendChild(element("ul"));
  for (const each of facts) {
    const line = element("li", "");
    line.append(toField(each.fact, title(each.fact), answer), " ", element("small", `gives ${each.adds}`));
    list.append(line);
  }
  return box;
}

/** The whole card. `answer(path, value)` sets a fact, or leads to its field where no value is given. */
export function card(target, given, { answer, title }) {
  const of = kind => given.blocks.filter(block => block.kind === kind);
  const [first] = of("title");
  const lines = of("line");
  const parts = [element("h2", first.text, "verdict " + given.headline), ...lines.slice(0, -1).map(line => element("p", line.text))];
  if (given.margin) parts.splice(given.headline === "blocked" ? 2 : 1, 0, margin(given.margin));
  parts.push(...given.questions.map(asked => question(asked, answer)));
  parts.push(rows(of("row").filter(block => block.mark !== "Open" || !given.questions.length)));
  const towing = given.loads.some(load => load.state === "planned" || load.state === "weighed") || given.lacking.some(each => each.fact.startsWith("trailer"));
  if (given.loads.length) parts.push(loads(given.loads, towing));
  if (given.lacking.length) parts.push(lacking(given.lacking, title, answer));
  parts.push(element("p", lines.at(-1).text, "note"));
  target.replaceChildren(...parts);
}

/** What would mend the job, which comes later, in its place. */
export function comply(target, given) {
  const found = given.blocks.find(block => block.kind === "row" && block.mark === "To comply");
  const list = target.querySelector(".subjects");
  if (!found || !list) return;
  const before = [...list.querySelectorAll("dt")].find(label => ["To show", "Certifies", "Open", "Rests on"].includes(label.textContent));
  for (const part of [element("dt", found.mark), element("dd", found.text)]) list.insertBefore(part, before ?? null);
}

/** The headline for a small bar and for a screen reader: what stands in the way, then the pathway. */
export const headline = given => given.headline === "blocked"
  ? `${given.blocks[0].text} ${given.blocks.find(block => block.kind === "line").text}`
  : given.blocks[0].text;
