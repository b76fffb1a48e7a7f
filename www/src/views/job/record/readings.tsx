// The readings of both holds, with a small plot each.

import type { JSX } from "preact";
import type { RecordedMoment, RecordedPressure, RecordedVacuum } from "../../../core";
import { useJob } from "../../../job/job-context";
import { shortMoment } from "../../../job/moment";
import { message } from "../../../locale";
import { figureText } from "../../../parts/figures";
import { vacuumText } from "../../../parts/vacuum-unit";
import { PressurePlot, VacuumPlot } from "./plots";

export function Readings(): JSX.Element | null {
  const { assessment } = useJob();
  const { recordedPressures, recordedVacuums } = assessment;
  if (recordedPressures.length + recordedVacuums.length === 0) return null;
  return (
    <div class="record-pair record-readings">
      {recordedPressures.length > 0 && (
        <section>
          <h3>{message("record-pressures", { count: recordedPressures.length })}</h3>
          <PressurePlot assessment={assessment} />
          <ReadingList readings={recordedPressures} text={pressureText} />
        </section>
      )}
      {recordedVacuums.length > 0 && (
        <section>
          <h3>{message("record-vacuums", { count: recordedVacuums.length })}</h3>
          <VacuumPlot assessment={assessment} />
          <ReadingList readings={recordedVacuums} text={vacuumReadingText} />
        </section>
      )}
    </div>
  );
}

/** More would push the rest off the page: they are in the file of readings. */
const mostPrinted = 40;

function ReadingList<Reading extends { moment?: RecordedMoment | null }>({ readings, text }: {
  readonly readings: readonly Reading[];
  readonly text: (reading: Reading) => string;
}): JSX.Element {
  const left = readings.length - mostPrinted;
  return (
    <>
      {left > 0 && <p>{message("record-readings-left", { count: left })}</p>}
      <ol>
        {readings.slice(-mostPrinted).map((reading, place) => (
          <li key={place}>
            {reading.moment == null ? message("record-no-time") : shortMoment(reading.moment.at)} <b>{text(reading)}</b>
            {reading.moment?.doubt != null && <em> {message("record-doubtful")}</em>}
          </li>
        ))}
      </ol>
    </>
  );
}

function pressureText({ gaugePressure, temperature, ambientTemperature, holdBegins }: RecordedPressure): string {
  return [
    gaugePressure == null ? message("record-unreadable") : figureText("gauge-pressure", gaugePressure, "table"),
    temperature == null ? "" : figureText("temperature", temperature, "table"),
    ambientTemperature == null ? "" : message("record-air", { temperature: figureText("temperature", ambientTemperature, "table") }),
    holdBegins ? message("record-hold-begins") : "",
  ]
    .filter((part) => part !== "")
    .join(", ");
}

function vacuumReadingText({ pressure, valvedOff }: RecordedVacuum): string {
  const level = pressure == null ? message("record-unreadable") : vacuumText(pressure);
  return valvedOff ? level : `${level}, ${message("record-pump-on")}`;
}
