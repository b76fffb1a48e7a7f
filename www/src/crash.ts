// The screen of last resort. It asks nothing of the view or the core, which may be what has failed,
// and shows what was typed, which is also still in the address.

import { place, saveAddress, writePlace } from "./address";
import { hasMessage, message } from "./locale";
import { openAnew } from "./offline";

/** In every language, for where the sentences themselves could not be fetched. */
const unspoken: Readonly<Record<string, string>> = {
  "crash-title": "Coldwright has stopped · Coldwright se ha detenido",
  "crash-text": "Not all of the page could be fetched. · No se pudo cargar la página entera.",
  "crash-reload": "Open again · Abrir de nuevo",
  "crash-start-anew": "Start anew · Empezar de nuevo",
  "crash-same-place": "Link to this place · Enlace a este lugar",
  "crash-rescue": "Save all jobs · Guardar todos los trabajos",
  "crash-rescued": "Saved · Guardados",
  "crash-not-rescued": "Not saved · No guardados",
};

function words(id: string): string {
  return hasMessage(id) ? message(id) : (unspoken[id] ?? "");
}

/** Puts the screen in place of the page. */
export function showCrash(root: Element, reason: unknown): void {
  console.error(reason);
  saveAddress();
  const screen = element("main", "crash");
  screen.append(element("h1", "", words("crash-title")), element("p", "", words("crash-text")));
  screen.append(typedTexts());
  const reload = element("button", "", words("crash-reload"));
  // A newer version may have put right what has failed.
  reload.addEventListener("click", () => void openAnew());
  const anew = element("a", "", words("crash-start-anew"));
  anew.setAttribute("href", location.pathname);
  screen.append(reload, rescue(), anew, element("pre", "", String(reason)));
  root.replaceChildren(screen);
  reload.focus();
}

/** All jobs as a file, if the part of the page that keeps them still answers. */
function rescue(): Element {
  const button = element("button", "", words("crash-rescue"));
  button.dataset.action = "rescue";
  button.addEventListener("click", () => {
    import("./job/rescue")
      .then(({ saveAllJobs }) => saveAllJobs())
      .then(
        () => (button.textContent = words("crash-rescued")),
        (problem: unknown) => {
          console.error(problem);
          button.textContent = words("crash-not-rescued");
        },
      );
  });
  return button;
}

function typedTexts(): Element {
  const list = element("dl", "");
  for (const [name, text] of Object.entries(place().entries)) {
    list.append(element("dt", "", name), element("dd", "", text));
  }
  const link = element("a", "", words("crash-same-place"));
  link.setAttribute("href", writePlace(place()));
  const texts = element("div", "");
  texts.append(list, link);
  return texts;
}

function element(tag: string, className: string, text = ""): HTMLElement {
  const made = document.createElement(tag);
  if (className !== "") made.className = className;
  made.textContent = text;
  return made;
}
