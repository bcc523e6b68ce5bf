// Runs models of DMN with an engine of FEEL that is not ours, and tells which tables give something else than is expected.
// Usage: node run-dmn.mjs TOOLS FOLDER   (TOOLS has node_modules with dmn-moddle and feelin; FOLDER has models and expected.ndjson, a vehicle a line)
import { createRequire } from 'node:module';
import { createReadStream, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';

const [tools, folder] = process.argv.slice(2);
const { resolve } = createRequire(join(tools, 'package.json'));
const load = name => import(pathToFileURL(resolve(name)));
const [{ DmnModdle }, { evaluate, unaryTest }] = await Promise.all([load('dmn-moddle'), load('feelin')]);

const tests = new Map();
const passes = (test, value) => {
  const key = `${test}|${typeof value}|${value}`;
  if (!tests.has(key)) tests.set(key, unaryTest(test, { '?': value }).value === true);
  return tests.get(key);
};

// The same expression over the same values is asked of the engine once.
const results = new Map();
const result = (text, needs, context) => {
  const values = Object.fromEntries(needs.map(need => [need, context[need]]));
  const key = `${text}|${JSON.stringify(values)}`;
  if (!results.has(key)) results.set(key, evaluate(text, values).value);
  return results.get(key);
};

const models = new Map();
const decisionsOf = async model => {
  if (models.has(model)) return models.get(model);
  const { rootElement, warnings } = await new DmnModdle().fromXML(readFileSync(join(folder, model), 'utf8'));
  if (warnings.length > 0) throw new Error(`${model}: ${warnings[0].message}`);
  const decisions = new Map((rootElement.drgElement ?? []).filter(each => each.$type === 'dmn:Decision').map(each => [each.id, each]));
  models.set(model, decisions);
  return decisions;
};

let [vehicles, compared, differ] = [0, 0, 0];
for await (const line of createInterface({ input: createReadStream(join(folder, 'expected.ndjson')) })) {
  const { model, name, inputs, gives } = JSON.parse(line);
  vehicles++;
  const decisions = await decisionsOf(model);
  const context = { ...inputs };
  const known = id => {
    if (id in context) return context[id];
    const decision = decisions.get(id);
    if (!decision) return context[id] = null;
    const needs = (decision.informationRequirement ?? []).map(each => (each.requiredDecision ?? each.requiredInput).href.slice(1));
    needs.forEach(known);
    return context[id] = result(decision.decisionLogic.text, needs, context);
  };
  for (const [id, expected] of Object.entries(gives)) {
    const { decisionLogic } = decisions.get(id);
    if (decisionLogic.hitPolicy !== 'FIRST') throw new Error(`${id}: hit policy ${decisionLogic.hitPolicy}`);
    const values = (decisionLogic.input ?? []).map(input => known(input.inputExpression.text));
    const hit = decisionLogic.rule.find(rule => (rule.inputEntry ?? []).every((entry, at) => passes(entry.text, values[at])));
    const given = result(hit.outputEntry[0].text, [], {});
    compared++;
    if (given !== expected && ++differ <= 20) console.log(`${model} ${name} ${id}: DMN ${given}, evaluator ${expected}`);
  }
  for (const kept of [tests, results]) if (kept.size > 1_000_000) kept.clear();
}

console.log(`${vehicles} vehicles that state different things, ${compared} tables compared, ${differ} differ`);
