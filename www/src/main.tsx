// Mounts the page: view = function of address, settings and the state of the service worker.

import { render } from "preact";
import { listenToAddress, place } from "./address";
import { arrive } from "./arrival";
import { startCore } from "./core";
import { showCrash } from "./crash";
import { fetchCards } from "./fetched";
import { whenIdle } from "./idle";
import { chosenLanguage } from "./language";
import { language, message, speak } from "./locale";
import { keepOffline } from "./offline";
import { routeOf } from "./routes";
import { applyToDocument, listenToSettings } from "./settings";
import { applyStyle } from "./style";
import style from "./styles/page.css";
import { Frame } from "./views/frame";
import { listenToWaiting } from "./waiting";

const root = document.getElementById("page") ?? document.body;
let hasCrashed = false;
let isDrawingDue = false;
let shownPath: string | undefined;
let shownLanguage: string | undefined;

function crash(reason: unknown): void {
  if (hasCrashed) return;
  hasCrashed = true;
  showCrash(root, reason);
}

/** Draws once for all changes of an event, at its end: a keystroke and its figures share one frame. */
function drawSoon(): void {
  if (!isDrawingDue) queueMicrotask(draw);
  isDrawingDue = true;
}

function draw(): void {
  isDrawingDue = false;
  if (hasCrashed) return;
  const { path } = place();
  const { title, View } = routeOf(path);
  try {
    render(
      <Frame path={path}>
        <View key={path} />
      </Frame>,
      root,
    );
  } catch (reason) {
    crash(reason);
    return;
  }
  if (path === shownPath && language === shownLanguage) return;
  document.title = message("page-title", { place: message(title) });
  shownLanguage = language;
  if (path === shownPath) return;
  if (shownPath !== undefined) arrive();
  shownPath = path;
}

/** Changes over once the sentences are here; without a signal in the first visit, the language stays as it is. */
function speakChosen(): void {
  speak(chosenLanguage()).then(drawSoon, (reason: unknown) => console.warn(reason));
}

function settingsChanged(): void {
  if (chosenLanguage() !== language) speakChosen();
  drawSoon();
}

async function start(): Promise<void> {
  const sentences = speak(chosenLanguage());
  const core = startCore();
  applyStyle(style);
  applyToDocument();
  await Promise.all([core, sentences]);
  listenToAddress(drawSoon);
  listenToSettings(settingsChanged);
  listenToWaiting(drawSoon);
  addEventListener("languagechange", speakChosen);
  draw();
  whenIdle(() => {
    fetchCards(drawSoon);
    keepOffline(drawSoon).catch(crash);
  });
}

addEventListener("error", (event) => {
  if (event.error instanceof Error) crash(event.error);
});
addEventListener("unhandledrejection", (event) => crash(event.reason));
start().catch(crash);
