/** Chances of failure, worked out in the verdict column. */
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import {
  type App,
  choose,
  openRig,
  openRigFile,
  PHONE,
  sharedApp,
  shortLine,
  violationsInThemes,
  WIDE,
} from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

/** The whole search for a verdict, on a machine that does much else [ms]. */
const WHOLE_SEARCH = 400_000;
/** Chances are offered beside a verdict of the whole search. */
const offered = (page: Page) => section(page).waitFor({ timeout: WHOLE_SEARCH });

const section = (page: Page) => page.getByRole("region", { name: "Chances", exact: true });
const start = (page: Page) => section(page).getByRole("button", { name: "Work out the chances" });

it("works out who goes first in one fall and tells it, for everybody and on any screen", async () => {
  const { page, problems } = await app.visit({ searches: true });
  await offered(page);
  await choose(page, "What if", "Leash fall in the middle");
  await choose(page, "Draws", "16 draws");
  await start(page).press("Enter");
  const bars = section(page).getByRole("list", { name: "Chance of each part to go first" });
  await bars.waitFor({ timeout: 180_000 });
  // Whoever pressed the button is still on it.
  expect(await start(page).evaluate((button) => button === document.activeElement)).toBe(true);
  expect(await bars.getByRole("listitem").first().textContent()).toMatch(/\d+ %/);
  const said = await section(page).textContent();
  for (const words of ["Likeliest to go first:", "assumed, not measured", "Leash fall in the middle"]) {
    expect(said).toContain(words);
  }
  await expect
    .poll(() => page.getByRole("status").last().textContent())
    .toMatch(/^Chances worked out\. Leash fall in the middle\. Likeliest to go first:/);
  for (const title of ["How often each part fails", "What the chances rest on", "What is uncertain, and how much"]) {
    await section(page).getByRole("button", { name: title }).click();
  }
  const found: string[] = [];
  for (const [width, viewport] of Object.entries({ wide: WIDE, phone: PHONE })) {
    await page.setViewportSize(viewport);
    await bars.waitFor();
    found.push(...(await violationsInThemes(page)).map((violation) => `${width}, ${violation}`));
  }
  expect(found).toEqual([]);
  expect(problems).toEqual([]);
}, 1_500_000);

it("takes other spreads, refuses what is none, can be stopped, and says that the rig is another one by now", async () => {
  const { page, problems } = await app.visit({ searches: true });
  await openRigFile(page, shortLine());
  await offered(page);
  await choose(page, "What if", "Leash fall in the middle");
  await choose(page, "Draws", "16 draws");
  await section(page).getByRole("button", { name: "What is uncertain, and how much" }).click();
  const mass = section(page).getByRole("textbox", { name: "Walker's mass" });
  await mass.fill("heavy");
  expect(await start(page).isDisabled()).toBe(true);
  expect(await section(page).textContent()).toContain("Expected a percentage from 0 to 100");
  await mass.fill("3");
  await start(page).click();
  await section(page).getByRole("heading", { name: "Who goes first" }).waitFor({ timeout: 180_000 });
  await openRig(page);
  // A change for which hardly a run is new: the verdict is whole again soon.
  await page.getByRole("textbox", { name: "Required factor for falls", exact: true }).fill("2.05");
  await section(page).waitFor({ state: "detached" });
  await offered(page);
  await section(page).getByText("before your last change").waitFor();
  // Far more draws than are over before anybody can stop them.
  await choose(page, "Draws", "256 draws");
  await start(page).click();
  await section(page).getByRole("button", { name: "Stop working out the chances" }).click();
  await section(page).getByText("were not worked out to the end").waitFor();
  expect(problems).toEqual([]);
}, 1_500_000);
