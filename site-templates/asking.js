// Asks the evaluator in its worker.
const waiting = new Map();
let worker, asked = 0;

/** Starts the evaluator; done when it has opened the book. */
export function start(progress = () => {}) {
  worker = new Worker(new URL("evaluator.js", import.meta.url), { type: "module" });
  return new Promise((done, refuse) => {
    worker.addEventListener("message", ({ data }) => {
      if (data.ready) done();
      else if (data.failed !== undefined) refuse(new Error(data.failed));
      else if (data.progress !== undefined) progress(data.progress);
      else settle(data.id, data.text);
    });
    worker.addEventListener("error", event => {
      const reason = event.message || "it could not be started";
      refuse(new Error(reason));
      for (const id of [...waiting.keys()]) settle(id, JSON.stringify({ failure: reason }));
    });
  });
}

function settle(id, text) {
  waiting.get(id)?.(text);
  waiting.delete(id);
}

/** What the evaluator says; where it says nothing that can be read, that it failed. */
export async function ask(call, ...given) {
  const id = ++asked;
  const text = await new Promise(done => {
    waiting.set(id, done);
    worker.postMessage({ id, call, given });
  });
  try {
    const answer = JSON.parse(text);
    return answer.blocks || answer.answers || answer.job || answer.problems || answer.failure ? answer : { failure: "the evaluator gave no answer" };
  } catch (error) {
    return { failure: `${error?.message ?? error}` };
  }
}

export const today = () => new Date().toLocaleDateString("sv");
