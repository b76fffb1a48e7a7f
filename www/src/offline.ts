// Whether everything is on this phone, and whether a newer version waits for the person's word.

import { saveAddress } from "./address";
import { reasonToWait } from "./waiting";

/**
 * - `one-file`: the page is a file with everything inside;
 * - `unsupported`: this browser keeps nothing (or the page is built to be worked on);
 * - `fetching`: the first visit; the files are on their way;
 * - `kept`: everything is on this phone and no signal is needed;
 * - `failed`: the files could not all be fetched; the next visit tries again.
 */
export type Keeping = "one-file" | "unsupported" | "fetching" | "kept" | "failed";

export interface OfflineState {
  readonly keeping: Keeping;
  /** A newer version is on this phone and is taken when the person says so. */
  readonly updateWaits: boolean;
  /** A newer version could not be fetched whole: this one goes on. */
  readonly updateFailed: boolean;
}

const container = DEVELOPMENT || ONE_FILE ? undefined : navigator.serviceWorker;

let state: OfflineState = { keeping: initialKeeping(), updateWaits: false, updateFailed: false };
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

/** Takes the version that waits, unless something speaks against it just now. */
export function takeUpdate(): void {
  if (reasonToWait() === undefined) void openAnew();
}

/** Opens the page anew, with the version that waits if there is one; what was typed is in the address. */
export async function openAnew(): Promise<void> {
  saveAddress();
  const waiting = (await container?.getRegistration())?.waiting;
  if (!waiting) return location.reload();
  waiting.addEventListener("statechange", () => {
    if (waiting.state === "activated") location.reload();
  });
  waiting.postMessage("take-over");
}

function initialKeeping(): Keeping {
  if (ONE_FILE) return "one-file";
  if (container === undefined) return "unsupported";
  return container.controller === null ? "fetching" : "kept";
}

function followInstallation(found: ServiceWorkerRegistration): void {
  const { installing, waiting, active } = found;
  if (waiting !== null) setState({ updateWaits: true });
  if (active !== null) setState({ keeping: "kept" });
  const isFirst = active === null;
  let isWhole = false;
  installing?.addEventListener("statechange", () => {
    const { state: reached } = installing;
    if (reached === "installed") isWhole = true;
    if (reached === "installed" && !isFirst) setState({ updateWaits: true, updateFailed: false });
    if (reached === "activated") setState({ keeping: "kept" });
    if (reached === "redundant" && !isWhole) setState(isFirst ? { keeping: "failed" } : { updateFailed: true });
  });
}

function lookForUpdate(): void {
  if (document.visibilityState !== "visible") return;
  // A clock may have run out meanwhile.
  listener();
  // Without a signal there is nothing to find.
  registration?.update().catch(() => {});
}

function setState(changes: Partial<OfflineState>): void {
  state = { ...state, ...changes };
  listener();
}
