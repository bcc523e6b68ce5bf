// Filters the log; the filters live in the address.
const form = document.getElementById("filter");
const fields = [...form.querySelectorAll("select")];
const shown = document.getElementById("shown");

function show() {
  const [place, topic, year, kind] = fields.map(field => field.value);
  const isFiltered = fields.some(field => field.value);
  let count = 0;
  for (const section of document.querySelectorAll(".year")) {
    const isYear = !year || section.dataset.year === year;
    let any = false;
    for (const entry of section.querySelectorAll("li[data-kind]")) {
      const { place: at, topic: on, kind: of } = entry.dataset;
      entry.hidden = !isYear || (place && at !== place) || (topic && on !== topic) || (kind && of !== kind);
      if (!entry.hidden) { any = true; count++; }
    }
    section.hidden = !any;
    if (isFiltered) section.open = true;
  }
  shown.textContent = count === 0 ? "No entry: nothing of this kind is recorded." : count === 1 ? "1 entry" : `${count} entries`;
}

const search = new URLSearchParams(location.search);
for (const field of fields) {
  const value = search.get(field.name);
  if ([...field.options].some(option => option.value === value)) field.value = value;
}
form.hidden = false;
show();
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("change", () => {
  show();
  const text = new URLSearchParams(fields.filter(field => field.value).map(field => [field.name, field.value])).toString();
  history.replaceState(null, "", location.pathname + (text ? "?" + text : "") + location.hash);
});
