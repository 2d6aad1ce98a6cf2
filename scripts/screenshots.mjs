// Pictures of every view of the built sandbox, at both sizes and in both themes, into screenshots/.
//   node scripts/screenshots.mjs [part of a picture's name, such as rig-wide …]
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { CHROME_ARGS, ensureChrome } from "./chrome.mjs";

const out = fileURLToPath(new URL("../screenshots/", import.meta.url));
const wanted = process.argv.slice(2);
const SIZES = { wide: { width: 1440, height: 900 }, phone: { width: 390, height: 844 } };

const click =
  (name, role = "button") =>
  (page) =>
    page.getByRole(role, { name }).first().click();
const openFile = (entry) => async (page) => {
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: entry }).click();
  await ready(page);
};
const choose = (label, option) => async (page) => {
  await page.getByRole("combobox", { name: label }).click();
  await page.getByRole("option", { name: option }).click();
};
const openRig = async (page, size) => {
  if (size === "wide") await page.getByRole("button", { name: "Rig", exact: true }).click();
  else await page.getByRole("navigation", { name: "Pages" }).getByRole("button", { name: "Rig" }).click();
  await page.waitForTimeout(400);
};
const openTime = async (page, size) => {
  if (size === "phone")
    await page.getByRole("navigation", { name: "Pages" }).getByRole("button", { name: "Time" }).click();
  await page.waitForTimeout(300);
};

const openView = (name) => async (page, size) => {
  if (size === "wide") await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name }).click();
  else {
    await page.getByRole("button", { name: "Views" }).click();
    await page.getByRole("menuitem", { name }).click();
  }
  await page.waitForTimeout(500);
};
const beginLesson = async (page) => {
  await click(/A connection halves the drop/)(page);
  await page.getByRole("heading", { name: "Your prediction" }).waitFor({ timeout: 60_000 });
};
const predict = async (page) => {
  await page.locator("form").getByRole("slider").focus();
  for (let i = 0; i < 12; i++) await page.keyboard.press("ArrowRight");
  await page.getByRole("radio").nth(1).click();
};
const runLesson = async (page) => {
  await click("Run it")(page);
  await page.getByRole("heading", { name: "The run" }).waitFor({ timeout: 60_000 });
};
const copyLayout = async (page) => {
  await click("Copy this rig and change it")(page);
  await page.getByRole("textbox", { name: "Slack of the backup" }).fill("12 %");
  await page.waitForTimeout(400);
};
const addLayout = (entry) => async (page) => {
  await click("Add a layout")(page);
  await page.getByRole("menuitem", { name: entry }).click();
};
const compared = async (page) => {
  await page.waitForFunction(
    () =>
      document.querySelectorAll("[role=progressbar]").length === 0 &&
      !/Appears when|before the last change/.test(document.querySelector("main").textContent),
    undefined,
    { timeout: 90_000 },
  );
};
const toTable = (page) => page.locator("table").evaluate((table) => table.scrollIntoView());

/** Every view: what a user does to get there from the first visit. */
const VIEWS = {
  first: [],
  reasons: [click(/^Leash, in its knot/)],
  whatifs: [click(/^The \d+ what-ifs/)],
  forces: [click("Forces")],
  overview: [choose("View", "The whole line")],
  anchor: [choose("View", "From anchor A")],
  drawing: [choose("View", "Drawing from the side")],
  rig: [openRig],
  time: [openTime],
  fault: [
    openRig,
    async (page) => {
      await page.getByRole("textbox", { name: "Length of the leash" }).fill("1.2 parsecs");
      await page.waitForTimeout(300);
    },
  ],
  compare: [
    openRig,
    async (page) => {
      await page.getByRole("textbox", { name: "Slack of the backup" }).fill("9 %");
      await page.waitForTimeout(600);
      await ready(page);
    },
    openTime,
    click("Compare"),
  ],
  loose: [openFile("Demo: a loose backup")],
  old: [openFile("Demo: an old rig")],
  file: [(page) => page.getByRole("button", { name: "File" }).click()],
  place: [click(/^The walker's place/)],
  cautions: [click(/more cautions/)],
  lessons: [openView(/Lessons/)],
  "lesson-given": [openView(/Lessons/), beginLesson],
  "lesson-predicted": [openView(/Lessons/), beginLesson, predict],
  "lesson-result": [openView(/Lessons/), beginLesson, predict, runLesson],
  "layout-first": [openView(/Layouts/)],
  "layout-changing": [openView(/Layouts/), copyLayout],
  "layouts-two": [openView(/Layouts/), copyLayout, click("Done"), compared],
  "layouts-four": [
    openView(/Layouts/),
    copyLayout,
    click("Done"),
    addLayout("Demo: a loose backup"),
    addLayout("Demo: an old rig"),
    compared,
  ],
  "layouts-table": [
    openView(/Layouts/),
    copyLayout,
    click("Done"),
    addLayout("Demo: a loose backup"),
    compared,
    toTable,
  ],
};

/** The fall and the verdict are there, or the page says why they are not. */
async function ready(page) {
  await page.waitForFunction(
    () =>
      document.querySelectorAll("[role=progressbar]").length === 0 &&
      document.querySelector("[aria-label='Parts from harness to rock'], [role=alert]"),
    undefined,
    { timeout: 60_000 },
  );
  await page.waitForTimeout(500);
}

/** The same moment in every picture: the lowest point, standing still. */
async function still(page) {
  const pause = page.getByRole("button", { name: "Pause", exact: true }).first();
  if (await pause.isVisible().catch(() => false)) await pause.click();
}

async function shoot(browser, url, name, size, theme) {
  const context = await browser.newContext({
    viewport: SIZES[size],
    colorScheme: theme,
    reducedMotion: "reduce",
    hasTouch: size === "phone",
    deviceScaleFactor: 1,
  });
  const page = await context.newPage();
  page.on("pageerror", (error) => console.error(`${name}: ${error}`));
  await page.goto(url);
  try {
    await ready(page);
    await still(page);
    for (const step of VIEWS[name]) await step(page, size);
    await page.waitForTimeout(900);
  } catch (error) {
    console.error(`${name} ${size} ${theme}: ${String(error).split("\n")[0]}`);
  }
  await page.screenshot({ path: `${out}${name}-${size}-${theme}.png` });
  await context.close();
}

mkdirSync(out, { recursive: true });
const server = await preview({
  root: fileURLToPath(new URL("../apps/sandbox", import.meta.url)),
  logLevel: "error",
  preview: { port: 0, strictPort: false },
});
const url = server.resolvedUrls.local[0];
const browser = await chromium.launch({ executablePath: ensureChrome(), args: CHROME_ARGS });
const all = Object.keys(VIEWS).flatMap((name) =>
  Object.keys(SIZES).flatMap((size) => ["light", "dark"].map((theme) => ({ name, size, theme }))),
);
for (const { name, size, theme } of all) {
  const title = `${name}-${size}-${theme}`;
  if (wanted.length > 0 && !wanted.some((part) => title.includes(part))) continue;
  await shoot(browser, url, name, size, theme);
  console.log(title);
}
await browser.close();
await server.close();
