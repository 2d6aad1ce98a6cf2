/** What a newcomer does: looks, begins a rig, answers eight questions, reads its verdict. */
import type { Driven } from "./driven.ts";
import { until } from "./until.ts";

/** Patience with a search on a slow machine [ms]. */
const PATIENCE_WITH_SEARCH = 900_000;

export interface Told {
  /** What the page says of the demo rig's first fall. */
  readonly demoFall: string;
  /** The own rig's verdict when everything has been looked at. */
  readonly verdict: string;
  /** Its head, with the values that are not confirmed. */
  readonly head: string;
  /** Person and parts with their margins. */
  readonly parts: readonly string[];
  /** Of a leash fall on it: drop and pull in a sentence, loads and drop in a table. */
  readonly fall: string;
  readonly loads: string;
}

/** Walks from the first sight of an opened page to the own rig's whole verdict. */
export async function walkAsNewcomer(page: Driven): Promise<Told> {
  await until("the first verdict", () => seen(page, "header[data-verdict]"));
  const demoFall = await fallInSight(page);
  await page.click("button", "File");
  await page.click("menuitem", "New rig");
  await answerQuestions(page);
  await page.click("button", "Make this rig");
  await until("the own rig's name", async () => (await text(page, "h1")) === "Quarry line");
  await until("its whole verdict", () => seen(page, "[data-whole=true]"), PATIENCE_WITH_SEARCH);
  await page.click("combobox", "What happens");
  await page.click("option", "the walker falls into the leash");
  const fall = await fallInSight(page);
  return {
    demoFall,
    fall,
    verdict: await page.ask(() => document.querySelector("header[data-verdict]")!.getAttribute("data-verdict")!, ""),
    head: await text(page, "header[data-verdict]"),
    parts: await page.ask(
      () => [...document.querySelectorAll("[data-part]")].map((row) => row.textContent?.replace(/\s+/g, " ") ?? ""),
      "",
    ),
    loads: await text(page, "[aria-label='Largest values of this fall']"),
  };
}

/** Eight questions: five are typed, one is left open, two are said to be right in one step each. */
async function answerQuestions(page: Driven): Promise<void> {
  await page.type("Name", "Quarry line");
  await page.type("Span", "62 m");
  await page.type("Lowest ground, below A", "40 m");
  await page.click("combobox", "Shape");
  await page.click("option", "Steep walls, level floor");
  await page.type("Tension", "2 kN");
  await page.type("Connections", "every 12 m");
  // The fourth and fifth: backup, anchors.
  await page.click("checkbox", "Right as it stands", 4);
  await page.type("Length", "1.5 m");
  await page.click("button", "All of it is new");
}

/** The fall in sight is of this rig and what-if: its sentence, when it is there. */
function fallInSight(page: Driven): Promise<string> {
  return until("a fall in sight", async () => {
    const said = await text(page, "[data-testid=answer]");
    return said.includes("kN") ? said : undefined;
  });
}

const seen = (page: Driven, selector: string): Promise<boolean> =>
  page.ask((selector) => document.querySelector(selector) !== null, selector);

/** Text of the first that a selector finds; empty where there is none. */
export const text = (page: Driven, selector: string): Promise<string> =>
  page.ask((selector) => document.querySelector(selector)?.textContent?.replace(/\s+/g, " ").trim() ?? "", selector);
