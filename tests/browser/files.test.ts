/** Files, links and what stays on the device. */
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type App, answer, computed, expectAccessible, kept, openRig, recomputed, sharedApp, still } from "./app.ts";

let app: App;
const folder = mkdtempSync(join(tmpdir(), "secondline-"));
const demo = JSON.parse(readFileSync(new URL("../../demo-data/sound-rig.json", import.meta.url), "utf8"));
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}
async function fileMenu(page: Page, entry: string | RegExp): Promise<void> {
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: entry }).click();
}
async function open(page: Page, path: string): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await fileMenu(page, "Open a rig file…");
  await (await chooser).setFiles(path);
}
const title = (page: Page) => page.getByRole("heading", { level: 1 }).textContent();
const messages = (page: Page) => page.getByRole("region", { name: "Messages" });

const huge = join(folder, "film.json");
const BAD: readonly (readonly [string, () => string, RegExp])[] = [
  ["that is no JSON", () => file("notes.json", "span: 60 m"), /not JSON/],
  ["of another program", () => file("other.json", '{"nodes": [], "version": 4}'), /another program/],
  ["of a newer version", () => file("newer.json", '{"secondline": "rig/7"}'), /newer version/],
  [
    "with faults",
    () => file("faulty.json", JSON.stringify({ ...demo, span: "-60 m", walker: { mass: "80 parsecs" } })),
    /span: .*negative[\s\S]*walker\.mass: .*parsecs/,
  ],
  [
    "of 200 MB",
    () => {
      writeFileSync(huge, "");
      truncateSync(huge, 200_000_000);
      return huge;
    },
    /200 MB/,
  ],
];
it("saves the forces of a run as a table; says plainly why a bad file is not opened, and leaves the work alone; takes a dropped one, and gives the old rig back on undo", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("menuitem", { name: "Forces in view as CSV" }).click();
  const path = join(folder, "forces.csv");
  await (await saving).saveAs(path);
  const [head, first] = readFileSync(path, "utf8").split("\n");
  expect(head).toMatch(/^time \[s\],.*\[N\].*tie-in height \[m\]$/);
  expect(first!.split(",")).toHaveLength(head!.split(",").length);

  const [name, fall] = [await title(page), await answer(page)];
  for (const [kind, make, words] of BAD) {
    await open(page, make());
    await expect.poll(() => messages(page).textContent(), { message: `a file ${kind}` }).toMatch(words);
    await page.getByRole("button", { name: "Close this message" }).click();
    expect([await title(page), await answer(page)]).toEqual([name, fall]);
  }

  const dropped = JSON.stringify({ ...demo, name: "Dropped rig" });
  await recomputed(page, () =>
    page.evaluate((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], "dropped.json", { type: "application/json" }));
      for (const type of ["dragover", "drop"]) {
        document.body.dispatchEvent(new DragEvent(type, { dataTransfer: transfer, bubbles: true, cancelable: true }));
      }
    }, dropped),
  );
  expect(await title(page)).toBe("Dropped rig");
  await recomputed(page, () => page.getByRole("button", { name: /^Undo/ }).click());
  expect(await title(page)).toBe(name);
  expect(problems).toEqual([]);
});

it("keeps the work over a reload, also an entry that is wrong just then, and opens elsewhere what it saved", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await computed(page);
  await openRig(page);
  await recomputed(page, () => page.getByRole("textbox", { name: "Mass of the walker" }).fill("93 kg"));
  const fall = await answer(page);
  const saving = page.waitForEvent("download");
  await fileMenu(page, "Save as a file");
  const path = join(folder, "saved.json");
  await (await saving).saveAs(path);
  expect(JSON.parse(readFileSync(path, "utf8"))).toEqual({ ...demo, walker: { ...demo.walker, mass: "93 kg" } });
  await page.getByRole("textbox", { name: "Length of the leash" }).fill("long");
  await kept(page, '"length":"long"');
  await page.reload();
  // The fall is of the rig before the wrong entry; a verdict there is none until that is put right.
  await expect.poll(() => answer(page)).toBe(fall);
  await openRig(page);
  expect(await page.getByRole("textbox", { name: "Mass of the walker" }).inputValue()).toBe("93 kg");
  expect(await page.getByRole("textbox", { name: "Length of the leash" }).inputValue()).toBe("long");
  await page.close();
  const other = await app.visit({ quickLookAlone: true });
  await computed(other.page);
  await recomputed(other.page, () => open(other.page, path));
  await expect.poll(() => answer(other.page)).toBe(fall);
  expect([...problems, ...other.problems]).toEqual([]);
});

it("shows nothing of the verdict before beside the name of a rig that has just been opened", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true });
  await fileMenu(page, /a loose backup/);
  // The loose rig fails, and the sound one that is opened then does not: no word of the former may outlast its name.
  await page.locator("header[data-verdict=fails]").waitFor();
  await page.evaluate(() => {
    const stale: string[] = [];
    (globalThis as { stale?: string[] }).stale = stale;
    new MutationObserver(() => {
      const name = document.querySelector("h1")!.textContent;
      const verdict = document.querySelector("header[data-verdict=fails]")?.textContent;
      if (name === "Opened rig" && verdict) stale.push(verdict);
    }).observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });
  });
  await recomputed(page, () => open(page, file("opened.json", JSON.stringify({ ...demo, name: "Opened rig" }))));
  await computed(page);
  await expect.poll(() => title(page)).toBe("Opened rig");
  expect(await page.evaluate(() => (globalThis as { stale?: string[] }).stale)).toEqual([]);
  expect(problems).toEqual([]);
});

it("brings rig, what-if and moment to somebody else in a link", async () => {
  const { page, problems } = await app.visit({
    quickLookAlone: true,
    permissions: ["clipboard-read", "clipboard-write"],
  });
  await computed(page);
  await openRig(page);
  await recomputed(page, () => page.getByRole("textbox", { name: "Slack of the backup" }).fill("8 %"));
  const fall = await answer(page);
  await fileMenu(page, /^Copy a link/);
  await messages(page).getByText("The link is copied").waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  await page.close();
  const other = await app.visit({ quickLookAlone: true, hash: link.slice(link.indexOf("#")) });
  await computed(other.page);
  await expect.poll(() => answer(other.page)).toBe(fall);
  expect(new URL(other.page.url()).hash).toBe("");
  expect([...problems, ...other.problems]).toEqual([]);
});

it("says that a link is broken and opens as without one", async () => {
  const { page, problems } = await app.visit({ hash: "#rig=7VZtb9s2EP4rBD8" });
  await computed(page);
  await expect.poll(() => messages(page).textContent()).toContain("the link is incomplete or was changed");
  expect(await title(page)).toContain("Example crag");
  expect(problems).toEqual([]);
});

it("keeps a copy of the work that another rig replaces", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  await recomputed(page, () => fileMenu(page, /^Demo: an old rig/));
  await fileMenu(page, /^Earlier work/);
  const dialog = page.getByRole("dialog", { name: "Earlier work on this device" });
  await recomputed(page, () => dialog.getByRole("button", { name: "Open" }).first().click());
  expect(await title(page)).toBe(demo.name);
  expect(problems).toEqual([]);
});

it("says so when the device has no room left for the work", async () => {
  const { page, problems } = await app.visit({
    before: () => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    },
  });
  await computed(page);
  await openRig(page);
  await recomputed(page, () => page.getByRole("textbox", { name: "Mass of the walker" }).fill("77 kg"));
  await expect.poll(() => messages(page).textContent()).toContain("its storage is full. Save the rig to a file");
  expect(problems).toEqual([]);
});

it("saves a report of every what-if, and by the same search a site card", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const saving = page.waitForEvent("download", { timeout: 180_000 });
  await fileMenu(page, /^Save the report/);
  const path = join(folder, "report.html");
  await (await saving).saveAs(path);
  const report = readFileSync(path, "utf8");
  expect(report).toContain("Before you rely on this");
  expect(report).toContain("does not replace inspection");
  await fileMenu(page, /^Site card/);
  // Nobody has written a record of this rig: no card permits anybody on it.
  await page.locator("[data-permission=none]").waitFor();
  const main = page.getByRole("main", { name: "Site card" });
  expect(await main.textContent()).toContain("No wear record says what has happened to this rig.");
  await still(page);
  await expectAccessible(page);
  const carding = page.waitForEvent("download");
  await main.getByRole("button", { name: "Save the card" }).click();
  const cardPath = join(folder, "card.html");
  await (await carding).saveAs(cardPath);
  const card = readFileSync(cardPath, "utf8");
  expect(card).toContain("No permission");
  expect(card).not.toContain("Heaviest walker");
  expect(problems).toEqual([]);
}, 200_000);
