// Tasks of the sandbox's main thread, in the built app: how many took longer than 50 ms, and the longest.
//   node bench/longTasks.mjs           drawn flat: the app's own work
//   node bench/longTasks.mjs --space   drawn in space, by a software rasteriser
// Counted is the thread's own time at work, so that a busy machine does not look like a slow page.
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { CHROME_ARGS, ensureChrome } from "../scripts/chrome.mjs";

/** [ms] */
const LONG = 50;
const FLAT = ["--disable-gpu", "--disable-software-rasterizer"];
const flatArgs = [...CHROME_ARGS.filter((argument) => !argument.includes("swiftshader")), ...FLAT];

const server = await preview({
  root: fileURLToPath(new URL("../apps/sandbox", import.meta.url)),
  logLevel: "error",
  preview: { port: 0 },
});
const browser = await chromium.launch({
  executablePath: ensureChrome(),
  args: process.argv.includes("--space") ? CHROME_ARGS : flatArgs,
});
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
const session = await browser.newBrowserCDPSession();

const button = (name) => page.getByRole("button", { name, exact: true });
const view = (name) => page.getByRole("navigation", { name: "Views" }).getByRole("button", { name }).click();
async function choose(list, option) {
  await page.getByRole("combobox", { name: list }).click();
  await page.getByRole("option", { name: option }).click();
  await page.getByRole("listbox").waitFor({ state: "detached" });
}
/** Nothing has been computing for a while: a change settles for a quarter of a second before it is run. */
async function done() {
  for (let calm = 0; calm < 4; ) {
    await page.waitForTimeout(150);
    calm = (await page.locator("[role=progressbar]").count()) === 0 ? calm + 1 : 0;
  }
}
async function arrows(slider) {
  await slider.focus();
  await page.keyboard.press("Home");
  for (let i = 0; i < 60; i++) await page.keyboard.press("ArrowRight");
}

const STEPS = [
  ["the page loads, and runs its first fall and study", () => page.goto(server.resolvedUrls.local[0])],
  ["the fall is run again", () => button("Run again").click()],
  [
    "the rig is changed: fall and study",
    async () => {
      await button("Rig").click();
      await page.getByRole("textbox", { name: "Mass of the walker" }).fill("95 kg");
    },
  ],
  ["another what-if", () => choose("What happens", "the walker falls into the leash")],
  ["scrubbing", () => arrows(page.getByRole("slider", { name: /time/i }).first())],
  [
    "playing, three seconds",
    async () => {
      await button("Play").first().click();
      await page.waitForTimeout(3000);
    },
  ],
  ["the energy ledger", () => page.getByRole("tab", { name: "Energy" }).click()],
  ["comparing with the run before", () => button("Compare").click()],
  ["layouts are opened", () => view("Layouts")],
  [
    "two layouts more",
    async () => {
      await button("Copy this rig and change it").click();
      await page.getByRole("textbox", { name: "Slack of the backup" }).fill("12 %");
      await button("Done").click();
      await button("Add a layout").click();
      await page.getByRole("menuitem", { name: "Demo: a loose backup" }).click();
    },
  ],
  ["scrubbing layouts", () => arrows(page.getByRole("slider", { name: "Time in the run" }).last())],
  ["wear is opened", () => view("Wear")],
];

console.log(["", "tasks", `over ${LONG} ms`, "longest [ms]"].join("\t"));
for (const [name, act] of STEPS) {
  const times = await tasksDuring(async () => {
    await act();
    await done();
  });
  const longest = times.slice(0, 3).map((time) => time.toFixed(0));
  console.log([name, times.length, times.filter((time) => time > LONG).length, longest.join(" ")].join("\t"));
}
await browser.close();
await server.close();

/** Times that the page's main thread worked on each of its tasks, longest first [ms]. */
async function tasksDuring(act) {
  const events = [];
  const take = ({ value }) => events.push(...value);
  session.on("Tracing.dataCollected", take);
  await session.send("Tracing.start", {
    // Nothing that notes where a call came from: the engine would parse a module anew for that, within its task.
    traceConfig: { includedCategories: ["toplevel"] },
    transferMode: "ReportEvents",
  });
  await act();
  const complete = new Promise((resolve) => session.once("Tracing.tracingComplete", resolve));
  await session.send("Tracing.end");
  await complete;
  session.off("Tracing.dataCollected", take);
  const threadOf = ({ pid, tid }) => `${pid}:${tid}`;
  const mains = new Set(
    events.filter(({ name, args }) => name === "thread_name" && args.name === "CrRendererMain").map(threadOf),
  );
  // The browser's own pages have main threads as well: ours is the one that works most.
  const isTask = (event) => event.tdur !== undefined && event.name.endsWith("RunTask");
  const work = new Map();
  for (const event of events)
    if (isTask(event) && mains.has(threadOf(event)))
      work.set(threadOf(event), (work.get(threadOf(event)) ?? 0) + event.tdur);
  const [[main] = []] = [...work].sort((a, b) => b[1] - a[1]);
  return events
    .filter((event) => threadOf(event) === main && isTask(event))
    .map(({ tdur }) => tdur / 1000)
    .sort((a, b) => b - a);
}
