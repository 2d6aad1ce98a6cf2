/** The wear view as its users meet it: the record on its strip, the calendar, the break log, and the way into the rig. */
import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import {
  type App,
  kept,
  mainLineAlone,
  openRigFile,
  PHONE,
  sharedApp,
  still,
  violations,
  violationsInThemes,
  WIDE,
} from "./app.ts";

/** The whole search for a verdict, on a machine that does much else [ms]. */
const WHOLE_SEARCH = 400_000;

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

const phoneMenu = async (page: Page) => {
  await page.getByRole("button", { name: "Views" }).click();
  await page.getByRole("menuitem", { name: /^Wear/ }).click();
};

async function openWear(page: Page, phone = false): Promise<void> {
  if (phone) await phoneMenu(page);
  else await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "Wear" }).click();
  await page.getByRole("main", { name: "Wear record" }).waitFor();
}

/** The old demo rig with its own record in front. */
async function oldRig(options: Parameters<App["visit"]>[0] = {}, phone = false) {
  const visited = await app.visit(options);
  await visited.page.getByRole("button", { name: "File" }).click();
  await visited.page.getByRole("menuitem", { name: "Demo: an old rig" }).click();
  await openWear(visited.page, phone);
  return visited;
}

/** The example record, whatever rig is open. */
async function record(options: Parameters<App["visit"]>[0] = {}, phone = false) {
  const visited = await app.visit(options);
  await openWear(visited.page, phone);
  return visited;
}

const undo = (page: Page) => page.getByRole("button", { name: /^Undo: / });
const bar = (page: Page, name: RegExp) => page.locator("[data-grip^=place]").and(page.getByRole("slider", { name }));

describe("the record", () => {
  test("says where the old clamp mark lies, until when the rig may stay up, and never without its caution", async () => {
    const { page, problems } = await app.visit({ first: true });
    await openRigFile(page, mainLineAlone("old-rig.json"));
    await openWear(page);
    await page.getByText("Old clamp mark of 14 months lies 4.3 m inside the span from A.").waitFor();
    const until = page.getByRole("region", { name: "Take-down date" });
    // The verdict of the day is looked for first: until then there is no date, and nothing is said to hold.
    await until.getByText(/^No date yet|so far; the search goes on/).waitFor();
    expect(await until.textContent()).not.toMatch(/Holds|keeps what is required/);
    await until.getByText(/^Already below what is required on|^Take it down before/).waitFor({ timeout: WHOLE_SEARCH });
    const word = await until.locator("strong").first().textContent();
    await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "One rig" }).click();
    await page.getByRole("heading", { level: 2, name: word! }).waitFor();
    await openWear(page);
    expect(await page.getByRole("region", { name: "Cautions" }).textContent()).toContain("does not replace inspection");
    expect(await page.getByText("Invented for demonstration").count()).toBeGreaterThan(0);
    expect(problems).toEqual([]);
  }, 500_000);

  test("an entry moves by arrow keys, by mouse and in its form, and undo takes each back", async () => {
    const { page, problems } = await record();
    const falls = bar(page, /^31 May 2026: 50 falls/);
    await falls.focus();
    await page.keyboard.press("Shift+ArrowRight");
    await bar(page, /50 falls, 29 m to 37 m/).waitFor();
    await undo(page).click();
    await bar(page, /50 falls, 28 m to 36 m/).waitFor();

    // Over it first: that waits until it has its place and can be taken hold of.
    await bar(page, /50 falls, 28 m to 36 m/).hover();
    const box = (await bar(page, /50 falls, 28 m to 36 m/).boundingBox())!;
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => bar(page, /50 falls, 28 m to 36 m/).count()).toBe(0);
    await undo(page).click();
    await bar(page, /50 falls, 28 m to 36 m/).waitFor();

    const form = page.getByRole("region", { name: "Entries" });
    await form.getByRole("textbox", { name: "From", exact: true }).fill("30 m");
    await bar(page, /50 falls, 30 m to 36 m/).waitFor();

    await page.keyboard.press("Escape");
    const row = form.getByRole("button", { name: /50 falls, 30 m to 36 m/ });
    await expect.poll(() => row.evaluate((element) => element === document.activeElement)).toBe(true);
    await row.press("Enter");
    await form.getByRole("button", { name: "Remove", exact: true }).press("Enter");
    await expect.poll(() => bar(page, /50 falls, 30 m to 36 m/).count()).toBe(0);
    await undo(page).click();
    await bar(page, /50 falls, 30 m to 36 m/).waitFor();

    // Beside the rig the same steps go on, and say which document they belong to.
    await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "One rig" }).click();
    await page.getByRole("button", { name: /^Undo: wear record, / }).click();
    await page.getByRole("button", { name: /^Redo: wear record, / }).waitFor();
    await openWear(page);
    await bar(page, /50 falls, 28 m to 36 m/).waitFor();
    expect(problems).toEqual([]);
  });

  test("all strips zoom together by buttons, keys, wheel and two fingers; the span's ends stay named", async () => {
    const { page, problems } = await record({ hasTouch: true });
    const sight = page.getByRole("slider", { name: "Stretch of the webbing in sight" });
    const shown = async () => (await sight.getAttribute("aria-valuetext"))!.match(/[\d.]+/g)!.map(Number);
    const whole = await shown();
    const becomes = (test: (shown: number[]) => boolean) => expect.poll(async () => test(await shown())).toBe(true);

    await page.getByRole("button", { name: "See less of the webbing (+)" }).click();
    await becomes(([from, to]) => to! - from! < 0.6 * whole[1]!);
    const drawing = page.getByRole("group", { name: /from its marked end$/ });
    for (const end of ["◂ A at", "B at"]) await drawing.getByText(end).waitFor();
    await sight.press("Home");
    await becomes(([from]) => from === 0);
    await sight.press("+");
    await becomes(([from, to]) => to! - from! < 0.3 * whole[1]!);
    await sight.press("0");
    await becomes(([from, to]) => from === whole[0] && to === whole[1]);

    const box = (await drawing.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + 20);
    await page.keyboard.down("Control");
    await page.mouse.wheel(0, -300);
    await page.keyboard.up("Control");
    await becomes(([from, to]) => to! - from! < 0.5 * whole[1]!);
    await page.getByRole("button", { name: "See the whole webbing (0)" }).click();
    await becomes(([from, to]) => from === whole[0] && to === whole[1]);

    const touch = await page.context().newCDPSession(page);
    const fingers = (type: string, apart: number) =>
      touch.send("Input.dispatchTouchEvent", {
        type: type as "touchStart",
        touchPoints:
          type === "touchEnd"
            ? []
            : [-apart, apart].map((x, id) => ({ x: box.x + box.width / 2 + x, y: box.y + 20, id })),
      });
    await fingers("touchStart", 60);
    for (const apart of [90, 130, 180]) await fingers("touchMove", apart);
    await fingers("touchEnd", 0);
    await becomes(([from, to]) => to! - from! < 0.6 * whole[1]!);

    await page.getByRole("button", { name: "Show it" }).first().click();
    await becomes(([from, to]) => to! - from! < 0.5 * whole[1]!);
    expect(await violations(page)).toEqual([]);
    expect(problems).toEqual([]);
  });

  test("a day is moved along the calendar by keys, and the focus stays with its entry", async () => {
    const { page, problems } = await record();
    await page.getByRole("slider", { name: "Date of: 50 falls, 28 m to 36 m" }).focus();
    await page.keyboard.press("ArrowLeft");
    await page
      .getByRole("slider", { name: "Date of: 50 falls, 28 m to 36 m" })
      .and(page.locator("[aria-valuetext='30 May 2026']"))
      .waitFor();
    await page.waitForFunction(() =>
      document.activeElement?.getAttribute("aria-label")?.startsWith("Date of: 50 falls"),
    );
    expect(problems).toEqual([]);
  });

  test("a wrong value is told beside its field, and nothing computed is lost", async () => {
    const { page, problems } = await oldRig();
    await page.getByRole("button", { name: /50 falls/ }).click();
    const field = page.getByRole("region", { name: "Entries" }).getByRole("textbox", { name: "To", exact: true });
    await field.fill("400 m");
    await page
      .getByText(/400 m lies outside the webbing/)
      .first()
      .waitFor();
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    await page.getByText(/The verdict takes the record as it was before/).waitFor();
    await page.getByText("Old clamp mark of 14 months lies 4.3 m inside the span from A.").waitFor();
    expect(problems).toEqual([]);
  });

  test("record and tests are in the verdict by default, and one step leaves them out and takes them in again", async () => {
    const { page, problems } = await oldRig();
    const used = page.getByRole("region", { name: "In the verdict" });
    await used.getByText(/^State of .* by the wear record .*\d+ of \d+ break tests say something of it/).waitFor();
    await used.getByRole("button", { name: "Leave it out of the verdict" }).click();
    await page.getByText("No date: record and tests are left out of the verdict.").waitFor();
    await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "One rig" }).click();
    await page.getByRole("button", { name: "Take record and tests in" }).waitFor();
    await openWear(page);
    await page.getByRole("button", { name: "Use them in the verdict" }).click();
    await used.getByText(/^State of /).waitFor();
    expect(problems).toEqual([]);
  });

  test("what was written down is there after a reload", async () => {
    const { page, problems } = await record();
    await page.getByRole("button", { name: "Add an entry" }).click();
    await page.getByRole("textbox", { name: "Number of falls" }).fill("7");
    await bar(page, /7 falls, 20 m to 30 m/).waitFor();
    await kept(page, '"falls":7');
    await page.reload();
    await openWear(page);
    await bar(page, /7 falls, 20 m to 30 m/).waitFor();
    expect(problems).toEqual([]);
  });
});

describe("the break log", () => {
  const openLog = (page: Page) => page.getByRole("button", { name: "Break log", exact: true }).click();
  const choose = async (page: Page, name: string, text: string) => {
    await page.getByRole("button", { name: "Records" }).click();
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("menuitem", { name: /^Open a record or a break log/ }).click(),
    ]);
    await chooser.setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
  };

  test("shows doubts and characteristic values of every group, and a test typed in counts", async () => {
    const { page, problems } = await record();
    await openLog(page);
    const group = page.getByRole("region", { name: "webbing, Polyester webbing 25 mm, clamp mark, dry" });
    await group
      .getByText(/^\d+\.\d\d kN$/)
      .first()
      .waitFor();
    await group.getByText(/next to nothing about the scatter/).waitFor();
    await page.getByRole("button", { name: "Add a test" }).click();
    await page.getByRole("textbox", { name: "Material" }).fill("polyester-webbing-25");
    await page.getByRole("textbox", { name: "State", exact: true }).fill("clamp mark");
    await page.getByRole("button", { name: "Add to the log" }).click();
    await page.getByText(/^(✕ )?The load is empty/).waitFor();
    await page.getByRole("textbox", { name: "Load", exact: true }).fill("14.1");
    await page.getByRole("button", { name: "Add to the log" }).click();
    await group.getByRole("button", { name: "The 3 tests" }).waitFor();
    expect(problems).toEqual([]);
  });

  test("a table with names of its own is matched, with a preview, and remembered for the next one", async () => {
    const { page, problems } = await record();
    const own = (load: string) =>
      `Webbing;Piece;Condition;Max load;Ended\nPolyester webbing 25 mm;webbing;used;${load};Break\n`;
    await choose(page, "pulls.csv", own("6744,3"));
    const match = page.getByRole("region", { name: "Which column is which?" });
    await match.getByText("Still to be said: Wet or dry, Unit of the loads.").waitFor();
    const pick = async (label: string, option: string) => {
      await match.getByRole("combobox", { name: label }).click();
      await page.getByRole("option", { name: option, exact: true }).click();
    };
    for (const [column, word] of [
      ["Wet or dry", "dry"],
      ["Unit of the loads", "lbf"],
    ] as const) {
      await pick(`${column}, needed`, "the same for all");
      await pick(`${column}, for all rows`, word);
    }
    await match.getByText(/^Some words of the file have no meaning yet/).waitFor();
    await pick("“Break” in How it ended", "broke");
    await match.getByRole("cell", { name: "30.0 kN" }).waitFor();
    expect(await match.getByRole("cell", { name: "Polyester webbing 25 mm" }).count()).toBe(1);
    await still(page);
    expect(await violations(page)).toEqual([]);
    await match.getByRole("button", { name: "Take 1 test" }).click();
    await page.getByRole("heading", { name: "pulls" }).waitFor();
    await choose(page, "more.csv", own("7000"));
    await match.getByText(/^Matched as you matched/).waitFor();
    await match.getByRole("button", { name: "Leave the log as it is" }).click();
    // A bad row stands beside the good ones with its reason, and keeps all of them from being taken.
    await choose(page, "bad.csv", `${own("7000")}Polyester webbing 25 mm;webbing;used;much;Break\n`);
    await match.getByText(/^1 of 2 rows has a fault\. No row is taken, not even a good one/).waitFor();
    await match.getByRole("row", { name: /^2 .*31\.1 kN/ }).waitFor();
    await match.getByRole("row", { name: /^✕ 3 .*much.*Max load: / }).waitFor();
    expect(await match.getByRole("button", { name: "Take the tests" }).isDisabled()).toBe(true);
    await match.getByRole("button", { name: "Leave the log as it is" }).click();
    await page.getByRole("heading", { name: "pulls" }).waitFor();
    expect(problems).toEqual([]);
  });

  test("a test is changed in its row by the keys, into another group, and undo brings it back", async () => {
    const { page, problems } = await record();
    await openLog(page);
    const group = page.getByRole("region", { name: "webbing, Polyester webbing 25 mm, clamp mark, dry" });
    await group.getByRole("button", { name: "The 2 tests" }).press("Enter");
    const row = group.getByRole("button", { name: /^20 Jun 2026: broke at / }).first();
    const words = (await row.textContent())!;
    await row.press("Enter");
    const form = group.getByRole("form", { name: "Change this test" });
    // Escape leaves the test as it was, and the keyboard is back on its row.
    await form.getByRole("textbox", { name: "Load", exact: true }).fill("99");
    await page.keyboard.press("Escape");
    await form.waitFor({ state: "detached" });
    expect(await row.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await row.textContent()).toBe(words);

    await row.press("Enter");
    await form.getByRole("textbox", { name: "Load", exact: true }).fill("much");
    await form.getByText(/"much" is not a number/).waitFor();
    await page.keyboard.press("Enter");
    expect(await form.getByRole("textbox", { name: "Load", exact: true }).getAttribute("aria-invalid")).toBe("true");
    await form.getByRole("textbox", { name: "Load", exact: true }).fill("14.4");
    await form.getByRole("textbox", { name: "State", exact: true }).fill("fall zone");
    await page.keyboard.press("Enter");
    const other = page.getByRole("region", { name: "webbing, Polyester webbing 25 mm, fall zone, dry" });
    const moved = other.getByRole("button", { name: /broke at 14.4 kN/ }).first();
    await moved.waitFor();
    await page.waitForFunction(() => document.activeElement?.textContent?.includes("broke at 14.4 kN"));
    await other.getByRole("button", { name: "The 5 tests" }).waitFor();

    await undo(page).click();
    await group.getByRole("button", { name: "The 2 tests" }).waitFor();
    await group.getByRole("button", { name: words }).waitFor();
    await group
      .getByRole("button", { name: /^Remove this test/ })
      .first()
      .click();
    await group.getByRole("button", { name: "The test", exact: true }).waitFor();
    await undo(page).click();
    await group.getByRole("button", { name: "The 2 tests" }).waitFor();
    expect(problems).toEqual([]);
  });

  test("a file with bad rows is refused row by row, and the log stays as it was", async () => {
    const { page, problems } = await record();
    await openLog(page);
    const good = await readFile(new URL("../../demo-data/break-log.csv", import.meta.url), "utf8");
    await choose(page, "bad.csv", good.replace("29.4", "-29.4").replace("20.7", "much"));
    const faults = page.getByRole("alert", { name: "Faults of the file" });
    await faults.waitFor();
    await expect.poll(() => faults.getByRole("listitem").count()).toBe(2);
    expect(await faults.textContent()).toMatch(/Line 10, result/);
    await page.getByText("25 tests in 10 groups", { exact: false }).waitFor();
    expect(problems).toEqual([]);
  });
});

describe("for everybody", () => {
  for (const [size, viewport] of Object.entries({ wide: WIDE, phone: PHONE })) {
    test(`axe finds nothing, ${size}, light or dark`, async () => {
      const { page, problems } = await record({ viewport }, size === "phone");
      // What was added is in sight, wherever its place in the list is, and the keyboard is in its form.
      await page.getByRole("button", { name: "Add an entry" }).click();
      const happened = page.getByRole("combobox", { name: "What happened" });
      await expect.poll(() => happened.evaluate((one) => one === document.activeElement)).toBe(true);
      await still(page);
      const { y, height } = (await happened.boundingBox())!;
      expect([y > 90, y + height < viewport.height - 90]).toEqual([true, true]);
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: /50 falls/ }).click();
      expect(await violationsInThemes(page)).toEqual([]);
      await page.getByRole("button", { name: "Break log", exact: true }).click();
      await page
        .getByText(/next to nothing about the scatter/)
        .first()
        .waitFor();
      expect(await violationsInThemes(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      expect(problems).toEqual([]);
    });
  }
});
