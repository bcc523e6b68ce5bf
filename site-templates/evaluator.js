// The evaluator in a worker of its own, so that no answer keeps the page from being typed into.
let runtime, reader;

/** What reads a job file is loaded when somebody opens one. */
async function readable() {
  for (const part of ["System.Private.Uri.wasm", "System.Text.RegularExpressions.wasm", "YamlDotNet.wasm", "RuleBook.Yaml.wasm"]) await runtime.INTERNAL.loadLazyAssembly(part);
}

/** The book comes while the runtime is still asking for its own parts. */
async function open() {
  const [made, book] = await Promise.all([
    import("./_framework/dotnet.js").then(({ dotnet }) =>
      dotnet.withModuleConfig({ onDownloadResourceProgress: (done, all) => { if (all) postMessage({ progress: done / all }); } }).create()),
    fetch(new URL("data/book.json", import.meta.url)).then(answer => answer.text()),
  ]);
  runtime = made;
  const exported = await runtime.getAssemblyExports(runtime.getConfig().mainAssemblyName);
  exported.RuleBook.Browser.Evaluator.Open(book);
  return exported.RuleBook.Browser.Evaluator;
}

const opened = open();
opened.then(() => postMessage({ ready: true }), error => postMessage({ failed: `${error?.message ?? error}`.split("\n")[0] }));

self.addEventListener("message", async event => {
  const { id, call, given } = event.data;
  let text;
  try {
    const evaluator = await opened;
    if (call === "Read") await (reader ??= readable().catch(error => { reader = undefined; throw error; }));
    text = evaluator[call](...given);
  } catch (error) {
    text = JSON.stringify({ failure: `${error?.message ?? error}` });
  }
  postMessage({ id, text });
});
