// A job that came by a link: how it stands, to be read; then to be kept, compared or merged.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import { place } from "../address";
import { readHanded, shownHanded, type HandedDocument } from "../job/handed";
import { JobContext } from "../job/job-context";
import { textAt } from "../job/job-path";
import { useShelf } from "../job/open-shelf";
import { message } from "../locale";
import { problemText } from "../parts/fields";
import type { Shelf } from "../store/jobs";
import { KeepHanded } from "./handed/keep-handed";
import { RecordSheet } from "./job/record-stage";
import { RefusedDocument } from "./job/refused-document";
import { shownName } from "./jobs/job-row";

export function Handed(): JSX.Element {
  const { job = "" } = place().entries;
  const handed = useMemo(() => readHanded(job), [job]);
  const shelf = useShelf();
  if ("problem" in handed) return <Unreadable texts={[handed.problem]} />;
  if (shelf === undefined) return <main class="job" />;
  return <Readable key={job} shelf={shelf} document={handed.document} />;
}

function Readable({ shelf, document }: { readonly shelf: Shelf; readonly document: HandedDocument }): JSX.Element {
  const shown = useMemo(() => shownHanded(shelf, document), [shelf, document]);
  if (!("assessment" in shown)) return <Unreadable texts={shown.map((problem) => problemText(problem))} />;
  return (
    <JobContext.Provider value={shown}>
      <main class="job handed">
        <h1>{shownName(textAt(document, "name"))}</h1>
        <p class="note">{message("handed-intro")}</p>
        <KeepHanded shelf={shelf} document={document} />
        <RecordSheet />
      </main>
    </JobContext.Provider>
  );
}

function Unreadable({ texts }: { readonly texts: readonly string[] }): JSX.Element {
  return (
    <RefusedDocument screen="job handed" title={message("title-handed")} texts={texts}>
      <p class="note">{message("handed-nothing-kept")}</p>
    </RefusedDocument>
  );
}
