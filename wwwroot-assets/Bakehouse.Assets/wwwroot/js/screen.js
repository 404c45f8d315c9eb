// Pixels in a millimetre of this screen, kept on this device by "Fit this screen".
const kept = localStorage.getItem("mm");
if (kept) document.documentElement.style.setProperty("--mm", `${kept}px`);

// A link in the list of what to mend leads into its field.
document.addEventListener("click", event => {
  const link = event.target.closest?.(".problems a");
  if (!link) return;
  const field = document.getElementById(new URL(link.href).hash.slice(1));
  if (!field) return;
  event.preventDefault();
  field.focus();
  field.scrollIntoView({ block: "center" });
});

document.addEventListener("input", event => {
  if (event.target.id !== "fit-width") return;
  const mm = event.target.value / 85.6;
  document.documentElement.style.setProperty("--mm", `${mm}px`);
  localStorage.setItem("mm", mm.toFixed(3));
});
