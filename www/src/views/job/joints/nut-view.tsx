// A joint in the stage of the nuts: what to set on the wrench, what the nut gets, oil, the second wrench, and what was done.

import type { JSX } from "preact";
import { show, type JointAssessment } from "../../../core";
import { BackupWrench } from "../../../drawings/backup-wrench";
import { useSheet } from "../../../drawings/sheet";
import { useJob } from "../../../job/job-context";
import { jointField, record } from "../../../job/joint-records";
import { message } from "../../../locale";
import { EntryField } from "../../../parts/entry-field";
import { bandNumbers, bandText, figureText } from "../../../parts/figures";
import { Tick } from "../../../parts/tick";
import { UnitSwitch } from "../../../parts/unit-switch";
import { VerdictLine } from "../../../parts/verdict-line";
import { otherUnitOf, unitOf } from "../../../unit-choice";
import { HeadNumbers } from "./head-band";
import { NutFigure } from "./nut-figure";
import { Remaking } from "./remaking";
import { TorqueBasis } from "./torque-basis";
import { TubeWanted } from "./tube-wanted";
import { WrenchInHand } from "./wrench-in-hand";

export function NutView({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  if (joint.kind === "brazed") return <p class="joint-told">{message("joints-brazed-no-nut")}</p>;
  return joint.kind === "flare" ? <Nut joint={joint} /> : <p class="joint-told">{message("joints-cap-on")}</p>;
}

function Nut({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { job } = useJob();
  return (
    <>
      <TubeWanted joint={joint} />
      <Setting joint={joint} />
      <dl class="pair">
        <AtNut joint={joint} />
        <NutFigure joint={joint} />
      </dl>
      <Tick name="oiled" isOn={joint.oiled} onChange={(isOn) => record(job, joint.id, { oiled: isOn })} detail={message("choice-oil-on-thread-and-faces")}>
        {message("field-oiled")}
      </Tick>
      <WrenchInHand joint={joint} />
      <SecondWrench joint={joint} />
      <ScaleTorque joint={joint} />
      <TorqueBasis joint={joint} />
      <Remaking joint={joint} />
    </>
  );
}

/** What the wrench is set to; with the adapter that is not what the nut gets. */
function Setting({ joint: { setting, aim, torque, withAdapter } }: { readonly joint: JointAssessment }): JSX.Element {
  const unit = unitOf("torque");
  return (
    <HeadNumbers
      mark="setting"
      name={message("wrench-set")}
      numbers={setting == null ? "—" : show("torque", setting, unit).number}
      isWithheld={setting == null}
      unit={<UnitSwitch quantity="torque" />}
    >
      {setting != null && aim != null && (
        <p class="beneath">
          <span>{figureText("torque", setting, "instrument", otherUnitOf("torque"))}</span>
          <b>{withAdapter ? message("joints-gives", { aim: figureText("torque", aim) }) : message("joints-straight")}</b>
        </p>
      )}
      {setting == null && <p class="beneath">{message(torque == null ? "joints-no-torque" : "joints-no-lever")}</p>}
    </HeadNumbers>
  );
}

function AtNut({ joint: { torque, aim } }: { readonly joint: JointAssessment }): JSX.Element {
  return (
    <div>
      <dt>{message("joints-at-nut")}</dt>
      {torque == null ? (
        <dd class="absent">{message("joints-not-told")}</dd>
      ) : (
        <dd data-figure="torque">
          {bandNumbers("torque", torque)}
          <i>{unitOf("torque")}</i>
          <small>{bandText("torque", torque, otherUnitOf("torque"))}</small>
          {aim != null && <small data-figure="aim">{message("torque-aim", { aim: figureText("torque", aim) })}</small>}
        </dd>
      )}
    </div>
  );
}

function SecondWrench({ joint: { nutAcrossFlats } }: { readonly joint: JointAssessment }): JSX.Element {
  const sheet = useSheet();
  const nut = nutAcrossFlats == null ? "" : `${show("length", nutAcrossFlats, "mm", "significant").number} mm`;
  return (
    <BackupWrench
      sheet={sheet}
      labels={{
        turn: nut === "" ? message("joints-turn") : message("joints-turn-nut", { nut }),
        hold: message("wrench-hold-still"),
        alternative: message("joints-two-wrenches"),
      }}
    />
  );
}

function ScaleTorque({ joint: { id, torque, tightened } }: { readonly joint: JointAssessment }): JSX.Element {
  const { problems } = useJob();
  return (
    <>
      <EntryField name={jointField(id, "scaleTorque")} problems={problems} unit={unitOf("torque")} />
      {torque && (
        <VerdictLine judged={tightened ?? undefined} limits={torque} quantity="torque" {...(tightened ? {} : { words: message("joints-torque-open") })}>
          {tightened && <p>{message("joints-nut-got", { torque: figureText("torque", tightened.figure, "table") })}</p>}
        </VerdictLine>
      )}
    </>
  );
}
