// Keys at the counter. A single letter jumps to what it names while no field has the focus; it can be switched off in Help.
const kept = () => { try { return localStorage.getItem("letters"); } catch { return null; } };
const keep = how => { try { how ? localStorage.setItem("letters", how) : localStorage.removeItem("letters"); } catch { /* private window: for this page only */ } };

function letters(how) {
  if (how) document.documentElement.dataset.letters = how;
  else delete document.documentElement.dataset.letters;
}
letters(kept());

document.addEventListener("click", event => {
  const how = event.target.closest?.("button[data-letters]")?.dataset.letters;
  if (!how) return;
  keep(how === "off" ? how : null);
  letters(how === "off" ? how : null);
});

const jumps = {
  d: "#day", n: "#count", t: "#tiers button", f: "[id^='tier-'] select", c: "#finish", a: "#allergies button", w: "#name",
};
const isField = what => what.matches?.("input:not([type=checkbox], [type=radio], [type=button]), select, textarea, [contenteditable]");
const fields = page => [...page.querySelectorAll("input:not([type=checkbox], [type=radio]), select, textarea")].filter(f => !f.disabled && f.offsetParent);

function go(field, event) {
  if (!field) return;
  event.preventDefault();
  field.focus();
  field.select?.();
  field.scrollIntoView({ block: "nearest" });
}

document.addEventListener("keydown", event => {
  const page = document.querySelector(".page.order");
  if (!page || event.isComposing || event.altKey || event.metaKey) return;
  const at = event.target;
  if (event.ctrlKey) {
    const take = event.key === "Enter" && !event.repeat && page.querySelector("[data-takes].main:not(:disabled)");
    if (!take) return;
    event.preventDefault();
    // What was typed last is told before the order is taken, as by a tap beside the field.
    if (isField(at)) at.blur();
    take.click();
  } else if (isField(at)) {
    if (event.key === "Escape") at.blur();
    else if (event.key === "Enter" && at.tagName !== "TEXTAREA" && page.contains(at)) {
      const all = fields(page);
      go(all[all.indexOf(at) + 1], event);
    }
  } else if (!event.repeat && !document.documentElement.dataset.letters) {
    const place = jumps[event.key.toLowerCase()];
    if (place) go(page.querySelector(place), event);
    else if (event.key >= "1" && event.key <= "4" && event.key.length === 1) page.querySelectorAll(".answer-offers .offer button")[event.key - 1]?.click();
  }
});
