// The cards of the job by the page's own list: a card that is added there is tested.
import { readFile } from "node:fs/promises";

const list = await readFile(new URL("../../src/card-list.ts", import.meta.url), "utf8");
export const cardPaths = [...list.matchAll(/path: "([a-z-]+)".*jobCard\(/g)].map(([, path]) => path);
