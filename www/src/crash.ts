// The screen of last resort. It asks nothing of the view or the core, which may be what has failed,
// and shows what was typed, which is also still in the address.

import { place, saveAddress, writePlace } from "./address";
import { message } from "./locale";
import { openAnew } from "./offline";

/** Puts the screen in place of the page. */
export function showCrash(root: Element, reason: unknown): void {
  console.error(reason);
  saveAddress();
  const screen = element("main", "crash");
  screen.append(element("h1", "", message("crash-title")), element("p", "", message("crash-text")));
  screen.append(typedTexts());
  const reload = element("button", "", message("crash-reload"));
  // A newer version may have put right what has failed.
  reload.addEventListener("click", () => void openAnew());
  const anew = element("a", "", message("crash-start-anew"));
  anew.setAttribute("href", location.pathname);
  screen.append(reload, rescue(), anew, element("pre", "", String(reason)));
  root.replaceChildren(screen);
  reload.focus();
}

/** All jobs as a file, if the part of the page that keeps them still answers. */
function rescue(): Element {
  const button = element("button", "", message("crash-rescue"));
  button.dataset.action = "rescue";
  button.addEventListener("click", () => {
    import("./job/rescue")
      .then(({ saveAllJobs }) => saveAllJobs())
      .then(
        () => (button.textContent = message("crash-rescued")),
        (problem: unknown) => {
          console.error(problem);
          button.textContent = message("crash-not-rescued");
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
  const link = element("a", "", message("crash-same-place"));
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
