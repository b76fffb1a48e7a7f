// What is left out when the tests of the bench and of the job are run from one file: how many tests of which file.
import { cardPaths } from "../browser/card-paths.mjs";

export const leftOut = {
  chromium: {
    "tasks.test.mjs": 1, // a view that is fetched
  },
  firefox: {
    "cards.test.mjs": cardPaths.length, // in the dark
    "fluids.test.mjs": 2, // a finger; paper on the screen
    "hand-on.test.mjs": 2, // in the dark
    "handed.test.mjs": 1, // in the dark
    "job-holds.test.mjs": 1, // a journey to another time zone
    "job-joints.test.mjs": 5, // a finger, twice; in the dark
    "job-plan.test.mjs": 1, // paper on the screen
    "jobs.test.mjs": 1, // in the dark
    "lessons.test.mjs": 1, // in the dark
    "tasks.test.mjs": 2, // a view that is fetched; the system's colours
  },
};
