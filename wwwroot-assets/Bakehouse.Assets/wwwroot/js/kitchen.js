// The kitchen's screen: hears what stands, sends taps, keeps them while there is no connection, rings.
import { chime, sounds, unlock } from "./bell.js";

const page = document.getElementById("kitchen");
const board = document.getElementById("board");
const rings = document.getElementById("rings");
const notices = document.getElementById("notices");
const offline = document.getElementById("offline");
const refused = document.getElementById("refused");
const sound = document.getElementById("sound");
const clock = () => new Date().toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
// What this device keeps; where it keeps nothing (a private window, a full store), this page does for as long as it is open.
const here = new Map();
const keep = (name, value) => { try { localStorage.setItem(name, value); here.delete(name); } catch { here.set(name, value); } };
const kept = name => { try { return here.get(name) ?? localStorage.getItem(name); } catch { return here.get(name) ?? null; } };

// A phone shows the list of whoever holds it.
if (innerWidth < 700 && !new URLSearchParams(location.search).has("for") && page.dataset.me) {
  location.replace(`/kitchen?for=${page.dataset.me}`);
}

// ---- colours: by the hour of the shop, or as tapped on this screen
function paint() {
  const wish = kept("colours") ?? "auto";
  page.classList.toggle("night", wish === "night" || (wish === "auto" && page.dataset.night === "yes"));
  for (const button of document.querySelectorAll("[data-colours]")) {
    button.setAttribute("aria-pressed", String(button.dataset.colours === wish));
    button.classList.toggle("main", button.dataset.colours === wish);
  }
}
paint();

// ---- hearing
let heard = Date.now();
let lastPlan = clock();
let stream;

function listen() {
  stream?.close();
  stream = new EventSource(`/kitchen/events?for=${encodeURIComponent(page.dataset.for)}`);
  stream.addEventListener("board", event => { connected(); draw(JSON.parse(event.data)); });
  stream.addEventListener("beat", connected);
  stream.onerror = lost;
}

function connected() {
  heard = Date.now();
  lastPlan = clock();
  if (!offline.hidden && !offline.dataset.back) back();
}

function lost() {
  if (!offline.hidden && !offline.dataset.back) return;
  delete offline.dataset.back;
  offline.hidden = false;
  offline.textContent = `No connection since ${clock()}. Plan of ${lastPlan}. Ticks are kept here and sent later.`;
}

async function back() {
  offline.dataset.back = "yes";
  const { sent, notes } = await sendKept();
  if (unsent().length > 0) {
    // The plan is heard again and taps still don't get through: what is kept stays told, and the next beat tries again.
    delete offline.dataset.back;
    return;
  }
  saySent(sent, notes);
}

function saySent(sent, notes) {
  offline.dataset.back = "yes";
  offline.textContent = sent > 0 ? [`Connected again, ${sent} ${sent === 1 ? "tick" : "ticks"} sent.`, ...notes, "Tap to close."].join(" ") : "";
  offline.hidden = sent === 0;
}
offline.addEventListener("click", () => { if (offline.dataset.back) offline.hidden = true; });

// Three beats missed, or a stream that the browser gave up: begin anew. The server may have been started again, then so is the page.
setInterval(async () => {
  if (stream.readyState !== EventSource.CLOSED && Date.now() - heard < 45000) return;
  lost();
  try {
    if ((await fetch("/healthz", { cache: "no-store" })).ok) { heard = Date.now(); listen(); }
  } catch { /* still away */ }
}, 2000);

function draw(now) {
  if (now.board === undefined) return;
  const at = document.activeElement?.dataset?.key;
  swap(board, now.board);
  if (swap(rings, now.rings)) ring();
  if (now.notices !== undefined) swap(notices, now.notices);
  page.dataset.night = now.night ? "yes" : "no";
  paint();
  if (at) document.querySelector(`[data-key="${CSS.escape(at)}"]`)?.focus();
}

function swap(place, html) {
  if (place.dataset.html === html) return false;
  const open = place.querySelector("details[open]")?.dataset.key;
  const before = place.firstElementChild?.dataset.ring;
  place.dataset.html = html;
  place.innerHTML = html;
  const details = open && place.querySelector(`details[data-key="${open}"]`);
  if (details && place.firstElementChild?.dataset.ring === before) details.open = true;
  return true;
}

// ---- ringing
let shown = null;
let known = new Set();
let loud = new Set();
let again;

// A ring that comes due sounds until somebody answers it; what was late already when this screen first saw it sounds once, gently.
function ring() {
  const screen = rings.querySelector(".ring");
  const ids = new Set(screen?.dataset.ids?.split(" ") ?? []);
  const late = new Set(screen?.dataset.lates?.split(" ") ?? []);
  const fresh = [...ids].filter(id => !known.has(id));
  loud = new Set([...loud].filter(id => ids.has(id)).concat(fresh.filter(id => !late.has(id))));
  known = ids;
  page.classList.toggle("rings", screen !== null);
  board.inert = screen !== null;
  if ((screen?.dataset.ring ?? null) === shown) screen?.classList.add("was-there");
  else screen?.querySelector("[data-do]").focus();
  shown = screen?.dataset.ring ?? null;
  ringOut(fresh);
}

function ringOut(fresh) {
  if (loud.size === 0) {
    clearInterval(again);
    again = undefined;
    if (fresh.length > 0) chime(1, true);
  } else if (again === undefined) {
    chime(3);
    again = setInterval(() => chime(3), 5000);
  }
}

// ---- sound and light: the bar says if the sound is off, and the shop hears about twice a minute if it is on
const soundIs = on => { sound.hidden = on; };
const hears = () => sounds() && fetch("/kitchen/hears", { method: "POST", headers: { "X-Bakehouse": "kitchen" } }).catch(() => null);
async function wake() {
  await unlock(soundIs);
  hears();
  awake();
}
setInterval(hears, 30000);

async function awake() {
  try { await navigator.wakeLock?.request("screen"); } catch { /* the device decides */ }
}
document.addEventListener("visibilitychange", () => { if (document.visibilityState === "visible") awake(); });
sound.addEventListener("click", async () => { await wake(); chime(1); });
awake();

// ---- taps
const newId = () => {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const hex = Array.from(bytes, b => b.toString(16).padStart(2, "0")).join("");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
};

// A page that is loaded again just after a tap must not take the tap with it.
const post = tap => fetch("/kitchen/commands", {
  method: "POST",
  keepalive: true,
  headers: { "Content-Type": "application/json", "X-Bakehouse": "kitchen" },
  body: JSON.stringify(tap),
});

// What the book says; anything else on the way (an error, a page of somebody else's) is no answer, and the tap stays kept.
async function heardOf(tap) {
  const answer = await post(tap);
  if (answer.status >= 500) throw new Error(String(answer.status));
  const said = await answer.json();
  if (typeof said.accepted !== "boolean") throw new Error("No answer of the book.");
  return said;
}

const waiting = () => JSON.parse(kept("taps") ?? "[]");
const unsent = () => waiting().filter(t => !t.no);
const hold = tap => keep("taps", JSON.stringify([...waiting(), tap]));
const letGo = tap => keep("taps", JSON.stringify(waiting().filter(t => t.id !== tap.id)));
const mark = (id, no) => keep("taps", JSON.stringify(waiting().map(t => id === undefined || t.id === id ? { ...t, no } : t)));

// Sends what was kept, oldest first. A tap that the book has already is answered the same and so counts once. One that is refused stays
// until a person has read why.
async function sendKept() {
  let sent = 0;
  const notes = new Set();
  for (const tap of unsent()) {
    try {
      const { accepted, message } = await heardOf({ ...tap, now: new Date().toISOString() });
      if (accepted) { sent++; if (message) notes.add(message); letGo(tap); } else mark(tap.id, message);
    } catch { break; }
  }
  sayRefused();
  return { sent, notes: [...notes] };
}

// ---- what was kept and then refused: told one by one, let go by a tap
function sayRefused() {
  const [first, ...more] = waiting().filter(t => t.no);
  refused.hidden = !first;
  if (!first) return;
  const left = more.length === 0 ? "" : ` ${more.length} more after it.`;
  refused.dataset.id = first.id;
  refused.querySelector("span").textContent =
    `${first.what ?? "A tick"}, tapped ${ago(first)}: not taken. ${first.no} If it was done, tick it on the list; then let this go.${left}`;
}

function ago(tap) {
  const minutes = Math.floor((Date.now() - Date.parse(tap.done)) / 60000);
  return !(minutes >= 0) ? "earlier" : minutes < 1 ? "just now" : minutes < 60 ? `${minutes} min ago` : minutes < 1440 ? `${Math.floor(minutes / 60)} h ${minutes % 60} ago` : `${Math.floor(minutes / 1440)} days ago`;
}

refused.addEventListener("click", async event => {
  const wish = event.target.closest("button")?.dataset.kept;
  if (wish === "let-go") { letGo({ id: refused.dataset.id }); sayRefused(); }
  if (wish === "again") { mark(undefined, undefined); const { sent, notes } = await sendKept(); saySent(sent, notes); if (unsent().length > 0) lost(); }
});

// Kept until the book has answered: whatever ends this page in between, the next one sends it.
async function send(tap, button) {
  button.disabled = true;
  button.classList.add("is-sending");
  if (tap.do !== "answer") hold({ ...tap, what: named(button), done: new Date().toISOString() });
  try {
    const { accepted, message } = await heardOf(tap);
    letGo(tap);
    if (!accepted) { tell(message); settle(button); }
  } catch {
    if (tap.do === "answer") settle(button);
    lost();
  }
}

// "Done: Final coat 8 in, Petra", or "Undo: Final coat 8 in, done 10:58, Petra".
const named = button => button.getAttribute("aria-label")
  ?? [button.textContent, button.parentElement.querySelector("span")?.textContent].filter(Boolean).map(t => t.trim()).join(": ");

const settle = button => { button.disabled = false; button.classList.remove("is-sending"); };

function tell(message) {
  const line = document.createElement("p");
  line.className = "told is-no";
  line.setAttribute("role", "alert");
  line.textContent = message;
  page.append(line);
  setTimeout(() => line.remove(), 10000);
}

document.addEventListener("click", event => {
  if (!sounds()) wake();
  const colours = event.target.closest("[data-colours]");
  if (colours) { keep("colours", colours.dataset.colours); paint(); return; }
  const button = event.target.closest("[data-do]");
  if (!button) return;
  const { do: what, steps, by, kind, reason } = button.dataset;
  send({
    id: newId(), do: what, steps: steps?.split(" "), by, kind, reason,
    ring: what === "answer" ? button.closest("[data-ring]").dataset.ring : undefined,
  }, button);
});

ring();
listen();
// Whoever comes back to this page may have said who they are: what was refused is tried again.
mark(undefined, undefined);
sendKept().then(({ sent, notes }) => {
  if (notes.length > 0) saySent(sent, notes);
  if (unsent().length > 0) lost();
});
