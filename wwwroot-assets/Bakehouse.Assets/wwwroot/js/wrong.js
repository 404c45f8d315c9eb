// Something's wrong: sends what was picked, or takes it back, and shows what stands then.
const said = document.getElementById("said");

const newId = () => {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const hex = Array.from(bytes, b => b.toString(16).padStart(2, "0")).join("");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
};

const post = body => fetch("/kitchen/slips", {
  method: "POST",
  headers: { "Content-Type": "application/json", "X-Bakehouse": "kitchen" },
  body: JSON.stringify(body),
});

function tell(message) {
  said.hidden = false;
  said.textContent = message;
  said.scrollIntoView({ block: "nearest" });
}

// A tap that got no answer keeps its id, so that a second tap can't count twice.
async function send(button, body, then) {
  button.disabled = true;
  try {
    const answer = await post(body);
    const { accepted, message } = await answer.json();
    if (accepted) { location.replace(then); return; }
    tell(message);
  } catch {
    tell("No connection: nothing was written. Tap again when it is back.");
  }
  button.disabled = false;
}

document.addEventListener("click", event => {
  const button = event.target.closest("[data-tell], [data-back]");
  if (!button) return;
  if (button.dataset.tell) {
    const body = JSON.parse(button.dataset.tell);
    send(button, body, `/kitchen/wrong?done=${body.id.replaceAll("-", "")}&tell=${encodeURIComponent(button.dataset.who)}`);
  } else {
    button.dataset.id ??= newId();
    send(button, { id: button.dataset.id, back: button.dataset.back, spare: false }, "/kitchen/wrong");
  }
});
