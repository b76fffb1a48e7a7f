// What must be shown before a valve is opened: tight, dry, every joint looked at. Loud as long as it is not.

import type { JSX } from "preact";
import type { Stage } from "../../../core";
import { presentJoints, useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { momentText } from "../../../job/moment";
import { jobPlace } from "../../../job/stages";
import { message } from "../../../locale";
import { VerdictMark } from "../../../parts/verdict-line";

interface Shown {
  readonly name: string;
  readonly isShown: boolean;
  /** Nothing is there yet that could be looked at. */
  readonly isOpen?: boolean;
  readonly text: string;
  /** Where it is shown. */
  readonly stage: Stage;
}

export function Evidence(): JSX.Element {
  const { assessment, document } = useJob();
  const isOpened = ["liquidValveOpened", "gasValveOpened"].some((valve) => textAt(document, "release", valve) !== "");
  const hasJoints = presentJoints(assessment).length > 0;
  const { tightSince, drySince, jointsNotProven, isAboveRoomLimit } = assessment.beforeRelease;
  const since = (word: string, at: string | null | undefined): string =>
    at == null ? message(`release-not-${word}`) : message(`release-${word}`, { at: momentText(at) });
  const all: readonly Shown[] = [
    { name: "tight", isShown: tightSince != null, text: since("tight", tightSince), stage: "pressure-test" },
    hasJoints
      ? { name: "looked", isShown: jointsNotProven === 0, text: message(jointsNotProven === 0 ? "release-looked" : "release-not-looked", { count: jointsNotProven }), stage: "pressure-test" }
      : { name: "looked", isShown: false, isOpen: true, text: message("release-no-joints"), stage: "plan" },
    { name: "dry", isShown: drySince != null, text: since("dry", drySince), stage: "evacuate" },
    ...(isAboveRoomLimit ? [{ name: "room", isShown: false, text: message("release-above-room"), stage: "plan" as const }] : []),
  ];
  return (
    <section class="evidence">
      <h2>{message("release-before")}</h2>
      {all.some(({ isShown }) => !isShown) && (
        <p class="loud" role="alert">
          {message(isOpened ? "release-opened-without" : "release-not-yet")}
        </p>
      )}
      <ul>
        {all.map((shown) => (
          <EvidenceRow key={shown.name} shown={shown} />
        ))}
      </ul>
    </section>
  );
}

function EvidenceRow({ shown: { name, isShown, isOpen = false, text, stage } }: { readonly shown: Shown }): JSX.Element {
  const { job } = useJob();
  return (
    <li data-evidence={name} data-shown={isOpen ? "open" : isShown}>
      <VerdictMark state={isOpen ? "open" : isShown ? "in-band" : "out-of-band"} />
      <span>{text}</span>
      {!isShown && (
        <a href={jobPlace(job.id, stage)}>{message("release-to-stage", { stage: message(`stage-${stage}`) })}</a>
      )}
    </li>
  );
}
