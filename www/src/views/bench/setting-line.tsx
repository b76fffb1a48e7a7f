// With an adapter the nut's torque is not what the wrench shows: said right under the head figure.

import type { JSX } from "preact";
import { calculate } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { leverInput } from "./joint";

export function SettingLine(): JSX.Element | null {
  const reply = calculate("torque", leverInput());
  const setting = "answer" in reply ? reply.answer.setting : undefined;
  if (setting === undefined || setting === null) return null;
  return (
    <p class="setting-line">
      <span>{message("wrench-set-adapter")}</span>
      <b>{figureText("torque", setting.aim)}</b>
    </p>
  );
}
