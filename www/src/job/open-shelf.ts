// The shelf of jobs on this phone, opened once, when the first screen that shows jobs is.

import { useEffect, useReducer, useState } from "preact/hooks";
import { openShelf, type Opened, type Shelf } from "../store/jobs";
import { noteUnsaved } from "../waiting";

let shelf: Shelf | undefined;
let opening: Promise<Shelf> | undefined;

function openOnce(): Promise<Shelf> {
  opening ??= openShelf().then((opened) => {
    opened.subscribe(() => tellUnsaved(opened));
    return (shelf = opened);
  });
  return opening;
}

/** What is only in memory would be lost with the page; what is just being written is not. */
function tellUnsaved({ safekeeping }: Shelf): void {
  noteUnsaved(safekeeping.kept === "in memory only" ? safekeeping.unsaved : 0);
}

/** Draws anew whenever what `subscribe` belongs to changes. */
export function useChanges(subscribe: ((listener: () => void) => () => void) | undefined): void {
  const [, changed] = useReducer((count: number) => count + 1, 0);
  useEffect(() => subscribe?.(() => changed(undefined)), [subscribe]);
}

/** The shelf, once it is open; its changes draw anew. */
export function useShelf(): Shelf | undefined {
  const [opened, setOpened] = useState(shelf);
  useEffect(() => {
    if (opened === undefined) void openOnce().then(setOpened);
  }, []);
  useChanges(opened?.subscribe);
  return opened;
}

/** A job of the shelf, as long as it is shown; its changes draw anew. */
export function useOpened(shelf: Shelf | undefined, id: string): Opened | undefined {
  const [opened, setOpened] = useState<Opened | undefined>(undefined);
  useEffect(() => {
    let isLeft = false;
    let found: Opened | undefined;
    void shelf?.open(id).then((answer) => {
      found = answer;
      if (isLeft) close(answer);
      else setOpened(answer);
    });
    return () => {
      isLeft = true;
      if (found) close(found);
      setOpened(undefined);
    };
  }, [shelf, id]);
  useChanges(opened?.kind === "job" ? opened.job.subscribe : undefined);
  return opened;
}

function close(opened: Opened): void {
  if (opened.kind === "job") opened.job.close();
}
