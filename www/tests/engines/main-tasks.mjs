// The tasks that a person comes for, as every engine must do them. Expected figures are those of the other tests.
import assert from "node:assert/strict";

export async function mainTasks(window) {
  await torqueOfANut(window);
  await conversion(window);
  await cardWithWorking(window);
  await practiceJobToItsRecord(window);
  await ownJob(window);
}

async function torqueOfANut(window) {
  await window.place("#/");
  await window.tap('[data-tube="5/8"]');
  await window.shows('[data-figure="torque"]', /68–77 ?N·m/);
  await window.tap('[data-unit="ft·lbf"]');
  await window.shows('[data-figure="torque"]', /51–56 ?ft·lbf/);
  await window.tap('[data-unit="N·m"]');
  await window.type('input[name="measuredCone"]', "18.9");
  await window.until(() => window.count('[data-verdict="out-of-band"]'), Boolean, "a cone that is too small is out of band");
}

async function conversion(window) {
  await window.place("#/convert");
  await window.type('input[name="text"]', "140 psi");
  await window.shows('[data-reading="gauge-pressure"] [data-unit-row="bar"]', /9\.6527/); // 140 × 6894.757 Pa (NIST SP 811 B.8)
}

async function cardWithWorking(window) {
  await window.place("#/cards");
  await window.tap('main a[href="#/standing-test"]');
  await window.tap('[data-action="example"]');
  await window.shows("main [data-figure]", /\d/);
  assert.equal(await window.count("[data-problem-of]"), 0);
  await window.tap("details[data-working] summary");
  await window.shows("details[data-working][open] .step .result", /\d/);
}

async function practiceJobToItsRecord(window) {
  await window.place("#/jobs");
  await window.tap('[data-action="practice-job"]');
  await window.until(() => window.count(".stage-list [data-stage]"), (found) => found === 8, "eight stages");
  assert.ok((await window.count("main.job svg")) > 0, "the circuit is drawn");
  await window.tap('.stage-list [data-stage="evacuate"] a');
  await window.shows("main.stage.evacuate .finding", /\d/);
  await window.evaluate(() => history.back());
  await window.tap('.stage-list [data-stage="record"] a');
  await window.shows("main.stage.record", /practi[cs]e/i);
  await window.shows("main.stage.record .job-record", /joint/i);
}

/** A job that is begun, named and read into; it outlives the page wherever the browser keeps something. */
async function ownJob(window) {
  const jobName = "Weir cottage";
  await window.place("#/jobs");
  await window.tap('[data-action="new-job"]');
  await window.type('input[name="job:name"]', jobName);
  await window.evaluate(() => void (location.hash += "&stage=pressure-test"));
  await window.type('input[name="next_gaugePressure"]', "44.2");
  await window.type('input[name="next_temperature"]', "21");
  await window.tap('[data-action="read-now"]');
  await window.shows('[data-reading="1"] summary', /44\.2 bar · 21 °C/);
  await window.shows('[data-clock="pressureClock"] [data-passed]', /0:0\d:\d\d/);
  const isKept = await window.evaluate(() => document.querySelector(".kept-state[data-reason]") === null);
  if (isKept) {
    await window.until(() => window.count('.kept-state[data-unsaved="0"]'), Boolean, "the job is on this phone");
    await window.reload();
    await window.shows('[data-reading="1"] summary', /44\.2 bar · 21 °C/);
  } else {
    await window.shows(".kept-state[data-reason]", /memory|file/);
  }
  await window.place("#/jobs");
  await window.shows(".job-rows .job-list", new RegExp(jobName));
  return isKept;
}
