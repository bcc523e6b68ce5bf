// Sets a state of another nation's comparison beside the ones of this page; both were made by the same templates.
async function load(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status} ${address}`);
  return new DOMParser().parseFromString(await answer.text(), "text/html");
}

/** The other nation's comparison as on a day, and where it stands. */
async function find(address, day) {
  const page = new URL(address, location.href);
  const latest = await load(page);
  if (day >= latest.getElementById("choose").dataset.on) return [latest, page];
  const days = [...latest.querySelectorAll("a[data-day]")];
  const link = days.filter(each => each.textContent <= day).pop() ?? days[0];
  if (!link) return [latest, page];
  const then = new URL(link.getAttribute("href"), page);
  return [await load(then), then];
}

/** A copy whose links and whose clauses work here. */
function bring(node, doc, page, id) {
  const copy = document.importNode(node, true);
  for (const link of copy.querySelectorAll("a[href]")) link.href = new URL(link.getAttribute("href"), page);
  for (const button of copy.querySelectorAll("[popovertarget]")) {
    const from = button.getAttribute("popovertarget");
    const own = `${id}-${from}`;
    button.setAttribute("popovertarget", own);
    if (document.getElementById(own)) continue;
    const where = bring(doc.getElementById(from), doc, page, id);
    where.id = own;
    document.getElementById("comparison").after(where);
  }
  return copy;
}

/** The row under this table's questions; one that the other comparison does not ask says so. */
function rowFor(row, questions, doc, page, id) {
  const asked = [...row.closest("table").tHead.rows[0].cells].map(head => head.dataset.q);
  const made = document.createElement("tr");
  made.dataset.c = id;
  made.dataset.v = "*";
  made.append(bring(row.cells[0], doc, page, id));
  for (const head of questions) {
    const at = asked.indexOf(head.dataset.q);
    const cell = at < 0 ? document.createElement("td") : bring(row.cells[at], doc, page, id);
    if (at < 0) cell.append(Object.assign(document.createElement("p"), { textContent: "no such question there" }));
    cell.dataset.label = head.textContent;
    made.append(cell);
  }
  return made;
}

/** Adds the rows of a jurisdiction for the vehicle that its own comparison shows first, as on a day. */
export async function addPlace(id, address, day) {
  const [doc, page] = await find(address, day);
  for (const table of document.querySelectorAll("#comparison table")) {
    const questions = [...table.tHead.rows[0].cells].slice(1);
    for (const row of doc.querySelectorAll(`#comparison table[data-topic="${table.dataset.topic}"] tbody tr:not([hidden])`))
      if (row.dataset.c === id) table.tBodies[0].append(rowFor(row, questions, doc, page, id));
  }
}
