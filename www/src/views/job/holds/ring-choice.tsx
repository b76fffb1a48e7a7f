// Whether the page rings when the time of the hold is over, and what it cannot do.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { momentText } from "../../../job/moment";
import { isReadyToRing, noticeLeave, readyToRing } from "../../../job/ring";
import { message } from "../../../locale";

export function RingChoice({ due }: { readonly due: string }): JSX.Element {
  const [isReady, setReady] = useState(isReadyToRing());
  const ready = (): void => void readyToRing().then(() => setReady(true));
  return (
    <div class="ring">
      {!isReady && (
        <button class="framed" data-action="ring" onClick={ready}>
          {message("ring-ask")}
        </button>
      )}
      <p class="note" role="status" data-ring={isReady ? noticeLeave() : undefined}>
        {isReady && `${message(`ring-${noticeLeave()}`)} `}
        {message("ring-limits", { due: momentText(due) })}
      </p>
    </div>
  );
}
