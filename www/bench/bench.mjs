// Measures what a phone downloads and how long a person waits: `npm run bench` (after a build).
import { measureJobList } from "./job-list.mjs";
import { measureSizes } from "./sizes.mjs";
import { measureStore } from "./store.mjs";
import { measureTimes } from "./times.mjs";

/** One line a figure: name, figure, goal, and whether it is met. */
function print({ name, figure, unit, goal }) {
  const verdict = goal === undefined ? "" : `goal ${goal} ${unit}: ${figure <= goal ? "met" : "MISSED"}`;
  console.log(`  ${name.padEnd(58)} ${figure.toFixed(unit === "×" ? 2 : 1).padStart(7)} ${unit.padEnd(3)} ${verdict}`);
}

console.log("sizes, compressed with brotli");
for (const size of await measureSizes()) print(size);
console.log("times, offline from the service worker, processor slowed down 6 times");
for (const time of await measureTimes()) print(time);
console.log("the store of jobs by itself, processor slowed down 6 times");
for (const time of await measureStore()) print(time);
console.log("the screen of jobs, offline, processor slowed down 6 times");
for (const time of await measureJobList()) print(time);
