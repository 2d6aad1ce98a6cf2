/** Lessons, as a learner takes them: predict, run, see why. */
import type { Download, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import {
  type App,
  armClick,
  expectAccessible,
  PHONE,
  SPACE,
  sharedApp,
  shelved,
  still,
  violationsInThemes,
} from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

async function openLessons(page: Page): Promise<void> {
  const views = page.getByRole("navigation", { name: "Views" });
  await page.getByRole("heading", { level: 1 }).waitFor();
  if (await views.isVisible()) await views.getByRole("button", { name: "Lessons" }).click();
  else {
    await page.getByRole("button", { name: "Views" }).click();
    await page.getByRole("menuitem", { name: /Lessons/ }).click();
  }
  await page.getByRole("heading", { name: "Lessons" }).waitFor();
}

/** Opens a lesson and waits until what is given has been computed. */
async function begin(page: Page, title: string): Promise<void> {
  await page.getByRole("button", { name: new RegExp(title) }).click();
  await page.getByRole("heading", { name: "Your prediction" }).waitFor();
}

const slider = (page: Page) => page.locator("form").getByRole("slider");

async function predict(page: Page, steps: number, reason: number): Promise<void> {
  await slider(page).focus();
  for (let i = 0; i < steps; i++) await page.keyboard.press("ArrowRight");
  await page.getByRole("radio").nth(reason).click();
}

async function run(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Run it" }).click();
  await page.getByRole("heading", { name: "The run" }).waitFor();
}

const definition = (page: Page, name: string) =>
  page.locator("dl > div", { has: page.getByText(name, { exact: true }) }).locator("dd");

it("asks for a number and a reason before it runs, then shows the prediction beside the result, why, and the limits", async () => {
  const { page, problems } = await app.visit();
  await openLessons(page);
  await begin(page, "One connection");
  expect(await page.getByRole("heading", { name: "The run" }).count()).toBe(0);
  await page.getByRole("button", { name: "Run it" }).click();
  const asked = () => page.getByRole("alert").textContent();
  await expect.poll(asked).toBe("Move the slider to your number first.");
  await slider(page).press("ArrowRight");
  await page.getByRole("button", { name: "Run it" }).click();
  await expect.poll(asked).toContain("Say why first");
  await predict(page, 11, 1);
  await run(page);
  expect(await definition(page, "You said").textContent()).toBe("6 m");
  const given = Number.parseFloat((await definition(page, "Given").textContent())!);
  const result = Number.parseFloat((await definition(page, "The run").textContent())!);
  expect(result / given).toBeGreaterThan(0.4);
  expect(result / given).toBeLessThan(0.6);
  for (const heading of ["Why", "In short", "What this does not tell"])
    await page.getByRole("heading", { name: heading }).waitFor();
  const text = await page.getByRole("article").textContent();
  expect(text).toContain("You said 6 m, because: About half");
  expect(text).not.toMatch(/[{}]|NaN|undefined/);
  expect(text).toContain("Yes: only the slack between anchor A and the connection opened");
  await page
    .getByRole("status")
    .filter({ hasText: /^The run is done\. You said 6 m; it gave [\d.]+ m\./ })
    .waitFor({ state: "attached" });
  expect(problems).toEqual([]);
});

it("keeps prediction and result over a reload", async () => {
  const { page, problems } = await app.visit();
  await openLessons(page);
  await begin(page, "The second line");
  await slider(page).focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowRight");
  await page.getByRole("textbox", { name: "In your own words, if you like" }).fill("the air is thick");
  await run(page);
  expect(await page.getByRole("article").textContent()).toContain("“the air is thick”");
  await shelved(page, "secondline.lessons", "the air is thick");
  await page.reload();
  await openLessons(page);
  expect(await page.getByRole("button", { name: /The second line/ }).textContent()).toMatch(
    /You said 20 km\/h; the run gave \d+ km\/h\./,
  );
  // The page that closes the lessons has the same numbers, and a class sees all of it larger.
  await page.getByRole("button", { name: "For a class" }).click();
  await page.getByRole("button", { name: "What you said, and what came of it" }).click();
  const closing = page.getByRole("main");
  expect(await closing.textContent()).toMatch(/1 of \d lessons tried\..*You said 20 km\/h\. The run gave \d+ km\/h\./);
  const typeSize = () => page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize));
  expect(await typeSize()).toBeCloseTo(1.4 * 16, 1);
  await still(page);
  await expectAccessible(page);
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Answers to read aloud" }).click();
  expect(await readText(await saving)).toContain("You said 20 km/h.");
  // As a handout: filled bars are printed, and no rig's name stands over the lessons.
  await page.emulateMedia({ media: "print" });
  const bar = closing.locator("dl span").first();
  expect(await bar.evaluate((one) => getComputedStyle(one).printColorAdjust)).toBe("exact");
  expect(await page.getByRole("heading", { level: 1 }).count()).toBe(0);
  expect(await closing.textContent()).toContain("Because: ");
  await page.emulateMedia({ media: null });
  await page.getByRole("button", { name: "All lessons" }).click();
  await begin(page, "The second line");
  // One line stands in picture and traces: pointing in the picture moves the time of both.
  const time = page.getByRole("region", { name: "Playback" }).getByRole("slider", { name: "Time in the run" });
  const picture = (await page.locator("[data-pointer]").boundingBox())!;
  await page.mouse.click(picture.x + 0.2 * picture.width, picture.y + 0.5 * picture.height);
  await expect.poll(async () => Number(await time.inputValue())).toBeLessThan(1.5);
  await page.mouse.click(picture.x + 0.6 * picture.width, picture.y + 0.5 * picture.height);
  await expect.poll(async () => Number(await time.inputValue())).toBeGreaterThan(2);
  // Also beside a run that is shorter than the one before, whose traces are longer than the picture's time.
  await page.locator("form").getByRole("slider").focus();
  await page.keyboard.press("ArrowRight");
  await page.getByRole("radio").first().click();
  await page.getByRole("button", { name: "Run it" }).click();
  await page.getByRole("heading", { name: "The run", exact: true }).waitFor();
  await page.mouse.click(picture.x + 0.3 * picture.width, picture.y + 0.5 * picture.height);
  await still(page);
  const lineAt = (selector: string) =>
    page.locator(selector).evaluate((one) => Math.round(one.getBoundingClientRect().left));
  expect(Math.abs((await lineAt("[data-pointer] > div")) - (await lineAt("[data-cursor]")))).toBeLessThanOrEqual(1);
  await page.getByRole("button", { name: "Leave the class" }).click();
  expect(await typeSize()).toBeCloseTo(16, 1);
  expect(problems).toEqual([]);
});

async function readText(download: Download): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString("utf8");
}

it("is taken with the keys alone", async () => {
  const { page, problems } = await app.visit();
  await openLessons(page);
  await page.getByRole("button", { name: /Slack in the backup/ }).focus();
  await page.keyboard.press("Enter");
  await slider(page).waitFor();
  const inFocus = () => page.evaluate(() => document.activeElement?.textContent);
  await expect.poll(inFocus).toBe("Slack in the backup");
  const reached = async (test: () => Promise<boolean>) => {
    for (let i = 0; i < 20 && !(await test()); i++) await page.keyboard.press("Tab");
    expect(await test()).toBe(true);
  };
  const focused = (selector: string) => () =>
    page
      .locator(`form ${selector}:focus`)
      .count()
      .then((count) => count > 0);
  await reached(focused("input[type=range]"));
  await page.keyboard.press("PageUp");
  await reached(focused("[role=radio]"));
  await page.keyboard.press("ArrowDown");
  await reached(focused("button[type=submit]"));
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "The run" }).waitFor();
  await expect.poll(inFocus).toBe("The run");
  // The keys of the time strip play and seek while one reads.
  const time = page.getByRole("slider", { name: "Time in the run" });
  await page.keyboard.press("Home");
  await expect.poll(() => time.getAttribute("aria-valuenow")).toBe("0");
  await page.keyboard.press("Space");
  await page.getByRole("button", { name: "Pause" }).waitFor();
  await page.keyboard.press("Space");
  await page.getByRole("button", { name: "Play" }).waitFor();
  expect(problems).toEqual([]);
});

it("keeps the cautions in sight, and they cannot be closed", async () => {
  const { page } = await app.visit();
  await openLessons(page);
  const cautions = page.getByRole("region", { name: "Cautions" });
  expect(await cautions.textContent()).toContain("does not replace inspection");
  await begin(page, "Sewn or tied");
  expect(await cautions.textContent()).toContain("does not replace inspection");
  await cautions.getByRole("button", { name: /more cautions/ }).click();
  expect(await cautions.textContent()).toContain("The rigs of the lessons are invented");
  expect(await cautions.isVisible()).toBe(true);
});

it("stops a run when asked, and runs again", async () => {
  const { page, problems } = await app.visit({ first: true });
  await openLessons(page);
  const stopped = await armClick(page, "Stop", { within: "main" });
  await page.getByRole("button", { name: /Another line, the same fall/ }).click();
  await stopped();
  await page.getByText("Stopped before its end.").waitFor();
  await page.getByRole("button", { name: "Run again" }).click();
  await page.getByRole("heading", { name: "Your prediction" }).waitFor();
  expect(problems).toEqual([]);
});

it("draws in space on one canvas only, before and after the run", async () => {
  const spacious = await sharedApp({ flat: false });
  const { page, problems } = await spacious.visit({ viewport: { width: 1100, height: 640 } });
  await openLessons(page);
  await begin(page, "One connection");
  await page.locator(SPACE).waitFor();
  await predict(page, 3, 0);
  await run(page);
  await page.getByRole("button", { name: "As it was" }).click();
  expect(await page.locator(SPACE).count()).toBe(1);
  expect(problems).toEqual([]);
});

it.each([
  ["a wide screen", {}],
  [
    "a phone, where the finger has 44 px and nothing scrolls sideways",
    { viewport: PHONE, hasTouch: true, isMobile: true },
  ],
])("axe finds nothing from the list to the result, light or dark, on %s", async (_, options) => {
  const { page, problems } = await app.visit(options);
  await openLessons(page);
  expect(await violationsInThemes(page)).toEqual([]);
  await begin(page, "Where a clamp has sat");
  await predict(page, 8, 2);
  expect(await violationsInThemes(page)).toEqual([]);
  await run(page);
  expect(await violationsInThemes(page)).toEqual([]);
  expect(problems).toEqual([]);
  if ("isMobile" in options) await expectRoomForFingers(page);
});

async function expectRoomForFingers(page: Page): Promise<void> {
  const small = await page.locator("main button:visible").evaluateAll((buttons) =>
    buttons
      .map((button) => ({ name: button.textContent, box: button.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 44 || box.width < 44)
      .map(({ name }) => name),
  );
  expect(small).toEqual([]);
  const wider = await page.evaluate(() =>
    [...document.querySelectorAll("main, main *")].some(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 && !element.closest("[data-scene], .visually-hidden"),
    ),
  );
  expect(wider).toBe(false);
}
