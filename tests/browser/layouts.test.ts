/** Layouts side by side, as a rigger compares them before a build. */
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import {
  type App,
  armClick,
  choose,
  computed,
  expectAccessible,
  openRigFile,
  PHONE,
  sharedApp,
  shelved,
  shortLine,
  still,
  violationsInThemes,
} from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

async function openLayouts(page: Page): Promise<void> {
  await page.getByRole("heading", { level: 1 }).waitFor();
  const views = page.getByRole("navigation", { name: "Views" });
  if (await views.isVisible()) await views.getByRole("button", { name: "Layouts" }).click();
  else {
    await page.getByRole("button", { name: "Views" }).click();
    await page.getByRole("menuitem", { name: /Layouts/ }).click();
  }
  await page.getByRole("region", { name: "Layout A", exact: true }).waitFor();
}

/** Every layout has its fall, and something is found of its verdict. */
async function compared(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector("[role=progressbar]:not([data-search] *)") === null &&
      document.querySelector("table") !== null &&
      !/Appears when all|No verdict yet/.test(document.querySelector("main")!.textContent!),
  );
}

/** Everything has been looked at in every layout. */
async function allWhole(page: Page): Promise<void> {
  await page.waitForFunction(() => !/Appears when/.test(document.querySelector("main")!.textContent!), undefined, {
    timeout: 170_000,
  });
}

async function copyAndLoosen(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Copy this rig and change it" }).click();
  await page.getByRole("textbox", { name: "Slack of the backup" }).fill("12 %");
  // Taken up: from here on the layout is computed anew, or has been.
  await changedBy(page, "Backup, slack: 5 % 12 %");
  await page.getByRole("button", { name: "Done" }).click();
  await compared(page);
}

/** Layout B says that this is what sets it apart; on a phone only once its sheet is closed. */
async function changedBy(page: Page, words: string): Promise<void> {
  if (await layout(page, "B").isVisible()) await expect.poll(() => layout(page, "B").textContent()).toContain(words);
}

async function add(page: Page, entry: string): Promise<void> {
  await page.getByRole("button", { name: "Add a layout" }).click();
  await page.getByRole("menuitem", { name: entry }).click();
}

const layout = (page: Page, letter: string) => page.getByRole("region", { name: `Layout ${letter}`, exact: true });
const cells = (page: Page, label: string) =>
  page
    .getByRole("row", { name: new RegExp(`^${label}`) })
    .getByRole("cell")
    .allTextContents();

it("copies the rig, changes one thing, and says what changed; the same what-if runs on both when it is changed", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await openLayouts(page);
  await copyAndLoosen(page);
  expect(await layout(page, "B").textContent()).toContain("Backup, slack: 5 % 12 %");
  const drops = (await cells(page, "Drop")).map(Number.parseFloat);
  expect(drops[1]).toBeGreaterThan(drops[0]!);
  await choose(page, "What happens", "the walker falls into the leash");
  await page.waitForFunction(() => !/backup caught you/.test(document.querySelector("main")!.textContent!));
  await compared(page);
  for (const letter of ["A", "B"])
    expect(await layout(page, letter).textContent()).toContain("The main line caught you");
  expect(problems).toEqual([]);
});

it("says what a change did, and the margin of every part, once everything has been looked at in both", async () => {
  const { page, problems } = await app.visit({ searches: true });
  await computed(page);
  await openRigFile(page, shortLine());
  await openLayouts(page);
  await page.getByRole("button", { name: "Copy this rig and change it" }).click();
  await page.getByRole("textbox", { name: "Length of the leash" }).fill("2.1 m");
  await changedBy(page, "Leash, length: 1.4 m 2.1 m");
  await page.getByRole("button", { name: "Done" }).click();
  await compared(page);
  await allWhole(page);
  expect(await layout(page, "B").textContent()).toMatch(/What it did.* instead of /);
  expect(await cells(page, "Margin of the part nearest to what is required of it")).toHaveLength(2);
  // Nothing catches who falls once a line without a backup fails: the margin is but a bound.
  expect((await cells(page, "Leash\\s+≤"))[1]).toMatch(/≤ [\d.]+/);
  expect(problems).toEqual([]);
});

it("takes four layouts, no more, and brings one back that was taken away", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await openLayouts(page);
  await copyAndLoosen(page);
  await add(page, "Demo: a loose backup");
  await add(page, "Demo: an old rig");
  await compared(page);
  await expect.poll(() => page.getByRole("columnheader").count()).toBe(4);
  expect(await page.getByRole("button", { name: "Add a layout" }).count()).toBe(0);
  await page.getByRole("button", { name: "More for layout C" }).click();
  await page.getByRole("menuitem", { name: "Take away" }).click();
  await expect.poll(() => layout(page, "D").count()).toBe(0);
  await page.getByRole("button", { name: "Bring it back" }).click();
  await layout(page, "D").waitFor();
  await expect.poll(() => layout(page, "C").textContent()).toContain("Shelf Gap");
  expect(problems).toEqual([]);
});

it("keeps the last good state of a layout whose entry cannot be read, undoes it, and finds the layouts again after a reload", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await openLayouts(page);
  await copyAndLoosen(page);
  const answer = /The backup caught you [\d.]+ m down/.exec((await layout(page, "B").textContent())!)![0];
  await page.getByRole("button", { name: "Change B" }).click();
  const sheet = page.getByRole("region", { name: "Rig sheet of layout B" });
  await sheet.getByRole("textbox", { name: "Span" }).fill("sixty");
  expect(await layout(page, "B").getByRole("alert").textContent()).toContain("What you see is the layout before that.");
  expect(await layout(page, "B").textContent()).toContain(answer);
  await sheet.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => layout(page, "B").getByRole("alert").count()).toBe(0);
  await compared(page);
  expect(await layout(page, "B").textContent()).toContain(answer);
  await sheet.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => layout(page, "B").textContent()).toContain("Nothing yet: it is the same as A.");
  await sheet.getByRole("textbox", { name: "Slack of the backup" }).fill("9 %");
  await changedBy(page, "Backup, slack: 5 % 9 %");
  await shelved(page, "secondline.layouts", '"9 %"');
  await page.reload();
  await openLayouts(page);
  await compared(page);
  expect(await layout(page, "B").textContent()).toContain("Backup, slack: 5 % 9 %");
  expect(problems).toEqual([]);
});

it("leaves the open rig alone until a layout is taken for it", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await openLayouts(page);
  await copyAndLoosen(page);
  await page.getByRole("button", { name: "More for layout B" }).click();
  await page.getByRole("menuitem", { name: /Take as the open rig/ }).click();
  await compared(page);
  await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "One rig" }).click();
  await computed(page);
  await page.getByRole("button", { name: "Undo: took layout B" }).waitFor();
  await page.getByRole("button", { name: "Rig", exact: true }).click();
  expect(await page.getByRole("textbox", { name: "Slack of the backup" }).inputValue()).toBe("12 %");
  expect(problems).toEqual([]);
});

it("moves every picture and the traces with one clock, by the keys", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await openLayouts(page);
  await copyAndLoosen(page);
  const time = page.getByRole("slider", { name: "Time in the run" });
  const pixels = () =>
    page.locator("[data-scene]").evaluateAll((all) => all.map((one) => one.querySelector("canvas")!.toDataURL()));
  const before = await pixels();
  await time.last().focus();
  await page.keyboard.press("Home");
  await expect.poll(async () => (await pixels()).every((image, i) => image !== before[i])).toBe(true);
  expect(before).toHaveLength(2);
  await expect.poll(() => time.first().getAttribute("aria-valuenow")).toBe("0");
  // The same keys where nothing has the focus, as in the view of one rig.
  await page.locator("main h2").evaluate(() => (document.activeElement as HTMLElement).blur());
  await page.keyboard.press("End");
  await expect.poll(async () => Number(await time.first().getAttribute("aria-valuenow"))).toBeGreaterThan(4);
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  await expect.poll(async () => Number(await time.first().getAttribute("aria-valuenow"))).toBeCloseTo(0.05, 2);
  const playback = page.getByRole("region", { name: "Playback" });
  await page.keyboard.press("Space");
  await playback.getByRole("button", { name: "Pause" }).waitFor();
  await page.keyboard.press("Space");
  await playback.getByRole("button", { name: "Play" }).waitFor();
  expect(problems).toEqual([]);
});

it("stops one layout's computation and runs it again", async () => {
  const { page, problems } = await app.visit({ first: true });
  await openLayouts(page);
  await computedA(page);
  const stopped = await armClick(page, "Stop", { within: "[aria-label='Layout B']" });
  await page.getByRole("button", { name: "Copy this rig and change it" }).click();
  await stopped();
  await layout(page, "B").getByText("Stopped.").waitFor();
  expect(await layout(page, "B").textContent()).not.toMatch(/caught you|Holds|Thin|Fails/);
  await layout(page, "B").getByRole("button", { name: "Run", exact: true }).click();
  await layout(page, "B").getByText(VERDICT).first().waitFor();
  await compared(page);
  expect(await layout(page, "B").textContent()).toMatch(/caught you [\d.]+ m down/);
  expect(problems).toEqual([]);
});

const VERDICT = /^(Nothing found yet|Holds|Thin|Fails)/;
const computedA = (page: Page) => layout(page, "A").getByText(VERDICT).first().waitFor();

it.each([
  ["a wide screen", {}],
  [
    "a phone, where the finger has 44 px and only the table scrolls sideways",
    { viewport: PHONE, hasTouch: true, isMobile: true },
  ],
])("axe finds nothing with one layout, while changing, and with three, light or dark, on %s", async (_, options) => {
  const { page, problems } = await app.visit(options);
  await openLayouts(page);
  await computedA(page);
  expect(await violationsInThemes(page)).toEqual([]);
  await page.getByRole("button", { name: "Copy this rig and change it" }).click();
  await page.getByRole("textbox", { name: "Slack of the backup" }).fill("12 %");
  expect(await violationsInThemes(page)).toEqual([]);
  await page.getByRole("button", { name: "Done" }).click();
  await add(page, "Demo: a loose backup");
  await compared(page);
  expect(await violationsInThemes(page)).toEqual([]);
  expect(await page.getByRole("region", { name: "Cautions" }).textContent()).toContain("does not replace inspection");
  expect(problems).toEqual([]);
  if ("isMobile" in options) await expectRoomForFingers(page);
});

async function expectRoomForFingers(page: Page): Promise<void> {
  const small = await page.locator("main button:visible").evaluateAll((buttons) =>
    buttons
      .map((button) => ({
        name: button.getAttribute("aria-label") ?? button.textContent,
        box: button.getBoundingClientRect(),
      }))
      .filter(({ box }) => box.height < 44 || box.width < 44)
      .map(({ name }) => name),
  );
  expect(small).toEqual([]);
  const wider = await page.evaluate(() =>
    [...document.querySelectorAll("main, main *")].some(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 &&
        !element.closest("[data-scene], table, .visually-hidden"),
    ),
  );
  expect(wider).toBe(false);
  // The page itself never scrolls: header, playback and cautions stay where they are.
  await page.locator("table").evaluate((table) => table.scrollIntoView());
  expect(await page.evaluate(() => document.scrollingElement!.scrollTop)).toBe(0);
}

it("finds the fewest connections that are worth a check, and takes them over as a layout that can be taken away", async () => {
  const { page, problems } = await app.visit({ searches: true, quickLookAlone: true });
  await openLayouts(page);
  await page.getByRole("button", { name: "More for layout A" }).click();
  await page.getByRole("menuitem", { name: "How few connections will do?" }).click();
  await page.getByRole("heading", { name: "How far can I go?" }).waitFor();
  const last = page.getByRole("textbox", { name: "to", exact: true });
  await last.fill("-1");
  expect(await page.getByRole("region", { name: "How far can I go?" }).textContent()).toContain("plain number");
  expect(await page.getByRole("button", { name: "Run it" }).isDisabled()).toBe(true);
  await last.fill("2");
  await page.getByText(/Some \d+ runs: about/).waitFor();
  const stopped = await armClick(page, "Stop", { within: "[aria-label='How far can I go?']" });
  await page.getByRole("button", { name: "Run it" }).click();
  await stopped();
  await page.getByText("Stopped before the end").waitFor();
  await page.getByRole("button", { name: "Run it" }).click();
  await page.getByText(/^From 1 connection on/).waitFor({ timeout: 120_000 });
  expect(await page.getByRole("main").textContent()).not.toMatch(/the rig holds with/);
  await still(page);
  await expectAccessible(page);
  await page.getByRole("button", { name: "Look at 2 connections and check it" }).click();
  const point = page.getByRole("complementary", { name: "At 2 connections" });
  await point.getByText(/caught you/).waitFor();
  expect(await point.textContent()).toContain("Not checked");
  await point.getByRole("button", { name: "Take as a new layout" }).click();
  await layout(page, "B").waitFor();
  await expect.poll(() => layout(page, "B").textContent()).toContain("Backup, connections: 3 2");
  await page.getByRole("button", { name: "Take it away again" }).click();
  await expect.poll(() => layout(page, "B").count()).toBe(0);
  expect(problems).toEqual([]);
});
