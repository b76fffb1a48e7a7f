// The charge by the scale: the cylinder's weight as it is now, what remains in large figures, where to stop.

import type { JSX } from "preact";
import { fieldsInJob, JobFields } from "../../../job/job-fields";
import { useJob } from "../../../job/job-context";
import { message } from "../../../locale";
import { Row, Rows } from "../../../parts/rows";
import { Working } from "../../../parts/working";
import { hoseFields, recoveryFields, scaleFields } from "../../charge/ask";
import { ChargeFinding } from "../../charge/charge-finding";
import { HosePanel } from "../../charge/hose-panel";
import { RecoveryPanel } from "../../charge/recovery-panel";
import "../../charge/style";
import { cautionsTold } from "../stage-cautions";

const at = ["release", "charge"];

export function ScaleDesk(): JSX.Element {
  const { assessment, problems } = useJob();
  const answer = assessment.charge ?? undefined;
  const leaves = answer?.chargedAsLiquid;
  return (
    <section class="scale-desk">
      <h2>{message("release-charge")}</h2>
      <ChargeFinding charge={answer} weighed={answer} problems={problems} showsRemaining told={cautionsTold["release-and-charge"]} />
      <JobFields at={at} fields={scaleFields()} />
      {leaves != null && (
        <Rows>
          <Row mark="leavesAs" name={message("release-leaves-as")} figure={message(leaves.figure ? "release-liquid-only" : "release-either")} />
        </Rows>
      )}
      <RecoveryPanel answer={answer} problems={problems} fields={fieldsInJob(at, recoveryFields())} />
      <HosePanel answer={answer} problems={problems} fields={fieldsInJob(at, hoseFields)} />
      <Working steps={answer?.working ?? []} of={message("release-charge")} isNamed />
    </section>
  );
}
