// A job of a file beside the same job on this phone: the places where they differ, and whose holds.

import type { JSX } from "preact";
import { withPlace, type Decision, type MergedJob } from "../../job/merge";
import { momentText } from "../../job/moment";
import { contentText, placeText } from "../../job/place-words";
import { message } from "../../locale";
import { ChoiceRow } from "../../parts/choice-row";
import type { BackupJob, Difference, Path } from "../../store/jobs";
import { shownName } from "./job-row";

export function MergeJob({ merged, decision, onDecide }: {
  readonly merged: MergedJob;
  readonly decision: Decision;
  readonly onDecide: (decision: Decision) => void;
}): JSX.Element {
  const { job, standing, refusal } = merged;
  return (
    <li data-standing={standing} data-merge={job.id}>
      <b>{shownName(job.name)}</b>
      <p class="note">
        {job.mineEdited === undefined
          ? message(`files-standing-${standing}`, { edited: momentText(job.edited) })
          : message(`files-standing-both-${standing}`, { edited: momentText(job.edited), mine: momentText(job.mineEdited) })}
      </p>
      {refusal !== undefined && <p class="problem">{refusal}</p>}
      {standing !== "refused" && standing !== "same" && <Choice merged={merged} decision={decision} onDecide={onDecide} />}
      {decision.kind !== "take" && job.differences.length > 0 && standing !== "refused" && (
        <Differences job={job} decision={decision} onDecide={onDecide} />
      )}
    </li>
  );
}

interface Deciding {
  readonly merged: MergedJob;
  readonly decision: Decision;
  readonly onDecide: (decision: Decision) => void;
}

function Choice({ merged: { job, standing }, decision, onDecide }: Deciding): JSX.Element {
  const choose = (word: string): void => {
    onDecide(word === "by-field" ? { kind: "by field", theirs: [] } : { kind: word === "take" ? "take" : "leave" });
  };
  const words = standing === "differs" ? ["leave", "take", "by-field"] : ["take", "leave"];
  return (
    <ChoiceRow
      name={`merge-${job.id}`}
      legend={message("files-choice")}
      beside
      chosen={decision.kind.replace(" ", "-")}
      onChoose={choose}
      choices={words.map((word) => ({ word, label: message(`files-choice-${standing === "differs" ? word : `${word}-new`}`) }))}
    />
  );
}

/** The places where the two differ, whose holds at each as far as it is decided by field. */
export function Differences({ job, decision, onDecide, from = "file" }: {
  readonly job: BackupJob;
  readonly decision: Decision;
  readonly onDecide: (decision: Decision) => void;
  /** What brings theirs. */
  readonly from?: "file" | "link";
}): JSX.Element {
  const theirs = decision.kind === "by field" ? decision.theirs : undefined;
  return (
    <ul class="differences">
      {job.differences.map((difference) => (
        <li key={difference.path.join(".")}>
          <OneDifference
            difference={difference}
            place={<span class="difference-place">{placeText(job.document, difference.path, difference.mine)}</span>}
            name={`${job.id} ${difference.path.join(".")}`}
            theirs={theirs}
            from={from}
            onChoose={(isTheirs) => theirs && onDecide({ kind: "by field", theirs: withPlace(theirs, difference.path, isTheirs) })}
          />
        </li>
      ))}
    </ul>
  );
}

/** Both contents; as a choice where it is decided field by field and there is something here to lose. */
function OneDifference({ difference: { path, mine, theirs: found }, place, name, theirs, from, onChoose }: {
  readonly difference: Difference;
  readonly place: JSX.Element;
  readonly name: string;
  readonly theirs: readonly Path[] | undefined;
  readonly from: "file" | "link";
  readonly onChoose: (isTheirs: boolean) => void;
}): JSX.Element {
  if (theirs === undefined || mine === undefined) {
    return (
      <>
        {place}
        <dl>
          <dt>{message("files-mine")}</dt>
          <dd>{contentText(mine)}</dd>
          <dt>{message("files-theirs", { from })}</dt>
          <dd>{contentText(found)}</dd>
          {theirs !== undefined && <dd class="added">{message("files-added")}</dd>}
        </dl>
      </>
    );
  }
  const isTheirs = theirs.some((place) => place.join(".") === path.join("."));
  return (
    <ChoiceRow
      name={name}
      legend={place}
      beside
      chosen={isTheirs ? "theirs" : "mine"}
      onChoose={(word) => onChoose(word === "theirs")}
      choices={[
        { word: "mine", label: contentText(mine), detail: message("files-mine") },
        { word: "theirs", label: contentText(found), detail: message("files-theirs", { from }) },
      ]}
    />
  );
}
