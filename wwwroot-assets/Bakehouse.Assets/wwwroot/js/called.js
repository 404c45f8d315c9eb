// The owner's pages sound when nobody has answered a ring: once for each call.
import { chime, unlock } from "./bell.js";

document.addEventListener("pointerdown", () => unlock());
document.addEventListener("keydown", () => unlock());

let heard = null;
setInterval(() => {
  const call = document.querySelector("[data-call]")?.dataset.call ?? null;
  if (call && call !== heard) chime(3);
  heard = call;
}, 1000);
