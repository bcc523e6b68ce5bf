// Shows an answer. Everything is set as text, never as markup.
const words = { ok: "ok", x: "beyond", "?": "open", "!": "mind", "[ ]": "to show", "[x]": "shown" };
const kinds = { ok: "ok", x: "broken", "?": "open", "!": "mind", "[ ]": "to-show", "[x]": "ok" };

export function element(name, text, style) {
  const made = document.createElement(name);
  if (text !== undefined && text !== "") made.textContent = text;
  if (style) made.className = style;
  return made;
}

export function show(target, answer) {
  const parts = [];
  let heading = "";
  for (const block of answer.blocks) {
    if (block.kind === "title" || block.kind === "heading") heading = block.text;
    parts.push(part(block, answer.headline, heading));
  }
  target.replaceChildren(...parts);
}

function part(block, headline, heading) {
  switch (block.kind) {
    case "title": return element(headline ? "h2" : "h3", block.text, headline ? "verdict " + headline : "");
    case "heading": return element("h3", block.text);
    case "line": return element("p", block.text);
    case "table": return table(block, heading);
    default: {
      const line = element("p", "", `${block.kind} depth-${Math.min(3, block.depth)}`);
      if (words[block.mark]) line.append(element("b", words[block.mark], "mark-" + kinds[block.mark]), " ");
      line.append(...linked(block.text));
      return line;
    }
  }
}

// An address that stands alone becomes a link; only http and https.
function linked(text) {
  if (!/^https?:\/\/\S+$/.test(text)) return [text];
  const link = element("a", text);
  link.href = text;
  link.rel = "noreferrer";
  return [link];
}

function table(block, heading) {
  const box = element("section", "", "scroll");
  box.tabIndex = 0;
  box.setAttribute("aria-label", `${heading}: ${block.columns.join(", ")}`);
  const made = box.appendChild(element("table"));
  const caption = made.createCaption();
  caption.textContent = heading;
  caption.className = "hush";
  const head = made.createTHead().insertRow();
  for (const column of block.columns) {
    const cell = head.appendChild(element("th", column));
    cell.scope = "col";
  }
  const body = made.createTBody();
  for (const row of block.rows) {
    const line = body.insertRow();
    row.forEach((text, i) => line.appendChild(element("td", text, i >= block["numbers-from"] ? "number" : "")));
  }
  return box;
}
