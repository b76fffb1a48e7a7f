// Jobs as files: all of them into one, and back after a look at what the file would bring.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { readJobFile } from "../../job/job-file";
import { momentNow } from "../../job/moment";
import { backupName, saveFile } from "../../job/save-file";
import { message } from "../../locale";
import type { BackupPreview, Shelf } from "../../store/jobs";
import { MergePreview } from "./merge-preview";

type Told = { readonly kind: "saved" | "taken" | "failed" | "unreadable" };

export function FilePanel({ shelf }: { readonly shelf: Shelf }): JSX.Element {
  const [preview, setPreview] = useState<BackupPreview | undefined>(undefined);
  const [told, setTold] = useState<Told | undefined>(undefined);
  const save = async (): Promise<void> => {
    setTold(undefined);
    try {
      saveFile(await shelf.backup(), backupName(momentNow()));
      setTold({ kind: "saved" });
    } catch {
      setTold({ kind: "failed" });
    }
  };
  const open = async (file: File): Promise<void> => {
    setTold(undefined);
    setPreview(undefined);
    await readJobFile(shelf, file).then(setPreview, () => setTold({ kind: "unreadable" }));
  };
  return (
    <section class="job-files">
      <h2>{message("files-heading")}</h2>
      <p class="note">{message("files-hint")}</p>
      <div class="job-actions">
        <button class="framed" data-action="backup" onClick={() => void save()}>
          {message("files-backup")}
        </button>
        <OpenFile onOpen={(file) => void open(file)} />
      </div>
      <p role="status" class={told?.kind === "failed" || told?.kind === "unreadable" ? "problem" : "note"}>
        {told && message(`files-${told.kind}`)}
      </p>
      {preview && (
        <MergePreview
          shelf={shelf}
          preview={preview}
          onEnd={(isTaken) => {
            setPreview(undefined);
            setTold(isTaken ? { kind: "taken" } : undefined);
          }}
        />
      )}
    </section>
  );
}

/** The phone's own way to choose a file, as a target for a thumb. */
export function OpenFile({ onOpen }: { readonly onOpen: (file: File) => void }): JSX.Element {
  return (
    <label class="framed open-file">
      {message("files-open")}
      <input
        type="file"
        name="jobFile"
        accept=".json,.txt,application/json,text/plain"
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file !== undefined) onOpen(file);
          // The same file chosen again is a choice again.
          currentTarget.value = "";
        }}
      />
    </label>
  );
}
