// Nanoseconds a call of the loop in WebAssembly, and the size of the page's module:
// node wasm-loop.mjs LOOP.wasm PAGE.wasm '[{"place", "low", "high"}, …]'
import { existsSync, readFileSync } from "node:fs";
import { brotliCompressSync } from "node:zlib";

const [loopPath, pagePath, fluids] = process.argv.slice(2);
const calls = 200_000;
const rounds = 9;

const { instance } = await WebAssembly.instantiate(readFileSync(loopPath), {});
const loop = instance.exports.sum_of_dew_temperatures;

/** The fastest round: what disturbs a machine only ever adds time. */
function nanoseconds({ place, low, high }) {
  let best = Infinity;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    const sum = loop(place, low, high, calls);
    best = Math.min(best, ((performance.now() - start) * 1e6) / calls);
    if (!Number.isFinite(sum)) throw new Error(`no temperature for fluid ${place}`);
  }
  return best;
}

const page = existsSync(pagePath) ? readFileSync(pagePath) : undefined;
const size = page && { raw: page.length, brotli: brotliCompressSync(page).length };
console.log(JSON.stringify({ nanoseconds: JSON.parse(fluids).map(nanoseconds), size }));
