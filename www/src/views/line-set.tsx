// The line set: do the two lines carry what the unit moves, as liquid where it must be liquid, with the oil?

import type { JSX } from "preact";
import type { LineSetAnswer } from "../core";
import { message } from "../locale";
import { LineRun } from "../drawings/line-run";
import { useSheet } from "../drawings/sheet";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { figureText } from "../parts/figures";
import { Finding, type FoundFigure } from "../parts/finding";
import { Row, Rows } from "../parts/rows";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/line-set.css";
import { runUnit } from "../unit-choice";
import * as asked from "./line-set/ask";
import { CheckList } from "./line-set/check-list";
import { checksOf, overall } from "./line-set/checks";
import { DutyPanel } from "./line-set/duty-panel";

applyStyle(style);

const cautions = ["line-set-caution-plate", "line-set-caution-device", "line-set-caution-oil"];

export function LineSet(): JSX.Element {
  const { answer, problems } = asked.ask();
  const checks = answer ? checksOf(answer) : [];
  const all = overall(checks);
  return (
    <Card name="line-set" example={asked.example} fromKit={["refrigerant"]}>
      <Finding
        figures={answer ? figuresOf(answer) : []}
        verdict={all && { state: all.state, word: message(`line-set-all-${all.state}`, { count: all.count }) }}
        problems={problems}
        shownAt={asked.shownAt}
        empty={message("line-set-empty")}
        cautions={answer ? cautions : []}
      >
        <CheckList checks={checks} />
      </Finding>
      {answer && <Run answer={answer} />}
      <Fields problems={problems} />
      {answer?.cooling && <DutyPanel duty={answer.cooling} way="cooling" />}
      {answer?.heating && <DutyPanel duty={answer.heating} way="heating" />}
      {answer && <Tubes answer={answer} />}
    </Card>
  );
}

/** What is read from afar: the liquid's margin where it is least, and what the gas line takes. */
function figuresOf({ cooling, heating }: LineSetAnswer): readonly FoundFigure[] {
  const [left, other] = [cooling?.flashMargin?.figure, heating?.flashMargin?.figure];
  const isLeastInHeating = other !== undefined && (left === undefined || other < left);
  const way = message(isLeastInHeating ? "line-set-heating" : "line-set-cooling");
  const least = isLeastInHeating ? other : left;
  const kelvins = (mark: string, si: number): FoundFigure => ({ mark, name: message(`line-set-${mark}`, { way }), quantity: "temperature-difference", si });
  const [capacity, drop] = [cooling?.capacityRatio, (cooling ?? heating)?.suctionLine?.saturationDrop];
  const velocity = (cooling ?? heating)?.suctionLine?.velocity;
  const found: readonly FoundFigure[] = [
    ...(least !== undefined ? [kelvins("left", least)] : []),
    ...(capacity != null ? [{ mark: "capacity", name: message("line-set-capacity"), quantity: "ratio" as const, si: capacity, precision: "table" as const }] : []),
    ...(drop != null ? [kelvins("gas-drop", drop)] : []),
    ...(velocity != null ? [{ mark: "velocity", name: message("line-set-gas-velocity"), quantity: "velocity" as const, si: velocity }] : []),
  ];
  return found.slice(0, 2);
}

function Fields({ problems }: Pick<asked.Asked, "problems">): JSX.Element {
  const mustShow = (fields: readonly asked.LineSetField[]): boolean => asked.isFilled(fields) || asked.isWrong(fields, problems);
  const otherTubes = [...asked.liquidWidth, ...asked.gasWidth];
  const fine = [...asked.otherFittings, ...otherTubes, ...asked.fineFields];
  return (
    <>
      <h2>{message("line-set-lines")}</h2>
      <CardFields fields={[...asked.liquidTube, ...asked.gasTube]} problems={problems} />
      <CardFields fields={asked.runFields} problems={problems} />
      <h2>{message("field-cooling")}</h2>
      <CardFields fields={[...asked.refrigerantField, ...asked.coolingFields]} problems={problems} />
      <Disclosure name="line-set-more" summary={<span>{message("field-heating")}</span>} mustShow={mustShow(asked.heatingFields)}>
        <CardFields fields={asked.heatingFields} problems={problems} />
      </Disclosure>
      <Disclosure name="line-set-more" summary={<span>{message("line-set-plate")}</span>} mustShow={mustShow(asked.plateFields)}>
        <CardFields fields={asked.plateFields} problems={problems} />
      </Disclosure>
      <Disclosure
        name="line-set-more"
        summary={<span>{message("line-set-ports")}</span>}
        mustShow={asked.hasPorts() || problems.some(({ field }) => field.includes(".ports"))}
      >
        <EntryRows list={asked.liquidPorts} problems={problems} legend={message("line-set-liquid-ports")} add={message("line-set-add-port")} />
        <EntryRows list={asked.gasPorts} problems={problems} legend={message("line-set-gas-ports")} add={message("line-set-add-port")} />
      </Disclosure>
      <Disclosure name="line-set-more" summary={<span>{message("line-set-fine")}</span>} mustShow={mustShow(fine)}>
        <CardFields fields={fine} problems={problems} />
      </Disclosure>
    </>
  );
}

/** The drawing, once the run is known. */
function Run({ answer: { liquidLine, suctionLine, rise } }: { readonly answer: LineSetAnswer }): JSX.Element | null {
  const sheet = useSheet();
  const run = liquidLine?.length ?? suctionLine?.length;
  if (run == null || run === 0) return null;
  const length = figureText("length", run, "instrument", runUnit());
  const lift = figureText("length", Math.abs(rise ?? 0), "instrument", runUnit());
  const higher = rise == null ? "unknown" : rise > 0 ? "outdoor" : rise < 0 ? "indoor" : "none";
  const figures = { length: run, rise: rise ?? 0, liquid: widthOf(liquidLine), gas: widthOf(suctionLine) };
  const labels = {
    indoor: message("choice-indoor"),
    outdoor: message("choice-outdoor"),
    lift,
    alternative: message("line-set-drawing", { length, lift, higher }),
  };
  return (
    <figure class="line-run">
      <LineRun sheet={sheet} figures={figures} labels={labels} />
      <figcaption>{message(rise == null ? "line-set-run" : "line-set-run-and-lift", { length, lift })}</figcaption>
    </figure>
  );
}

function widthOf(line: LineSetAnswer["liquidLine"]): number | undefined {
  return line?.outsideDiameter ?? line?.bore;
}

/** What is known of the tubes without a flow. */
function Tubes({ answer }: { readonly answer: LineSetAnswer }): JSX.Element {
  return (
    <>
      {(["liquidLine", "suctionLine"] as const).map((name) => {
        const line = answer[name];
        if (!line) return null;
        return (
          <section key={name}>
            <h2>{message(`line-set-tube-${name}`)}</h2>
            <Rows>
              <Row name={message("figure-bore")} figure={figureText("length", line.bore, "table")} />
              {line.equivalentLength != null && (
                <Row name={message("figure-equivalent-length")} figure={figureText("length", line.equivalentLength, "instrument", runUnit())} />
              )}
              {line.rating && (
                <Row
                  name={message("figure-rated-pressure")}
                  figure={figureText("gauge-pressure", line.rating.ratedPressure)}
                  beneath={message("line-set-rated-at", { temperature: figureText("temperature", line.rating.temperature) })}
                />
              )}
            </Rows>
            <Working steps={line.working} of={message(`line-set-tube-${name}`)} />
          </section>
        );
      })}
    </>
  );
}
