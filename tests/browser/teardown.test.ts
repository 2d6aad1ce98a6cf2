/** A line comes down: from its record to the plan, the sheet, the results typed at the machine, the log, and what was learnt. */
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type App, PHONE, sharedApp, violations } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

const pieces = (page: Page) => page.getByRole("form", { name: /^Result of P\d+$/ });
const learnt = (page: Page) => page.getByRole("region", { name: "What the results taught so far" });

/** The old demo rig with its record, on a phone. */
async function openTeardown(page: Page): Promise<void> {
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: "Demo: an old rig" }).click();
  await page.getByRole("button", { name: "Views" }).click();
  await page.getByRole("menuitem", { name: /^Wear/ }).click();
  await page.getByRole("button", { name: "Teardown", exact: true }).click();
}

async function keep(page: Page, load: string): Promise<void> {
  const left = await pieces(page).count();
  await pieces(page).first().getByRole("textbox", { name: "kN" }).fill(load);
  await pieces(page).first().getByRole("button", { name: "Keep result" }).click();
  await expect.poll(() => pieces(page).count()).toBe(left - 1);
}

describe("a teardown on a phone", () => {
  test("goes from the record to the plan, the sheet, the results, what they taught, and the break log", async () => {
    const { page, problems } = await app.visit({ viewport: PHONE, hasTouch: true, isMobile: true });
    await openTeardown(page);
    await page.getByRole("combobox", { name: "Pulls that you have" }).selectOption("8");
    await page.getByRole("heading", { name: /: 8 pieces for 8 pulls$/ }).waitFor();
    expect(await pieces(page).count()).toBe(8);
    expect(await learnt(page).count()).toBe(0);

    await page.getByRole("button", { name: "Print the sheet" }).click();
    const sheet = page.frameLocator("iframe[title='Sheet to print']");
    await sheet.getByText("P1", { exact: true }).first().waitFor({ state: "attached" });

    await pieces(page).first().getByRole("textbox", { name: "kN" }).fill("twenty");
    await pieces(page).first().getByRole("button", { name: "Keep result" }).click();
    await page.getByText('"twenty" is not a number; write the load in kN, without the unit.').waitFor();
    await keep(page, "26");
    await keep(page, "18,5");
    await page.getByText("✓ In the break log: broke, 18.5 kN").waitFor();
    expect(await page.getByRole("heading", { name: /: 8 pieces for 8 pulls$/ }).count()).toBe(1);

    await page.getByRole("button", { name: "What 2 results taught" }).click();
    await learnt(page).getByText("2 of 2 results feed a factor of this rig.").waitFor();
    expect(await learnt(page).getByRole("table").count()).toBe(2);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBe(PHONE.width);
    expect(await violations(page)).toEqual([]);

    await page.getByRole("button", { name: "Break log", exact: true }).click();
    const log = page.getByRole("main", { name: "Break log" });
    await log.getByText(/^27 tests in /).waitFor();
    await log.getByRole("button", { name: "Add a test" }).click();
    for (const field of ["Months in a clamp", "Months that stitching hung outside"])
      await log.getByRole("textbox", { name: field }).waitFor();
    await log.getByRole("combobox", { name: "Knot" }).waitFor();

    // Undone, the piece can be typed again.
    await page.getByRole("button", { name: /^Undo: / }).click();
    await page.getByRole("button", { name: "Teardown", exact: true }).click();
    await page.getByRole("button", { name: "What 1 result taught" }).waitFor();
    expect(problems).toEqual([]);
  });
});
