// The whole run check: from gauges and thermometers to verdicts, causes and what to look at next.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const verdictOf = (page, check) => page.locator(`[data-check="${check}"] .verdict`).getAttribute("data-verdict");
const whole = (page) => page.locator(".finding > .verdict").first().innerText();
const causes = (page) => page.locator("[data-cause]").evaluateAll((items) => items.map((item) => item.dataset.cause));
const nextOf = (page, cause) => page.locator(`[data-cause="${cause}"] [data-next]`).getAttribute("data-next");

const sound = {
  suctionGaugePressure: "118 psi",
  suctionLineTemperature: "52 °F",
  liquidGaugePressure: "340 psi",
  liquidLineTemperature: "95 °F",
  plateSubcooling: "10 °F",
  outdoorDryBulb: "88 °F",
  runningTime: "20 min",
};

/** The place with these texts, and others beside or instead of them. */
function running(texts = {}) {
  const entries = Object.entries({ refrigerant: "R-410A", meteringDevice: "thermostatic-valve", ...sound, ...texts });
  return `#/running?${entries.map(([name, text]) => `${name}=${encodeURIComponent(text)}`).join("&")}`;
}

test("reading by reading: superheat, then subcooling, each with its verdict, then the whole", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/running");
  assert.equal(await page.locator("main [data-figure]").count(), 0);
  assert.equal(await page.locator("[data-problem-of]").count(), 0, "an empty card complains of nothing");
  await typed(page, "suctionGaugePressure").fill("118 psi");
  await page.locator("[data-missing]").waitFor();
  await typed(page, "suctionLineTemperature").fill("52 °F");
  // CoolProp 8.0.0: 12.2 °F over the dew temperature.
  await eventually(() => figure(page, "superheat"), /^6\.8 ?K/);
  assert.equal(await verdictOf(page, "superheat"), "open", "what it should be is not known yet");
  await page.locator('input[name="meteringDevice"][value="thermostatic-valve"]').check();
  assert.equal(await verdictOf(page, "superheat"), "in-band");
  assert.match(await whole(page), /Cannot tell/, "the charge is not known yet");
  await typed(page, "liquidGaugePressure").fill("340 psi");
  await typed(page, "liquidLineTemperature").fill("95 °F");
  await eventually(() => figure(page, "subcooling"), /^5\.3 ?K/);
  await typed(page, "plateSubcooling").fill("10 °F");
  assert.equal(await verdictOf(page, "subcooling"), "in-band");
  assert.match(await whole(page), /Runs as it should/);
  assert.deepEqual(await causes(page), [], "nothing is out of band");
});

test("adding refrigerant is not advised before airflow is ruled out, nor with too little air measured", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/running");
  await page.locator('[data-action="example"]').click();
  await page.locator('[data-cause="undercharge"]').waitFor();
  assert.equal((await causes(page))[0], "undercharge");
  assert.equal(await nextOf(page, "undercharge"), "rule-out-airflow");
  assert.equal(await page.locator("[data-airflow]").count(), 1);
  await page.locator('input[name="airflowChecked"][value="true"]').check();
  assert.equal(await nextOf(page, "undercharge"), "find-leak-then-weigh-in");
  assert.equal(await page.locator("[data-airflow]").count(), 0);
  await typed(page, "airflow").fill("700 m³/h");
  await eventually(() => page.locator("[data-airflow]").getAttribute("data-airflow"), /too-little/);
  assert.equal((await causes(page))[0], "low-indoor-airflow");
  assert.equal(await nextOf(page, "undercharge"), "rule-out-airflow");
});

test("too near a limit: it says which instrument would decide, and a finer one does", async (t) => {
  const site = await openSite(t);
  const page = await site.open(running({ plateSubcooling: "6 K" }));
  assert.equal(await verdictOf(page, "subcooling"), "cannot-tell");
  assert.equal(await page.locator("[data-decides]").getAttribute("data-decides"), "liquid-gauge");
  await page.locator("details.running-others > summary").click();
  await typed(page, "liquidGaugeUncertainty").fill("1 psi");
  await eventually(() => verdictOf(page, "subcooling"), /in-band/);
});

test("in the cold and before 15 minutes nothing is judged", async (t) => {
  const site = await openSite(t);
  const page = await site.open(running({ outdoorDryBulb: "54 °F" }));
  await page.locator('[data-notice="outdoor-too-cold"]').waitFor();
  assert.equal(await verdictOf(page, "superheat"), "open");
  assert.deepEqual(await causes(page), []);
  await typed(page, "outdoorDryBulb").fill("55 °F");
  await eventually(() => verdictOf(page, "superheat"), /in-band/);
  await typed(page, "runningTime").fill("10 min");
  await eventually(() => verdictOf(page, "superheat"), /open/);
  assert.match(await figure(page, "superheat"), /6\.8/, "the figure stands nevertheless");
});

test("a slip in the air withholds the air alone", async (t) => {
  const site = await openSite(t);
  const page = await site.open(running({ returnDryBulb: "24 °C", supplyDryBulb: "13 °C" }));
  assert.match(await figure(page, "split"), /^11\.0 ?K/);
  await typed(page, "returnDryBulb").fill("warm");
  await page.locator('[data-problem-of="returnDryBulb"]').waitFor();
  assert.equal(await page.locator('[data-figure="split"]').count(), 0);
  assert.match(await figure(page, "superheat"), /6\.8/);
});

test("a suction line colder than its dew temperature holds liquid", async (t) => {
  const site = await openSite(t);
  const page = await site.open(running({ suctionLineTemperature: "30 °F" }));
  await page.locator('[data-notice="liquid-in-suction"]').waitFor();
  assert.match(await figure(page, "superheat"), /^−5\.\d/);
  assert.equal(await verdictOf(page, "superheat"), "out-of-band");
});

test("heating: the rise and the heat it gives, no causes", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/running?mode=heating&returnDryBulb=20 °C&supplyDryBulb=42 °C&airflow=900 m³/h");
  assert.match(await figure(page, "split"), /^22\.0 ?K/);
  // PsychroLib 2.5.0 at 40 % relative humidity: 6.6 kW.
  assert.match(await figure(page, "total"), /^6\.6\d? ?kW/);
  assert.deepEqual(await causes(page), []);
});

test("a flammable refrigerant is said to burn", async (t) => {
  const site = await openSite(t);
  const page = await site.open(running({ refrigerant: "R-32" }));
  await eventually(() => page.locator(".cautions").first().innerText(), /It burns/);
});
