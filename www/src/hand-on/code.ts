// A link as a QR code (ISO/IEC 18004), for the camera of the phone beside this one.

import { encode } from "uqr";

/** Modules from side to side, dark ones true; without the quiet zone. */
export type Code = readonly (readonly boolean[])[];

/** Light modules that the standard asks for around the code. */
const quietZone = 4;

/**
 * Most modules on a side (version 29). A camera app reads its preview, usually 1 080 lines; a code held comfortably
 * fills two thirds of them, and some five lines a module still tell light from dark when the picture is soft and the
 * screen dim: 1 080 · 2/3 ÷ 5 = 144 modules, 136 without the quiet zone. Common practice, from memory, no source.
 */
const mostModules = 133;

/** The code of a text; undefined if it is too much for an ordinary camera app. */
export function codeOf(text: string): Code | undefined {
  try {
    // As few modules as can be, so that each is large; what room is left over goes into correction.
    const { data, size } = encode(text, { ecc: "L", boostEcc: true, border: 0 });
    return size > mostModules ? undefined : data;
  } catch {
    return undefined;
  }
}

/** Draws a code as large as `room` (CSS pixels) allows, each module whole device pixels: edges stay sharp. */
export function drawCode(canvas: HTMLCanvasElement, code: Code, room: number): void {
  const modules = code.length + 2 * quietZone;
  const scale = Math.max(1, Math.floor((room * devicePixelRatio) / modules));
  canvas.width = canvas.height = modules * scale;
  canvas.style.width = `${canvas.width / devicePixelRatio}px`;
  const pen = canvas.getContext("2d");
  if (pen === null) return;
  // In the dark as by day: many camera apps read no light code on a dark ground.
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = "#000";
  for (const [down, row] of code.entries()) {
    for (const [across, isDark] of row.entries()) {
      if (isDark) pen.fillRect((across + quietZone) * scale, (down + quietZone) * scale, scale, scale);
    }
  }
}
