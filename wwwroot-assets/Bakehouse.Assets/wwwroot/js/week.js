// Tells the page how wide the drawing may be, and keeps arrow keys from scrolling under it.
export function watch(tray, page) {
  let last = 0;
  const tell = () => {
    const wide = tray.clientWidth;
    if (wide > 0 && Math.abs(wide - last) >= 1) {
      last = wide;
      page.invokeMethodAsync("Wide", wide).catch(() => seen.disconnect());
    }
  };
  const seen = new ResizeObserver(tell);
  seen.observe(tray);
  tell();
  tray.addEventListener("keydown", e => {
    if (e.key.startsWith("Arrow") && e.target.closest(".wk")) {
      e.preventDefault();
    }
  });
}
