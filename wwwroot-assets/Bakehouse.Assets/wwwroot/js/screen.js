// Pixels in a millimetre of this screen, kept on this device by "Fit this screen".
const kept = localStorage.getItem("mm");
if (kept) document.documentElement.style.setProperty("--mm", `${kept}px`);

document.addEventListener("input", event => {
  if (event.target.id !== "fit-width") return;
  const mm = event.target.value / 85.6;
  document.documentElement.style.setProperty("--mm", `${mm}px`);
  localStorage.setItem("mm", mm.toFixed(3));
});
