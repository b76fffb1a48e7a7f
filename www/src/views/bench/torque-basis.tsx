// Whose band holds: all families, one of them, or the plate's own figure, which outranks them.

import type { JSX } from "preact";
import { units, type Problem, type TorqueAnswer } from "../../core";
import { message } from "../../locale";
import { ChoiceRow } from "../../parts/choice-row";
import { Disclosure } from "../../parts/disclosure";
import { EntryField } from "../../parts/entry-field";
import { textOf, write } from "../../parts/fields";
import { bandText } from "../../parts/figures";
import { SourceList } from "../../parts/sources";
import { chooseUnit } from "../../settings";
import { unitOf } from "../../unit-choice";
import { familyBands } from "./joint";

export function TorqueBasis({ answer, problems }: {
  readonly answer: TorqueAnswer | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const families = familyBands();
  const summary = (
    <>
      {answer && <em>{basisText(answer)}</em>} <span>{message("torque-basis-change")}</span>
    </>
  );
  return (
    <Disclosure
      name="basis"
      summary={summary}
      mustShow={problems.some(({ field }) => field === "family" || field === "plateTorque")}
    >
        <EntryField name="plateTorque" problems={problems} unit={unitOf("torque")} words />
        <p class="note">{message("torque-plate-wins")}</p>
        <ChoiceRow
          name="family"
          legend={message("torque-family-choice")}
          chosen={textOf("family")}
          problems={problems}
          onChoose={(word) => write("family", word)}
          choices={[
            { word: "", label: message("torque-family-all") },
            ...families.map(({ family, band }) => ({
              word: family,
              label: message(`choice-${family}`),
              detail: bandText("torque", band),
            })),
          ]}
        />
        <SourceList ids={families.map(({ source }) => source)} />
        <ChoiceRow
          name="torqueUnit"
          legend={message("torque-unit-choice")}
          beside
          chosen={unitOf("torque")}
          onChoose={(symbol) => chooseUnit("torque", symbol)}
          choices={units("torque").map(({ symbol }) => ({ word: symbol, label: symbol }))}
        />
    </Disclosure>
  );
}

function basisText({ basis, families }: TorqueAnswer): string {
  const chosen = textOf("family");
  if (basis === "family") return message("torque-basis-family", { family: message(`choice-${chosen}`) });
  if (basis === "overlap" && families.length === 1) return message("torque-basis-overlap-one");
  return message(`torque-basis-${basis}`);
}
