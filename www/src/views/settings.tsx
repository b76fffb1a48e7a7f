// Choices that stay, the kit in the bag, cautions, this edition, and the bibliography.

import type { JSX } from "preact";
import { bibliography, calculate, units } from "../core";
import { build, coreEdition } from "../edition";
import { jobPart } from "../fetched";
import { languageNames, languages } from "../language";
import { isLearning, setLearning } from "../learning";
import { language, message } from "../locale";
import { offlineState } from "../offline";
import { Cautions } from "../parts/cautions";
import { ChoiceRow } from "../parts/choice-row";
import { Disclosure } from "../parts/disclosure";
import { EntryField } from "../parts/entry-field";
import { textOf, write } from "../parts/fields";
import { SourceList } from "../parts/sources";
import { choose, chooseUnit, settings, type Hand, type Theme, type UnitSystem } from "../settings";
import { unitOf } from "../unit-choice";
import { wrenchInput } from "./bench/joint";

const systems: readonly UnitSystem[] = ["metric", "customary"];
const themes: readonly Theme[] = ["system", "day", "dark", "sunlight"];
const hands: readonly Hand[] = ["left", "right"];
const tools = ["eccentric-clutch", "ordinary-clutch", "wing-nut-bar"] as const;
/** Comes with the jobs, whose core checks it. */
const JobDefaults = jobPart("JobDefaults");

export function SettingsView(): JSX.Element {
  const { updateFailed } = offlineState();
  return (
    <main class="settings">
      <h1>{message("settings-heading")}</h1>
      <LanguageChoice />
      <Units />
      <Look />
      <Kit />
      <JobDefaults />
      <section>
        <h2>{message("settings-cautions")}</h2>
        <Cautions
          ids={["settings-caution-plate", "settings-caution-licence", "settings-caution-pressure", "settings-caution-sources"]}
        />
      </section>
      <section>
        <h2>{message("settings-edition")}</h2>
        <p>{message("settings-edition-page", { build })}</p>
        <p>{message("settings-edition-core", { core: coreEdition })}</p>
        {updateFailed && <p class="note">{message("settings-update-failed")}</p>}
        <p class="note">{message("settings-nothing-sent")}</p>
      </section>
      <section>
        <Disclosure name="all-sources" summary={<h2><span>{message("settings-sources")}</span></h2>} mustShow={false}>
          <SourceList ids={bibliography().map(({ id }) => id)} />
        </Disclosure>
        <p class="note">{message("settings-sources-intro")}</p>
      </section>
    </main>
  );
}

function LanguageChoice(): JSX.Element {
  const chosen = settings().language;
  const names = languages.map((word) => ({ word, label: languageNames[word], lang: word }));
  return (
    <section>
      <h2>{message("settings-language")}</h2>
      <ChoiceRow
        name="language"
        legend={message("settings-language-of-page")}
        beside
        chosen={chosen}
        onChoose={(word) => choose({ language: word })}
        choices={[{ word: "", label: message("settings-language-browser") }, ...names]}
      >
        {chosen !== "" && chosen !== language && (
          <p class="note" role="status">
            {message("settings-language-missing")}
          </p>
        )}
      </ChoiceRow>
    </section>
  );
}

function Units(): JSX.Element {
  const { system } = settings();
  // The wrench in the hand keeps its unit whatever else is chosen.
  const { torque } = settings().units;
  const keep = torque === undefined ? {} : { torque };
  return (
    <section>
      <h2>{message("settings-units")}</h2>
      <ChoiceRow
        name="system"
        legend={message("settings-system")}
        beside
        chosen={system}
        onChoose={(word) => choose({ system: word === "customary" ? "customary" : "metric", units: keep })}
        choices={systems.map((word) => ({
          word,
          label: message(`settings-units-${word}`),
          detail: message(`settings-units-${word}-detail`),
        }))}
      />
      <ChoiceRow
        name="torqueUnit"
        legend={message("settings-torque-unit")}
        beside
        chosen={unitOf("torque")}
        onChoose={(symbol) => chooseUnit("torque", symbol)}
        choices={units("torque").map(({ symbol }) => ({ word: symbol, label: symbol }))}
      />
    </section>
  );
}

function Look(): JSX.Element {
  const { theme, hand } = settings();
  return (
    <section>
      <h2>{message("settings-look")}</h2>
      <ChoiceRow
        name="theme"
        legend={message("settings-light")}
        beside
        chosen={theme}
        onChoose={(word) => choose({ theme: themes.find((known) => known === word) ?? "system" })}
        choices={themes.map((word) => ({ word, label: message(`settings-theme-${word}`) }))}
      />
      <ChoiceRow
        name="hand"
        legend={message("settings-hand")}
        beside
        chosen={hand}
        onChoose={(word) => choose({ hand: word === "left" ? "left" : "right" })}
        choices={hands.map((word) => ({ word, label: message(`settings-hand-${word}`) }))}
      />
      <ChoiceRow
        name="learn"
        legend={message("settings-learn")}
        beside
        chosen={isLearning() ? "yes" : "no"}
        onChoose={(word) => setLearning(word === "yes")}
        choices={["no", "yes"].map((word) => ({ word, label: message(`settings-learn-${word}`) }))}
      />
    </section>
  );
}

/** Read with a tube that has a torque, so that only the kit's own problems show. */
function Kit(): JSX.Element {
  const wrench = calculate("torque", { ...wrenchInput(), tube: "5/8", family: null, plateTorque: null });
  const problems = "problems" in wrench ? wrench.problems : [];
  return (
    <section>
      <h2>{message("settings-kit")}</h2>
      <p class="note">{message("settings-kit-hint")}</p>
      <ChoiceRow
        name="tool"
        legend={message("field-tool")}
        chosen={textOf("tool")}
        onChoose={(word) => write("tool", word)}
        choices={tools.map((word) => ({ word, label: message(`choice-${word}`) }))}
      />
      <div class="fields">
        <EntryField name="wrenchLength" problems={problems} unit={unitOf("length")} />
        <EntryField name="adapterLength" problems={problems} unit={unitOf("length")} />
      </div>
      <EntryField name="adapterAngle" problems={problems} unit="°" />
      <EntryField name="wrenchRange" problems={problems} unit={unitOf("torque")} words />
      <EntryField name="wrenchAccuracy" problems={problems} unit="%" />
    </section>
  );
}
