// Reads codes off the screen with a reader of its own (ZBar), as another phone's camera would.
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

/** What the one code in a picture says. */
export async function readCode(png) {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  try {
    const picture = join(directory, "screen.png");
    await writeFile(picture, png);
    const { stdout } = await run("zbarimg", ["--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture]);
    return stdout.trim();
  } finally {
    await rm(directory, { recursive: true, force: true });
  }
}

/** The picture as of a dim screen in a bright room: its greys lie between 90 and 150 of 255. */
export async function dimmed(context, png) {
  const page = await context.newPage();
  const text = await page.evaluate(async (source) => {
    const picture = new Image();
    picture.src = source;
    await picture.decode();
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [picture.width, picture.height];
    const pen = canvas.getContext("2d");
    pen.drawImage(picture, 0, 0);
    const pixels = pen.getImageData(0, 0, canvas.width, canvas.height);
    for (let at = 0; at < pixels.data.length; at += 1) {
      if (at % 4 !== 3) pixels.data[at] = 90 + (pixels.data[at] * 60) / 255;
    }
    pen.putImageData(pixels, 0, 0);
    return canvas.toDataURL("image/png");
  }, `data:image/png;base64,${png.toString("base64")}`);
  await page.close();
  return Buffer.from(text.split(",")[1], "base64");
}
