// The sound of the bell, for every page that may ring. A browser lets a page sound only after a tap on it.
let audio;

export const sounds = () => audio?.state === "running";

// Tries to have sound; true if it is on. Where the device has none the page goes on saying so.
export async function unlock(changed) {
  try {
    if (!audio) {
      audio = new AudioContext();
      audio.onstatechange = () => changed?.(sounds());
    }
    await audio.resume();
  } catch { /* no sound on this device */ }
  changed?.(sounds());
  return sounds();
}

// Loud enough to be heard over a mixer; a gentle one for what is late already.
export function chime(times, gentle = false) {
  if (!sounds()) return;
  for (let i = 0; i < times; i++) {
    const tone = audio.createOscillator();
    const loud = audio.createGain();
    const at = audio.currentTime + i * 0.32;
    tone.frequency.value = gentle ? 660 : i % 2 ? 1175 : 880;
    loud.gain.setValueAtTime(0, at);
    loud.gain.linearRampToValueAtTime(gentle ? 0.25 : 0.6, at + 0.02);
    loud.gain.exponentialRampToValueAtTime(0.001, at + 0.28);
    tone.connect(loud).connect(audio.destination);
    tone.start(at);
    tone.stop(at + 0.3);
  }
}
