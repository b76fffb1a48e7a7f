// What is on the screen, to be handed on: as a code for the phone beside this one, as a link, a job also as a file.

import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { place } from "../address";
import { calculationLink, jobLink, type JobLink } from "../hand-on/link";
import { linkProblemText } from "../job/handed";
import { textAt } from "../job/job-path";
import { useOpened, useShelf } from "../job/open-shelf";
import { isLearning as learns } from "../learning";
import { message } from "../locale";
import { placeToHandOn } from "../parts/fields";
import { Tick } from "../parts/tick";
import type { TreeObject } from "../store/jobs";
import { applyStyle } from "../style";
import style from "../styles/hand-on.css";
import { FileWays } from "./hand-on/file-ways";
import { LinkCode } from "./hand-on/link-code";
import { LinkWays } from "./hand-on/link-ways";
import { shownName } from "./jobs/job-row";

applyStyle(style);

export function HandOn({ onClose }: { readonly onClose: () => void }): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const { path, entries } = place();
  return (
    <dialog class="hand-on" ref={dialog} aria-labelledby="hand-on-heading" onClose={onClose}>
      <div class="hand-on-head">
        <h2 id="hand-on-heading">{message("hand-on-heading")}</h2>
        <button class="framed" data-action="close-hand-on" onClick={() => dialog.current?.close()}>
          {message("hand-on-close")}
        </button>
      </div>
      {path === "job" ? <JobToHandOn id={entries.id ?? ""} /> : <CalculationToHandOn />}
    </dialog>
  );
}

function CalculationToHandOn(): JSX.Element {
  const [isLearning, setLearning] = useState(learns);
  const shown = useMemo(placeToHandOn, []);
  const link = calculationLink(shown, isLearning);
  return (
    <>
      <LinkCode link={link} />
      <Tick name="learn" isOn={isLearning} onChange={setLearning} detail={message("hand-on-learn-detail")}>
        {message("hand-on-learn")}
      </Tick>
      <LinkWays link={link} title={document.title} />
      <p class="note">{message("hand-on-calculation")}</p>
    </>
  );
}

function JobToHandOn({ id }: { readonly id: string }): JSX.Element {
  const opened = useOpened(useShelf(), id);
  if (opened === undefined) return <p />;
  return opened.kind === "job" ? <DocumentToHandOn document={opened.job.document} /> : <p class="problem">{message("job-absent")}</p>;
}

function DocumentToHandOn({ document }: { readonly document: TreeObject }): JSX.Element {
  const written = useMemo(() => jobLink(document), [document]);
  const name = shownName(textAt(document, "name"));
  return (
    <>
      <p class="handed-name">{name}</p>
      {"link" in written ? <JobAsLink written={written} name={name} /> : <p role="status">{linkProblemText(written.problem)}</p>}
      <FileWays document={document} />
    </>
  );
}

function JobAsLink({ written: { link, photosLeftOut }, name }: {
  readonly written: Extract<JobLink, { readonly link: string }>;
  readonly name: string;
}): JSX.Element {
  return (
    <>
      <LinkCode link={link} />
      {photosLeftOut > 0 && <p data-photos-left-out={photosLeftOut}>{message("hand-on-photos", { count: photosLeftOut })}</p>}
      <LinkWays link={link} title={name} />
      <p class="note">{message("hand-on-job")}</p>
    </>
  );
}
