// The charge: how much refrigerant goes in, where the scale must stop, what cylinders may hold.

import type { JSX } from "preact";
import type { ChargeAnswer } from "../core";
import { message } from "../locale";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { Working } from "../parts/working";
import "./charge/style";
import { accessories, ask, example, instrumentFields, isFilled, isWrong, plateFields, scaleFields, shownAt } from "./charge/ask";
import { ChargeFinding } from "./charge/charge-finding";
import { HosePanel } from "./charge/hose-panel";
import { LinePanel } from "./charge/line-panel";
import { RecoveryPanel } from "./charge/recovery-panel";
import { WarmingRows } from "./charge/warming-rows";

export function Charge(): JSX.Element {
  const asked = ask();
  const { problems, charge, weighed } = asked;
  return (
    <Card name="charge" example={example} fromKit={["refrigerant"]}>
      <ChargeFinding charge={charge} weighed={weighed} problems={problems} shownAt={shownAt()} />
      <h2>{message("charge-scale")}</h2>
      <CardFields fields={scaleFields()} problems={problems} />
      <h2>{message("charge-plate")}</h2>
      <CardFields fields={plateFields()} problems={problems} />
      <Disclosure
        name="charge-more"
        summary={<span>{message("charge-more")}</span>}
        mustShow={isFilled(instrumentFields()) || isWrong(instrumentFields(), problems) || hasAccessories(charge) || problems.some(({ field }) => field.startsWith("accessories"))}
      >
        <CardFields fields={instrumentFields()} problems={problems} />
        <EntryRows list={accessories} problems={problems} legend={message("charge-accessories")} add={message("charge-accessories-add")} />
      </Disclosure>
      <LinePanel answer={asked.physics} problems={problems} />
      {charge && <WarmingRows answer={charge} />}
      <RecoveryPanel answer={asked.recovery} problems={problems} />
      <HosePanel answer={asked.hose} problems={problems} />
      <Working steps={stepsOf(weighed ?? charge)} of={message("title-charge")} />
    </Card>
  );
}

function hasAccessories(answer: ChargeAnswer | undefined): boolean {
  return answer !== undefined && answer.accessories.length > 0;
}

function stepsOf(answer: ChargeAnswer | undefined): ChargeAnswer["working"] {
  return answer?.working ?? [];
}
