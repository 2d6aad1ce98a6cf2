/** What a user does, from the first visit on. */
import { beforeAll, expect, it } from "vitest";
import {
  type App,
  answer,
  armClick,
  choose,
  computed,
  openRig,
  recomputed,
  rigSheetOpen,
  sharedApp,
  whole,
} from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

/** Notes in the page every verdict that is shown before the whole one, in `document.seen`. */
function noteVerdicts(): void {
  const seen: string[] = [];
  (document as unknown as { seen: string[] }).seen = seen;
  new MutationObserver(() => {
    const header = document.querySelector<HTMLElement>("header[data-verdict]");
    if (header?.dataset["whole"] === "false") seen.push(header.dataset["verdict"]!);
  }).observe(document, { childList: true, subtree: true, attributes: true });
}

// The one search of the demo rig from its beginning to its end: the visits of other tests find its results.
it("opens with the demo rig, its fall and the cautions; its search can be stopped and looks on; it holds only when everything has been looked at", async () => {
  const { page, problems } = await app.visit({ first: true, before: noteVerdicts });
  await computed(page);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("Example crag");
  expect(await answer(page)).toMatch(/caught you .* down\. Hardest pull on your harness: .* kN\./);
  const column = page.getByRole("complementary", { name: "Verdict" });
  expect(await column.textContent()).toMatch(/^(Nothing found yet|Holds|Thin|Fails)/);
  expect(await page.getByRole("region", { name: "Cautions" }).textContent()).toContain("does not replace inspection");
  await page
    .getByRole("img", { name: /walker/i })
    .first()
    .waitFor();
  // Every part of the rig is in sight beside the scene, nothing lies over it.
  const hidden = await page.evaluate(
    () =>
      [...document.querySelectorAll("[data-part]")].filter((row) => {
        const { left, width, bottom } = row.getBoundingClientRect();
        const seen = document.elementFromPoint(left + width / 2, bottom - 3);
        return !seen || !row.contains(seen);
      }).length,
  );
  expect(await page.locator("[data-part]").count()).toBeGreaterThan(15);
  expect(hidden).toBe(0);

  await page.getByRole("button", { name: "Stop the search" }).click();
  await column.getByText(/^Stopped: .*\d+ of \d+ what-ifs looked at\./).waitFor();
  expect(await column.textContent()).not.toMatch(/^Holds/);
  await column.getByRole("button", { name: "Look on" }).click();
  await page.locator("[data-search] [role=progressbar]").waitFor();

  await column.getByText(/of 48 what-ifs|parts settled/).waitFor();
  await whole(page);
  const seen = await page.evaluate(() => (document as unknown as { seen: string[] }).seen);
  expect(seen.length).toBeGreaterThan(0);
  expect(seen).not.toContain("holds");
  expect(await column.textContent()).toMatch(/^(Holds|Thin|Fails)/);
  expect(await column.textContent()).toContain("no wear record, no break tests");
  expect(problems).toEqual([]);
});

it("takes the record and the tests that speak of a rig, and leaves them out in one step", async () => {
  const { page, problems } = await app.visit();
  const column = page.getByRole("complementary", { name: "Verdict" });
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: /an old rig/ }).click();
  await column.getByText("break tests say something of it").waitFor();
  await column.getByRole("button", { name: "Leave record and tests out" }).click();
  await column.getByText("no wear record, no break tests").waitFor();
  await column.getByRole("button", { name: "Take record and tests in" }).click();
  await column.getByText("break tests say something of it").waitFor();
  expect(problems).toEqual([]);
});

it("shows another what-if, run in the worker and told aloud, and from the reasons of a part its hardest one", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const before = await answer(page);
  await recomputed(page, () => choose(page, "What happens", "the walker falls into the leash"));
  expect(await answer(page)).not.toBe(before);
  await expect.poll(() => page.getByRole("status").first().textContent()).toContain("Leash fall in the middle");
  expect(page.workers().length).toBeGreaterThan(0);
  await page.getByRole("button", { name: /^Leash,/ }).click();
  const table = page.getByRole("table", { name: /Strength of Leash/ });
  expect(await table.textContent()).toMatch(/Rated/);
  await recomputed(page, () => page.getByRole("button", { name: "Watch it" }).first().click());
  expect(problems).toEqual([]);
});

it("plays, pauses and scrubs with the keys", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const scrubber = page.getByRole("slider", { name: /time/i }).first();
  await scrubber.focus();
  const at = () => scrubber.getAttribute("aria-valuetext");
  const resting = await at();
  await page.keyboard.press("Home");
  await expect.poll(at).toMatch(/^0\.000 s/);
  const start = await at();
  expect(start).not.toBe(resting);
  await page.keyboard.press("ArrowRight");
  await expect.poll(at).not.toBe(start);
  // The slowest: minutes long, so that nothing here comes to its end by itself.
  await choose(page, "Speed", "1/50 speed");
  // The figures run along; the slider's words stay until it stands, so that nobody is read every frame.
  const figures = () => page.getByRole("region", { name: "Playback" }).locator("p").textContent();
  const stepped = await figures();
  await page.getByRole("button", { name: "Play", exact: true }).first().click();
  await expect.poll(figures).not.toBe(stepped);
  await page.getByRole("button", { name: "Pause", exact: true }).first().click();
  await page.getByRole("button", { name: "Play", exact: true }).first().waitFor();
  await scrubber.focus();
  await page.keyboard.press("Home");
  await expect.poll(at).toBe(start);
  expect(problems).toEqual([]);
});

it("edits the rig, computes it again and compares it with the run before, undoes it, and tells a wrong entry beside its field", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const before = await answer(page);
  await openRig(page);
  const slack = page.getByRole("textbox", { name: "Slack of the backup" });
  await recomputed(page, () => slack.fill("12 %"));
  const looser = await answer(page);
  expect(looser).not.toBe(before);
  // After a change it is on; another what-if is no change.
  await page.locator("button[aria-pressed=true]", { hasText: "Compare" }).waitFor();
  await page.getByText(/^Your last change \(.+\): this fall goes [\d.]+ m down instead of [\d.]+ m/).waitFor();
  const numbers = page.getByRole("region", { name: "Largest values of this fall" });
  expect(await numbers.textContent()).toMatch(/Drop\s*[\d.]+ m\s*was [\d.]+ m/);
  await slack.blur();
  await recomputed(page, () => page.getByRole("button", { name: /^Undo/ }).click());
  expect(await answer(page)).toBe(before);
  expect(await slack.inputValue()).toBe("5 %");
  await recomputed(page, () => page.getByRole("button", { name: /^Redo/ }).click());
  expect(await answer(page)).toBe(looser);
  // A wrong entry leaves the last good results.
  await slack.fill("9 parsecs");
  await expect.poll(() => slack.getAttribute("aria-invalid")).toBe("true");
  const described = (await slack.getAttribute("aria-describedby"))!.split(" ")[0]!;
  expect(await page.locator(`[id="${described}"]`).textContent()).toContain('"9 parsecs" has a unit');
  expect(await answer(page)).toBe(looser);
  await recomputed(page, () => slack.fill("9 %"));
  expect(await slack.getAttribute("aria-invalid")).toBeNull();
  expect(await answer(page)).not.toBe(looser);
  expect(problems).toEqual([]);
});

it("stops a long run on request and runs it again", async () => {
  const { page, problems } = await app.visit({ first: true });
  await computed(page);
  const stopped = await armClick(page, "Stop", { within: "main", begun: true });
  await choose(page, "Mesh", /^Standard mesh/);
  await stopped();
  await page.getByText(/^Stopped\./).waitFor();
  await recomputed(page, () => choose(page, "Mesh", /^Coarse mesh/));
  expect(await answer(page)).toContain("Hardest pull");
  expect(problems).toEqual([]);
});

it("works by keyboard alone", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  await page.keyboard.press("Tab");
  await page.getByRole("button", { name: "Rig", exact: true }).focus();
  await page.keyboard.press("Enter");
  await rigSheetOpen(page);
  await page.getByRole("textbox", { name: "Span" }).focus();
  await page.keyboard.press("Tab");
  await recomputed(page, () => page.keyboard.press("ArrowRight"));
  expect(await page.getByRole("textbox", { name: "Span" }).inputValue()).not.toBe("60 m");
  await recomputed(page, () => page.keyboard.press("Control+z"));
  expect(await page.getByRole("textbox", { name: "Span" }).inputValue()).toBe("60 m");
  await page.getByRole("combobox", { name: "View" }).focus();
  const focused = () => page.evaluate(() => document.activeElement?.textContent?.replace("●", ""));
  await page.keyboard.press("Enter");
  // The list takes the focus when it has opened.
  await page.getByRole("option").and(page.locator(":focus")).waitFor();
  expect(await focused()).toBe("Close to the fall");
  await page.keyboard.press("ArrowDown");
  await expect.poll(focused).toBe("The whole line");
  await page.keyboard.press("Enter");
  await page.getByRole("listbox").waitFor({ state: "detached" });
  expect(await page.getByRole("combobox", { name: "View" }).textContent()).toBe("The whole line");
  expect(problems).toEqual([]);
});
