// Pictures of every view of the built sandbox, at both sizes and in both themes, and of the report's pages, into
// screenshots/.
//   node scripts/screenshots.mjs [part of a picture's name, such as rig-wide …]
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { CHROME_ARGS, ensureChrome } from "./chrome.mjs";
import { ready, TOURS } from "./screenshotTours.mjs";

const out = fileURLToPath(new URL("../screenshots/", import.meta.url));
const wanted = process.argv.slice(2);
const SIZES = { wide: { width: 1440, height: 900 }, phone: { width: 390, height: 844 } };
const THEMES = ["light", "dark"];

const isWanted = (title) => wanted.length === 0 || wanted.some((part) => title.includes(part));

/** Everything that moves has come to rest: two frames without a change of the page, pictures and letters there. */
async function settled(page) {
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

async function walk(context, url, tour, size) {
  const last = tour.findLastIndex(({ name }) => THEMES.some((theme) => isWanted(`${name}-${size}-${theme}`)));
  if (last < 0) return;
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on("pageerror", (error) => console.error(`${size}: ${error}`));
  await page.goto(url);
  await ready(page);
  await still(page);
  for (const { name, steps = [] } of tour.slice(0, last + 1)) {
    try {
      for (const step of steps) await step(page, size);
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

/** One context for a size: what the first page fetched and compiled serves them all; what it kept is forgotten. */
async function walkAll(browser, url, size) {
  for (const tour of TOURS) {
    const context = await browser.newContext({
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

let failed = false;
mkdirSync(out, { recursive: true });
const server = await preview({
  root: fileURLToPath(new URL("../apps/sandbox", import.meta.url)),
  logLevel: "error",
  preview: { port: 0, strictPort: false },
});
const url = server.resolvedUrls.local[0];
const browser = await chromium.launch({ executablePath: ensureChrome(), args: CHROME_ARGS });
await Promise.all(Object.keys(SIZES).map((size) => walkAll(browser, url, size)));
await browser.close();
await server.close();
if (failed) process.exitCode = 1;
