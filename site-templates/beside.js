// Sets a column of another nation's comparison beside the ones of this page; both were made by the same templates.
const table = document.getElementById("comparison");

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

function cell(name, text) {
  const made = document.createElement(name);
  made.appendChild(document.createElement("i")).textContent = text;
  return made;
}

/** A copy whose links and whose clauses work here. */
function bring(node, doc, page, id) {
  const copy = document.importNode(node, true);
  for (const link of copy.querySelectorAll("a[href]")) link.href = new URL(link.getAttribute("href"), page);
  for (const line of copy.querySelectorAll("[data-k]")) line.removeAttribute("data-k");
  for (const button of copy.querySelectorAll("[popovertarget]")) {
    const from = button.getAttribute("popovertarget");
    const own = `${id}-${from}`;
    button.setAttribute("popovertarget", own);
    if (document.getElementById(own)) continue;
    const where = bring(doc.getElementById(from), doc, page, id);
    where.id = own;
    table.closest("section").after(where);
  }
  return copy;
}

/** The row of this page's table for a row of the other's; made where there is none. */
function rowFor(row, width, doc, page, id) {
  const own = document.getElementById(row.id);
  if (own) return own;
  const group = document.getElementById(row.closest("tbody").querySelector("[scope=rowgroup]").id)?.closest("tbody") ?? table.appendChild(document.createElement("tbody"));
  const made = group.insertRow();
  made.id = row.id;
  made.append(bring(row.cells[0], doc, page, id));
  while (made.cells.length < width) made.append(cell("td", "no limit of its own"));
  return made;
}

/** Adds the column of a jurisdiction, as on a day. */
export async function addColumn(id, address, day) {
  const [doc, page] = await find(address, day);
  const other = doc.getElementById("comparison");
  const at = [...other.tHead.rows[0].cells].findIndex(head => head.dataset.c === id);
  const width = table.tHead.rows[0].cells.length;
  for (const row of other.querySelectorAll("tr[id]")) rowFor(row, width, doc, page, id).append(bring(row.cells[at], doc, page, id));
  for (const row of table.querySelectorAll("tr[id]")) if (row.cells.length === width) row.append(cell("td", "no limit of its own"));
  table.tHead.rows[0].append(bring(other.tHead.rows[0].cells[at], doc, page, id));
}
