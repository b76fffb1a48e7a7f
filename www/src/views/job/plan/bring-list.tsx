// What has to be in the van, by the plan: ticked off here, printed on a page of its own.

import type { JSX } from "preact";
import { useRef, useState } from "preact/hooks";
import type { BringItem, Fact } from "../../../core";
import { useJob } from "../../../job/job-context";
import { JobFields } from "../../../job/job-fields";
import { itemsAt, textAt } from "../../../job/job-path";
import { factFigure, factText } from "../../../job/job-words";
import { message } from "../../../locale";
import { Disclosure } from "../../../parts/disclosure";
import { puttingIn, setting } from "../../../store/jobs";

export function BringList(): JSX.Element {
  const { document, assessment } = useJob();
  const { bring } = assessment;
  const packed = bring.filter((item) => item.packed).length;
  // What is packed needs no list, unless it is packed just now.
  const [isOpenAtFirst] = useState(packed < bring.length);
  const things = useRef<HTMLDetailsElement>(null);
  const printOpened = (): void => {
    if (things.current !== null) things.current.open = true;
    print();
  };
  return (
    <section class="bring printed">
      <h2>{message("bring")}</h2>
      <p class="bring-job">{[textAt(document, "name"), textAt(document, "site")].filter((text) => text !== "").join(", ")}</p>
      <details ref={things} class="bring-things" open={isOpenAtFirst}>
        <summary>
          <span role="status">{message("bring-packed", { packed, all: bring.length })}</span>
        </summary>
        <ul>
          {bring.map((item) => (
            <Thing key={item.id} item={item} />
          ))}
        </ul>
      </details>
      <button class="framed unprinted" data-action="print-bring" onClick={printOpened}>
        {message("bring-print")}
      </button>
    </section>
  );
}

function Thing({ item: { id, matter, figures, oils, packed } }: { readonly item: BringItem }): JSX.Element {
  const { job, document } = useJob();
  const pack = (isPacked: boolean): void => {
    const isThere = itemsAt(document, "packed").some((thing) => thing.id === id);
    job.apply(isThere ? setting(["packed", `#${id}`, "packed"], isPacked) : puttingIn(["packed"], { id, packed: isPacked }));
  };
  const told = [...figureTexts(figures), ...oils.map((oil) => message(`choice-${oil}`))];
  // The oils that go with a refrigerant are common practice too.
  const isPractice = figures.length === 0;
  return (
    <li data-bring={matter}>
      <label>
        <input type="checkbox" checked={packed} onChange={({ currentTarget }) => pack(currentTarget.checked)} />
        <span>
          <b>{message(`bring-${matter}`)}</b>
          {told.length > 0 && <span class="bring-figures">{told.join(", ")}</span>}
          {isPractice && <small>{message("bring-practice")}</small>}
        </span>
      </label>
    </li>
  );
}

/** A range is told as one. */
function figureTexts(figures: readonly Fact[]): readonly string[] {
  const [least, most] = [figures.find(({ meaning }) => meaning === "fact-least-torque"), figures.find(({ meaning }) => meaning === "fact-most-torque")];
  const range = least && most ? [message("bring-range", { low: factFigure(least), high: factFigure(most) })] : [];
  return [...range, ...figures.filter((figure) => figure !== least && figure !== most).map(textOfFigure)];
}

/** Sizes speak for themselves. */
function textOfFigure(figure: Fact): string {
  return figure.meaning === "fact-tube" || figure.meaning === "fact-length" ? factFigure(figure) : factText(figure);
}

/** Entered for the pressure test as well: who packs wants to know before. */
export function NitrogenFields(): JSX.Element {
  const { problems } = useJob();
  const at = ["pressureTest", "test"];
  return (
    <Disclosure name="plan-more" summary={<span>{message("bring-nitrogen-needs")}</span>} mustShow={problems.some(({ field }) => field.startsWith(`job:${at.join(".")}.`))}>
      <JobFields
        at={at}
        fields={[
          { name: "volume", quantity: "volume", label: "standing-test-volume" },
          { name: "cylinderVolume", quantity: "volume" },
          { name: "cylinderPressure", quantity: "gauge-pressure" },
        ]}
      />
    </Disclosure>
  );
}
