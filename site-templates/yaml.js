// A job as YAML: keys in blocks, each row of a list in one line. Whatever could be read as something else is quoted.
const plain = /^-?[A-Za-z0-9](?:[A-Za-z0-9 _./+%-]*[A-Za-z0-9_./+%-])?$/;

function word(value) {
  if (value === null) return "null";
  const text = String(value);
  return plain.test(text) && !/^null$/i.test(text) ? text : JSON.stringify(text);
}

function line(value) {
  if (Array.isArray(value)) return `[${value.map(line).join(", ")}]`;
  if (typeof value !== "object" || value === null) return word(value);
  return `{ ${Object.entries(value).map(([key, inner]) => `${word(key)}: ${line(inner)}`).join(", ")} }`;
}

function block(map, indent) {
  return Object.entries(map).map(([key, value]) => {
    const lead = `${indent}${word(key)}:`;
    if (Array.isArray(value) && value.some(item => typeof item === "object")) return `${lead}\n${value.map(item => `${indent}  - ${line(item)}\n`).join("")}`;
    if (typeof value !== "object" || value === null || Array.isArray(value) || Object.keys(value).length === 0) return `${lead} ${line(value)}\n`;
    return `${lead}\n${block(value, indent + "  ")}`;
  }).join("");
}

export const yaml = job => block(job, "");
