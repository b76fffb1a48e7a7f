// The frame around every view: name, state of the phone's copy, the view, and under the thumb the
// tube sizes of the bench and the ways to the other places.

import type { ComponentChildren, JSX } from "preact";
import { writePlace } from "../address";
import { cards } from "../card-list";
import { message } from "../locale";
import { offlineState, takeUpdate } from "../offline";
import { HandOnButton } from "./hand-on-button";
import { drawnFor } from "../parts/drawn-for";
import { reasonToWait } from "../waiting";
import { SizeRow } from "./bench/size-row";

const Sizes = drawnFor(["tube"], SizeRow);

const places = [
  { path: "", title: "title-bench" },
  { path: "jobs", title: "title-jobs" },
  { path: "tubes", title: "title-tubes" },
  { path: "convert", title: "title-convert" },
  { path: "cards", title: "title-cards" },
] as const;

export function Frame({ path, children }: { readonly path: string; readonly children: ComponentChildren }): JSX.Element {
  const { keeping, updateWaits } = offlineState();
  const elsewhere = isCard(path) || ["jobs", "job", "handed", "tubes", "convert", "cards", "settings"].includes(path);
  const here = elsewhere ? path : "";
  return (
    <div class="frame" data-path={path} data-keeping={keeping}>
      <header>
        <a class="name" href={writePlace({ path: "", entries: {} })}>
          Coldwright
        </a>
        <span class="keeping" role="status">
          {message(`keeping-${keeping}`)}
        </span>
        {handsOn(path) && <HandOnButton path={path} />}
        <a
          class="settings-link"
          href={writePlace({ path: "settings", entries: {} })}
          aria-current={here === "settings" ? "page" : undefined}
        >
          {message("title-settings")}
        </a>
      </header>
      {updateWaits && <Update />}
      {children}
      <footer>
        {!elsewhere && <Sizes />}
        <nav aria-label={message("frame-navigation")}>
          {places.map(({ path: target, title }) => (
            <a
              key={target}
              href={writePlace({ path: target, entries: {} })}
              aria-current={here === target ? "page" : isWithin(path, target) ? "true" : undefined}
            >
              {message(title)}
            </a>
          ))}
        </nav>
      </footer>
    </div>
  );
}

/** Lists and choices of the phone are not handed on, and a job that was is kept first. */
function handsOn(path: string): boolean {
  return !["jobs", "handed", "cards", "settings"].includes(path);
}

/** The offer of the version that waits, or why not now. */
function Update(): JSX.Element {
  const reason = reasonToWait();
  return (
    <p class="update" role="status">
      <span data-update={reason ?? "now"}>{message(`update-${reason ?? "now"}`)}</span>
      {reason === undefined && (
        <button data-action="take-update" onClick={takeUpdate}>
          {message("update-take")}
        </button>
      )}
    </p>
  );
}

function isCard(path: string): boolean {
  return cards.some((card) => card.path === path);
}

/** Whether a view belongs to one of the places below. */
function isWithin(path: string, target: string): boolean {
  return (target === "cards" && isCard(path)) || (target === "jobs" && ["job", "handed"].includes(path));
}
