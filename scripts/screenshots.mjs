// Pictures of every view of the built sandbox, at both sizes and in both themes, and of the report, into screenshots/.
//   node scripts/screenshots.mjs [part of a picture's name, such as rig-wide …]
import { mkdirSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { CHROME_ARGS, ensureChrome, FLAT_ARGS } from "./chrome.mjs";
import { begun, ready, TOURS } from "./screenshotTours.mjs";

const out = fileURLToPath(new URL("../screenshots/", import.meta.url));
const wanted = process.argv.slice(2);
const SIZES = { wide: { width: 1440, height: 900 }, phone: { width: 390, height: 844 } };
const A4 = { width: 794, height: 1123 };
const THEMES = ["light", "dark"];

const isWanted = (title) => wanted.length === 0 || wanted.some((part) => title.includes(part));

/** Everything that moves has come to rest: two frames without a change of the page, pictures and letters there. */
async function settled(page) {
  // The code of a view comes when it is first asked for.
  await page.waitForFunction(() => document.querySelector("[aria-busy=true]") === null);
  await page.evaluate(async () => {
    await document.fonts.ready;
    await Promise.all(document.getAnimations().map((animation) => animation.finished.catch(() => undefined)));
    let quiet = 0;
    const seen = new MutationObserver(() => {
      quiet = 0;
    });
    seen.observe(document.body, { childList: true, subtree: true, attributes: true, characterData: true });
    const end = performance.now() + 5000;
    while (quiet < 12 && performance.now() < end) {
      quiet += 1;
      await new Promise((done) => requestAnimationFrame(done));
    }
    seen.disconnect();
  });
}

/** The same moment in every picture: the lowest point, standing still. */
async function still(page) {
  const pause = page.getByRole("button", { name: "Pause", exact: true }).first();
  if (await pause.isVisible().catch(() => false)) await pause.click();
}

async function walk(context, url, { stops, underWay }, size) {
  const last = stops.findLastIndex(({ name }) => THEMES.some((theme) => isWanted(`${name}-${size}-${theme}`)));
  if (last < 0) return;
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  page.on("pageerror", (error) => console.error(`${size}: ${error}`));
  await page.goto(url);
  await (underWay ? begun : ready)(page);
  await still(page);
  for (const { name, steps = [] } of stops.slice(0, last + 1)) {
    try {
      for (const step of steps) await step(page, size);
      // Also where no picture is wanted: what the next steps press is there only then.
      await settled(page);
    } catch (error) {
      failed = true;
      console.error(`${name} ${size}: ${String(error).split("\n")[0]}`);
    }
    for (const theme of THEMES) {
      const title = `${name}-${size}-${theme}`;
      if (!isWanted(title)) continue;
      await page.emulateMedia({ colorScheme: theme });
      await settled(page);
      await page.screenshot({ path: `${out}${title}.png` });
      console.log(title);
    }
  }
  await page.close();
}

/** All tours on one screen. What one tour left behind, the next does not find. */
async function walkAll(browsers, url, size) {
  for (const tour of TOURS) {
    const context = await (tour.flat ? browsers.flat : browsers.space).newContext({
      viewport: SIZES[size],
      reducedMotion: "reduce",
      hasTouch: size === "phone",
      deviceScaleFactor: 1,
      serviceWorkers: "block",
    });
    await walk(context, url, tour, size);
    await context.close();
  }
}

/** The report as the sandbox saves it: one long picture as printed, and the pages themselves as a PDF. */
async function shootReport(browser, url) {
  const page = await browser.newPage({ viewport: A4, acceptDownloads: true, serviceWorkers: "block" });
  await page.goto(url);
  await ready(page);
  await page.getByRole("button", { name: "File" }).click();
  const saving = page.waitForEvent("download", { timeout: 600_000 });
  await page.getByRole("menuitem", { name: /^Save the report/ }).click();
  const file = `${out}report.html`;
  await (await saving).saveAs(file);
  await page.goto(pathToFileURL(file).href);
  await page.emulateMedia({ media: "print" });
  await page.screenshot({ path: `${out}report.png`, fullPage: true });
  await page.pdf({ path: `${out}report.pdf`, preferCSSPageSize: true });
  await page.close();
  console.log("report");
}

let failed = false;
mkdirSync(out, { recursive: true });
const server = await preview({
  root: fileURLToPath(new URL("../apps/sandbox", import.meta.url)),
  logLevel: "error",
  preview: { port: 0, strictPort: false },
});
const url = server.resolvedUrls.local[0];
const executablePath = ensureChrome();
const browsers = {
  space: await chromium.launch({ executablePath, args: CHROME_ARGS }),
  flat: await chromium.launch({ executablePath, args: FLAT_ARGS }),
};
await Promise.all([
  ...Object.keys(SIZES).map((size) => walkAll(browsers, url, size)),
  isWanted("report") ? shootReport(browsers.flat, url) : undefined,
]);
for (const browser of Object.values(browsers)) await browser.close();
await server.close();
if (failed) process.exitCode = 1;
