// Runs models of DMN with an engine of FEEL that is not ours, and tells which tables give something else than is expected.
// Usage: node run-dmn.mjs TOOLS FOLDER   (TOOLS has node_modules with dmn-moddle and feelin; FOLDER has models and expected.json)
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
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

let [compared, differ] = [0, 0];
for (const { model, vehicles } of JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8'))) {
  const { rootElement, warnings } = await new DmnModdle().fromXML(readFileSync(join(folder, model), 'utf8'));
  if (warnings.length > 0) throw new Error(`${model}: ${warnings[0].message}`);
  const decisions = new Map((rootElement.drgElement ?? []).filter(each => each.$type === 'dmn:Decision').map(each => [each.id, each]));
  for (const { name, inputs, gives } of vehicles) {
    const context = { ...inputs };
    const known = id => {
      if (id in context) return context[id];
      const decision = decisions.get(id);
      if (!decision) return context[id] = null;
      for (const { requiredDecision, requiredInput } of decision.informationRequirement ?? []) known((requiredDecision ?? requiredInput).href.slice(1));
      return context[id] = evaluate(decision.decisionLogic.text, context).value;
    };
    for (const [id, expected] of Object.entries(gives)) {
      const { decisionLogic } = decisions.get(id);
      if (decisionLogic.hitPolicy !== 'FIRST') throw new Error(`${id}: hit policy ${decisionLogic.hitPolicy}`);
      const values = (decisionLogic.input ?? []).map(input => known(input.inputExpression.text));
      const hit = decisionLogic.rule.find(rule => (rule.inputEntry ?? []).every((entry, at) => passes(entry.text, values[at])));
      const given = evaluate(hit.outputEntry[0].text, {}).value;
      compared++;
      if (given !== expected && ++differ <= 20) console.log(`${model} ${name} ${id}: DMN ${given}, evaluator ${expected}`);
    }
  }
}

console.log(`${compared} compared, ${differ} differ`);
