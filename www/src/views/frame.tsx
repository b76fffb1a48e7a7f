// The frame around every view: header, navigation, state of the page.

import type { ComponentChildren, JSX } from "preact";
import { offlineState } from "../offline";

export function Frame({ path, children }: { path: string; children: ComponentChildren }): JSX.Element {
  return (
    <div data-path={path} data-keeping={offlineState().keeping}>
      {children}
    </div>
  );
}
