// To name a joint, to move it, to take it out and put it back; of one that was added also what it is.

import type { JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { JointAssessment } from "../../../core";
import { useJob } from "../../../job/job-context";
import { jointField, record } from "../../../job/joint-records";
import { message } from "../../../locale";
import { ChoiceRow } from "../../../parts/choice-row";
import { EntryField } from "../../../parts/entry-field";
import { write } from "../../../parts/fields";
import { TubeChoice } from "../../../parts/tube-choice";

const kinds = ["flare", "brazed", "cap"] as const;
const lines = ["liquid-line", "gas-line"] as const;

export function JointEditor({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { problems } = useJob();
  return (
    <>
      <EntryField name={jointField(joint.id, "name")} problems={problems} words />
      {joint.place === "own" && <WhatItIs joint={joint} />}
      <Ways joint={joint} />
    </>
  );
}

function WhatItIs({ joint: { id, kind, line } }: { readonly joint: JointAssessment }): JSX.Element {
  const { problems } = useJob();
  const choose = (name: string, words: readonly string[], chosen: string, prefix: string, legend: string): JSX.Element => (
    <ChoiceRow
      name={jointField(id, name)}
      legend={legend}
      beside
      chosen={chosen}
      problems={problems}
      onChoose={(word) => write(jointField(id, name), word)}
      choices={words.map((word) => ({ word, label: message(`${prefix}-${word}`) }))}
    />
  );
  return (
    <>
      {choose("kind", kinds, kind, "joint-kind", message("field-kind"))}
      {choose("line", lines, line, "joint-line", message("field-line"))}
      {kind !== "cap" && <TubeChoice name={jointField(id, "tube")} problems={problems} />}
    </>
  );
}

function Ways({ joint: { id, earlier, later, state } }: { readonly joint: JointAssessment }): JSX.Element {
  const { job } = useJob();
  const stayOn = useFocusThatStays();
  const move = (order: number | null | undefined) => (event: { readonly currentTarget: HTMLElement }) => {
    if (order == null) return;
    stayOn(event.currentTarget);
    record(job, id, { order });
  };
  const isOut = state === "removed";
  return (
    <div class="joint-ways">
      <button data-action="move-earlier" aria-disabled={earlier == null} onClick={move(earlier)}>
        {message("joints-move-earlier")}
      </button>
      <button data-action="move-later" aria-disabled={later == null} onClick={move(later)}>
        {message("joints-move-later")}
      </button>
      <button data-action={isOut ? "put-back" : "take-out"} onClick={() => record(job, id, { removed: isOut ? undefined : true })}>
        {message(isOut ? "joints-put-back" : "joints-take-out")}
      </button>
    </div>
  );
}

/** What is moved in the list loses the focus; here it comes back. */
function useFocusThatStays(): (button: HTMLElement) => void {
  const button = useRef<HTMLElement | undefined>(undefined);
  useLayoutEffect(() => {
    button.current?.focus();
    button.current = undefined;
  });
  return (pressed) => {
    button.current = pressed;
  };
}
