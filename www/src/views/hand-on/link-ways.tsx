// A link as text, to be copied, or given to the system's own sharing.

import type { JSX } from "preact";
import { useRef, useState } from "preact/hooks";
import { canShare, copyFrom, share } from "../../hand-on/outward";
import { message } from "../../locale";

type Told = "copied" | "copy-refused" | "share-refused";

export function LinkWays({ link, title }: { readonly link: string; readonly title: string }): JSX.Element {
  const field = useRef<HTMLTextAreaElement>(null);
  const [told, setTold] = useState<Told | undefined>(undefined);
  const shared = { title, url: link };
  const copy = async (): Promise<void> => {
    if (field.current !== null) setTold((await copyFrom(field.current)) === "done" ? "copied" : "copy-refused");
  };
  const shareIt = async (): Promise<void> => setTold((await share(shared)) === "refused" ? "share-refused" : undefined);
  return (
    <div class="link-ways">
      <label for="handed-link">{message("hand-on-link", { characters: link.length })}</label>
      <textarea id="handed-link" name="handedLink" readonly rows={3} ref={field} value={link} onFocus={() => field.current?.select()} />
      <div class="hand-on-actions">
        <button class="framed" data-action="copy-link" onClick={() => void copy()}>
          {message("hand-on-copy")}
        </button>
        {canShare(shared) && (
          <button class="framed" data-action="share-link" onClick={() => void shareIt()}>
            {message("hand-on-share")}
          </button>
        )}
      </div>
      <p role="status" class="note">
        {told && message(`hand-on-${told}`)}
      </p>
      {!canShare(shared) && <p class="note">{message("hand-on-no-share")}</p>}
    </div>
  );
}
