// The links that hand something on: all they carry stands after the `#`, which never reaches a server.

import { writePlace, type Place } from "../address";
import { writeJobLink, type LinkProblem } from "../core";
import { learnEntry } from "../learning";
import { linkBase } from "../link-base";

/** A link, or why there is none. */
export type JobLink = { readonly link: string; readonly photosLeftOut: number } | { readonly problem: LinkProblem };

/** The calculation on the screen with all that its figures hang on; `isLearning`: with its working unfolded. */
export function calculationLink({ path, entries }: Place, isLearning: boolean): string {
  // The start is the torque, and a link says so.
  return linkTo({ path: path || "torque", entries: { ...entries, [learnEntry]: isLearning ? "yes" : "" } });
}

export function jobLink(document: object): JobLink {
  const written = writeJobLink(document);
  if ("problem" in written) return written;
  return { link: linkTo({ path: "handed", entries: { job: written.text } }), photosLeftOut: written.photosLeftOut };
}

function linkTo(place: Place): string {
  return linkBase() + writePlace(place);
}
