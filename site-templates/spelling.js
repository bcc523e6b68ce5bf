// What people write, as the evaluator reads it. What is not known here stays as it is: the evaluator says what is wrong with it.
const units = {
  "\"": "in", "″": "in", "''": "in", "”": "in", inch: "in", inches: "in", "in.": "in", mms: "mm", millimetre: "mm", millimetres: "mm", kgs: "kg", kilo: "kg",
  kilos: "kg", tonne: "t", tonnes: "t", l: "L", litre: "L", litres: "L", lbs: "lb", pounds: "lb",
};

export function amount(text) {
  const found = /^([+-]?)(\d{1,3}(?:,\d{3})+|\d+)(\.\d+)?(?:[ -](\d)\/(2|4|8|16))?\s*(.*)$/.exec(text.replace(/^[−–]/, "-"));
  if (!found) return text;
  const [, sign, whole, decimals, part, parts, unit] = found;
  if (decimals && part) return text;
  const number = whole.replaceAll(",", "") + (decimals ?? (part ? String(Number(part) / Number(parts)).slice(1) : ""));
  return `${sign}${number} ${units[unit.toLowerCase()] ?? unit}`.trim();
}

/** Day, month, year, as it is written where these rules hold; a month and a year. */
export function day(text) {
  const whole = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/.exec(text);
  if (whole && Number(whole[2]) <= 12) return `${whole[3]}-${whole[2].padStart(2, "0")}-${whole[1].padStart(2, "0")}`;
  const month = /^(\d{1,2})[/.-](\d{4})$/.exec(text);
  if (month && Number(month[1]) <= 12) return `${month[2]}-${month[1].padStart(2, "0")}`;
  return /^not[ -]yet$/i.test(text) ? "not-yet" : text;
}

export const tyre = text => text.replace(/^((?:P|LT)?\d{3})\s*[/ x]\s*(\d{2,3})(?:\s*[/ -]\s*|\s*[rR]\s*)(\d{2})(?=\D|$)/, "$1/$2R$3");

export const spelt = { amount, day, tyre };
