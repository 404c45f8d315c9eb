// After a restart of the server an open page can't take its circuit up again: wait until the server answers, then load anew.
const band = document.getElementById("components-reconnect-modal");
band?.addEventListener("components-reconnect-state-changed", event => {
  if (event.detail.state === "hide") return;
  const ask = async () => {
    try {
      if (event.detail.state !== "rejected" && band.classList.contains("components-reconnect-hide")) return;
      const answer = await fetch("/healthz", { cache: "no-store" });
      if (answer.ok && (event.detail.state === "rejected" || event.detail.state === "failed")) { location.reload(); return; }
    } catch { /* still away: ask again */ }
    setTimeout(ask, 1000);
  };
  if (event.detail.state === "rejected" || event.detail.state === "failed") ask();
});
