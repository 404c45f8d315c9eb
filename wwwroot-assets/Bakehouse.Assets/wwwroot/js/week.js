// Tells the page how wide the drawing may be, shows now first on a small screen, and keeps arrow keys from scrolling under it.
export function watch(tray, page) {
  let last = 0;
  const showNow = () => {
    const now = tray.querySelector(".wk-ruler .w-now-plate");
    const grid = tray.querySelector(".wk-grid");
    if (now && grid && grid.scrollWidth > grid.clientWidth) {
      grid.scrollLeft = Math.max(0, Number(now.getAttribute("x")) - 60);
    }
  };
  const tell = async () => {
    const wide = tray.clientWidth;
    if (wide > 0 && Math.abs(wide - last) >= 1) {
      const first = last === 0;
      last = wide;
      try {
        await page.invokeMethodAsync("Wide", wide);
        if (first) {
          showNow();
        }
      } catch {
        seen.disconnect();
      }
    }
  };
  const seen = new ResizeObserver(tell);
  seen.observe(tray);
  tray.addEventListener("keydown", e => {
    if (e.key.startsWith("Arrow") && e.target.closest(".wk")) {
      e.preventDefault();
    }
  });
}
