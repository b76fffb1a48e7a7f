// A joint's tube as people call it: by the size's name where it has one.

import { calculate } from "../../../core";
import { figureText } from "../../../parts/figures";

export function tubeText(tube: number): string {
  const reply = calculate("tube", { tube });
  const name = "answer" in reply ? reply.answer.name : undefined;
  return name ?? figureText("length", tube, "table");
}
