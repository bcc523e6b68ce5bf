// On a narrow screen long parts stay folded until somebody opens them, or an address leads into one. Without script all are open.
const parts = [...document.querySelectorAll("details.fold")];

function reveal() {
  const target = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  for (let part = target && target.closest("details"); part; part = part.parentElement.closest("details")) part.open = true;
  if (target) target.scrollIntoView();
}

if (matchMedia("(max-width: 48rem)").matches) {
  for (const part of parts) part.open = false;
  reveal();
}
window.addEventListener("hashchange", reveal);
