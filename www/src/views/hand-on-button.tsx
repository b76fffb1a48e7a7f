// Hands on what is on the screen. What it opens is fetched when it is asked for.

import type { FunctionComponent, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { startWholeCore } from "../core";
import { fetchSentencesOf, message } from "../locale";

type Panel = FunctionComponent<{ readonly onClose: () => void }>;

export function HandOnButton({ path }: { readonly path: string }): JSX.Element {
  const [opened, setOpened] = useState<{ readonly Panel?: Panel } | undefined>(undefined);
  const close = (): void => setOpened(undefined);
  useEffect(() => close, [path]);
  const open = async (): Promise<void> => {
    // What is being typed gets its unit when its field is left, and some phones leave none for a button.
    if (document.activeElement instanceof HTMLElement && document.activeElement.matches("input, textarea")) document.activeElement.blur();
    setOpened(await fetched(path === "job").then((HandOn) => ({ Panel: HandOn }), () => ({})));
  };
  return (
    <>
      <button class="hand-on-button" data-action="hand-on" aria-haspopup="dialog" onClick={() => void open()}>
        {message("hand-on")}
      </button>
      {opened?.Panel && <opened.Panel onClose={close} />}
      {opened !== undefined && !opened.Panel && (
        <p class="problem" role="alert">
          {message("hand-on-absent")}
        </p>
      )}
    </>
  );
}

async function fetched(isJob: boolean): Promise<Panel> {
  const forJob = isJob ? [startWholeCore(), fetchSentencesOf("job")] : [];
  const [{ HandOn }] = await Promise.all([import("./hand-on"), fetchSentencesOf("hand-on"), ...forJob]);
  return HandOn;
}
