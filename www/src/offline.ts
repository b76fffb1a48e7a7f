// Whether everything is on this phone, and whether a newer version waits for the person's word.

import { saveAddress } from "./address";

/**
 * - `unsupported`: this browser keeps nothing (or the page is built to be worked on);
 * - `fetching`: the first visit; the files are on their way;
 * - `kept`: everything is on this phone and no signal is needed;
 * - `failed`: the files could not all be fetched; the next visit tries again.
 */
export type Keeping = "unsupported" | "fetching" | "kept" | "failed";

export interface OfflineState {
  readonly keeping: Keeping;
  /** A newer version is on this phone and is taken when the person says so. */
  readonly updateWaits: boolean;
}

const container = DEVELOPMENT ? undefined : navigator.serviceWorker;

let state: OfflineState = { keeping: initialKeeping(), updateWaits: false };
let registration: ServiceWorkerRegistration | undefined;
let listener: () => void = () => {};

export function offlineState(): OfflineState {
  return state;
}

/** Registers the service worker and calls `changed` whenever the state has changed. */
export async function keepOffline(changed: () => void): Promise<void> {
  listener = changed;
  if (container === undefined) return;
  try {
    registration = await container.register("./worker.js", { updateViaCache: "none" });
  } catch {
    if (state.keeping === "fetching") setState({ keeping: "failed" });
    return;
  }
  followInstallation(registration);
  registration.addEventListener("updatefound", () => registration && followInstallation(registration));
  document.addEventListener("visibilitychange", lookForUpdate);
}

/** Takes the version that waits, and opens the page anew with it; what was typed is in the address. */
export function takeUpdate(): void {
  const waiting = registration?.waiting;
  if (waiting === null || waiting === undefined) return;
  saveAddress();
  waiting.addEventListener("statechange", () => {
    if (waiting.state === "activated") location.reload();
  });
  waiting.postMessage("take-over");
}

function initialKeeping(): Keeping {
  if (container === undefined) return "unsupported";
  return container.controller === null ? "fetching" : "kept";
}

function followInstallation(found: ServiceWorkerRegistration): void {
  const { installing, waiting, active } = found;
  if (waiting !== null) setState({ updateWaits: true });
  if (active !== null) setState({ keeping: "kept" });
  installing?.addEventListener("statechange", () => {
    const isFirst = found.active === null || found.active === installing;
    if (installing.state === "installed" && !isFirst) setState({ updateWaits: true });
    if (installing.state === "activated") setState({ keeping: "kept", updateWaits: false });
    if (installing.state === "redundant" && isFirst) setState({ keeping: "failed" });
  });
}

function lookForUpdate(): void {
  if (document.visibilityState !== "visible") return;
  // Without a signal there is nothing to find.
  registration?.update().catch(() => {});
}

function setState(changes: Partial<OfflineState>): void {
  state = { ...state, ...changes };
  listener();
}
