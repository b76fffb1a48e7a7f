// The frame around every view: header, navigation, state of the page.

import type { ComponentChildren, JSX } from "preact";
import { offlineState, takeUpdate } from "../offline";

export function Frame({ path, children }: { path: string; children: ComponentChildren }): JSX.Element {
  const { keeping, updateWaits } = offlineState();
  return (
    <div data-path={path} data-keeping={keeping}>
      {updateWaits && (
        <button data-action="take-update" onClick={takeUpdate}>
          update
        </button>
      )}
      {children}
    </div>
  );
}
