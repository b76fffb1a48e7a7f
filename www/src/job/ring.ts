// Rings when a time is over: a tone and a vibration from this page, a notice of the phone where that is allowed.
// A browser lets a page do so only after a tap, and never once it is closed.

/** How a notice of the phone stands. */
export type NoticeLeave = "granted" | "denied" | "default" | "not-offered";

let sound: AudioContext | undefined;
let isReady = false;

/** Whether somebody has asked for it in this visit. */
export function isReadyToRing(): boolean {
  return isReady;
}

export function noticeLeave(): NoticeLeave {
  return "Notification" in globalThis ? Notification.permission : "not-offered";
}

/** To be called in a tap: makes the tone ready and asks for leave to show a notice. */
export async function readyToRing(): Promise<NoticeLeave> {
  isReady = true;
  sound ??= "AudioContext" in globalThis ? new AudioContext() : undefined;
  void sound?.resume();
  if (noticeLeave() !== "default") return noticeLeave();
  return Notification.requestPermission();
}

/** Rings by every way that is open. */
export async function ring(sentence: string): Promise<void> {
  beep();
  if ("vibrate" in navigator) navigator.vibrate([400, 200, 400, 200, 400]);
  if (noticeLeave() === "granted") await showNotice("Coldwright", { body: sentence, tag: "hold" });
}

/** Phones show notices only through the worker, which a page that is a file does not have: it rings without. */
async function showNotice(title: string, notice: NotificationOptions): Promise<void> {
  const worker = await navigator.serviceWorker?.getRegistration().catch(() => undefined);
  try {
    if (worker?.active) await worker.showNotification(title, notice);
    else new Notification(title, notice);
  } catch {
    // Tone and vibration have to do.
  }
}

/** Three tones, a second apart. */
function beep(): void {
  if (sound === undefined) return;
  const start = sound.currentTime;
  for (const second of [0, 1, 2]) {
    const [tone, loudness] = [sound.createOscillator(), sound.createGain()];
    tone.frequency.value = 880;
    loudness.gain.setValueAtTime(0.4, start + second);
    loudness.gain.exponentialRampToValueAtTime(0.001, start + second + 0.6);
    tone.connect(loudness).connect(sound.destination);
    tone.start(start + second);
    tone.stop(start + second + 0.7);
  }
}
