// A panel that is drawn anew only when something it shows can have changed: a key in one field then costs
// its own panel and no other.

import { Component, type FunctionComponent, type JSX } from "preact";
import { isLearning } from "../learning";
import { editionOfSentences, locale } from "../locale";
import { settings } from "../settings";
import { textOf } from "./fields";

/** The view, drawn anew when the text of one of its fields, a choice of units or the sentences have changed. */
export function drawnFor(fields: readonly string[], View: FunctionComponent): FunctionComponent {
  return class extends Component {
    private drawn = "";

    override shouldComponentUpdate(): boolean {
      return this.drawn !== signature(fields);
    }

    override render(): JSX.Element {
      this.drawn = signature(fields);
      return <View />;
    }
  } as unknown as FunctionComponent;
}

function signature(fields: readonly string[]): string {
  const { kit: _, ...choices } = settings();
  return JSON.stringify([locale, editionOfSentences, isLearning(), choices, ...fields.map(textOf)]);
}
