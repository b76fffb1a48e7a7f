// A job as a file: kept where this phone keeps downloads, or given to the system's own sharing.

import type { JSX } from "preact";
import { useMemo, useState } from "preact/hooks";
import { canShare, share } from "../../hand-on/outward";
import { fileNameOf, jobFile } from "../../job/job-file";
import { saveFile } from "../../job/save-file";
import { message } from "../../locale";
import type { TreeObject } from "../../store/jobs";

export function FileWays({ document }: { readonly document: TreeObject }): JSX.Element {
  const [isRefused, setRefused] = useState(false);
  const shared = useMemo(() => ({ files: [textFile(document)] }), [document]);
  const shareIt = async (): Promise<void> => setRefused((await share(shared)) === "refused");
  return (
    <div class="file-ways">
      <h3>{message("hand-on-file")}</h3>
      <div class="hand-on-actions">
        <button class="framed" data-action="save-job-file" onClick={() => saveFile(jobFile(document), fileNameOf(document))}>
          {message("hand-on-file-save")}
        </button>
        {canShare(shared) && (
          <button class="framed" data-action="share-job-file" onClick={() => void shareIt()}>
            {message("hand-on-file-share")}
          </button>
        )}
      </div>
      <p class="note">{message("hand-on-file-hint")}</p>
      {!canShare(shared) && <p class="note">{message("hand-on-no-file-share")}</p>}
      <p role="status" class="note">
        {isRefused && message("hand-on-share-refused")}
      </p>
    </div>
  );
}

/** Of the files that a page may share, browsers take plain text and no JSON (Chromium's list, from memory). */
function textFile(document: TreeObject): File {
  return new File([jobFile(document)], fileNameOf(document, "json.txt"), { type: "text/plain" });
}
