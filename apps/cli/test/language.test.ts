/** The terminal in a language that marks every sentence: what was left behind in the code shows. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { INPUT_IDS } from "@secondline/scenarios";
import { LOG_COLUMNS } from "@secondline/strength";
import { lowered } from "@secondline/words";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, KEPT, repository, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command("Pseudo");
}, 60_000);

const COMMANDS =
  "check new compare sweep chances study merge report card strength wear teardown measured validate solve".split(" ");
/** Names that are typed as they are: of commands, of choices, of inputs, of plots, of what a sweep takes. */
const TYPED = [
  ...[...COMMANDS, ...INPUT_IDS, "secondline", "results", "quick", "standard", "fine", "full", "margin"],
  ...["fit", "residuals", "retention", "connections", "months"],
  // A part by its id, as a record has it.
  "leash",
  // Columns of a log, as its file has them.
  ...LOG_COLUMNS.flatMap((column) => column.split("_")),
];
/** Options, events, files, paths in a rig's file, and the name of the place before what is wrong there. */
const NAMES_OF_THINGS =
  /--[a-z-]+|\b[\w.]+@[\w.,@]+|\b[\w-]+\.(?:json|csv|html)\b|\b(?:backup|main|leash|walker|connection|anchor[AB])\.[\w.]+|\b[\w.]+(?=: ⟦| \(⟦)/g;

/** Names and notes of the demo rigs and of the example log are in the user's language. */
const FILES = ["sound-rig.json", "old-rig.json", "old-rig-wear.json", "break-log.csv"].map(demo);
const short = join(repository, "tests/cluster/data/short-rig.json");
const OWN_TEXTS = [...FILES, short]
  .flatMap((name) => {
    const text = readFileSync(name, "utf8");
    return name.endsWith(".csv") ? text.split(/[,\n]/) : textsIn(JSON.parse(text));
  })
  .filter((text) => /\p{L}{2}/u.test(text) && /[\p{Lu}\s-]/u.test(text))
  .sort((a, b) => b.length - a.length);
/** How pieces failed, in the words of whoever pulled them. */
const [LOG_HEAD = [], ...LOG_ROWS] = readFileSync(demo("break-log.csv"), "utf8")
  .split("\n")
  .filter((line) => !line.startsWith("#"))
  .map((line) => line.split(","));
/** What was pulled, and the state it was in, in their words too. */
const PULLED = LOG_ROWS.flatMap((cells) =>
  ["part", "state"].flatMap((name) => cells[LOG_HEAD.indexOf(name)]?.split(" ") ?? []),
);
const FAILURES = LOG_ROWS.flatMap((cells) => cells[LOG_HEAD.indexOf("failure_mode")] ?? []);

/** In a table a name may stand in several lines. */
const NAMES = OWN_TEXTS.filter((text) => /^(?:Left|Middle|Right) bolt$|ring$/.test(text)).flatMap((name) =>
  name.split(" "),
);

function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** A text where it is no part of a longer word. */
const whole = (text: string) => new RegExp(`(?<!\\p{L})${text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?!\\p{L})`, "gu");

/** A day as the language has it; a month that a narrow column parted from it. */
const DAY = /\b\d{1,2}\. \p{L}+\.? \d{4}\b|\bNov\./gu;
/** A day as files have it. */
const ISO_DAY = /\b\d{4}-\d{2}-\d{2}\b/g;
/** In an example of a call. */
const TYPED_DAY = /--on \S+/g;

/** Words with a vowel as English writes it, and days of files: they were said outside the words. `typed`: what the call itself had. */
function strayIn({ out, err }: Finished, typed: readonly string[]): readonly string[] {
  let rest = `${out} ${err}`.replace(/\s+/g, " ");
  const asTyped = typed.filter((text) => text.length > 2).sort((a, b) => b.length - a.length);
  for (const one of [...asTyped, ...OWN_TEXTS, ...OWN_TEXTS.map(lowered)]) rest = rest.replace(whole(one), " ");
  const words =
    rest
      .replace(DAY, " ")
      .replace(NAMES_OF_THINGS, " ")
      .match(/[\p{L}\d]*[aeiou][\p{L}\d]+/giu) ?? [];
  return [...words, ...(rest.replace(TYPED_DAY, " ").match(ISO_DAY) ?? [])].filter(
    (word) => ![...TYPED, ...NAMES, ...PULLED, ...FAILURES].includes(word),
  );
}

const folder = scratch();
const file = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const few = ["--set", "quick", "--accuracy", "quick", ...KEPT];
const [rig, old, record, log] = FILES as [string, string, string, string];

const CALLS: readonly (readonly string[])[] = [
  [],
  ...COMMANDS.map((name) => (name === "merge" ? ["study", "merge", "--help"] : [name, "--help"])),
  ["check", rig, ...few, "--all", "--why", "--singles"],
  ["check", old, "--wear", record, "--on", "2026-07-01", ...few, "--judge", "leash=0.7: Hm"],
  ["compare", rig, old, ...few],
  ["chances", rig, "--what-if", "fall@0.5", "--runs", "32", "--accuracy", "quick", ...KEPT],
  ["sweep", short, "--over", "walker.mass=60kg..90kg", "--points", "3", "--what-if", "fall@0.5", "--accuracy", "quick"],
  ["strength", log],
  ["wear", old, "--wear", record, "--on", "2026-07-01"],
  ["teardown", old, "--wear", record, "--on", "2026-11-10"],
  ["teardown", old, "--wear", record, "--on", "2026-11-10", "--results", log],
  ["study", join(repository, "tests/cluster/data/plan.json"), "--cost"],
  ["card", short, "--out", join(folder, "card.html"), "--on", "2026-07-01", ...few],
  ["validate", rig],
  ["validate", log],
];

/** Each is refused. */
const MISTAKES: readonly (readonly string[])[] = [
  ["chek"],
  ["check"],
  ["check", rig, "--jsn"],
  ["check", rig, "--set", "some"],
  ["check", rig, "--jobs", "0"],
  ["check", rig, "--cache", ""],
  ["check", rig, "--what-if", "fall@2"],
  ["check", rig, "--judge", "x"],
  ["check", rig, "--judge", "leash=3:x"],
  ["check", rig, "--on", "2026"],
  ["check", rig, "--require", "--set", "quick"],
  ["chances", rig, "--spread", "x"],
  ["compare", rig],
  ["sweep", rig, "--over", "x=1..2"],
  ["strength", log, "--content", "80"],
  ["strength", log, "--dark"],
  ["strength", log, "--table", join(folder, "t.csv"), "--figure", "x"],
  ["new", join(folder, "new.json"), "--set", "span=-1"],
  ["new", join(folder, "new.json"), "--set", "tension=99kN"],
  ["report", rig, "--out", ""],
  ["report", rig, "--out", folder],
  ["report", rig, "--out", rig],
  ["study", "merge", folder, "--out", join(folder, "merged")],
  ["validate", join(folder, "x.json")],
  ["validate", folder],
  ["validate", file("list.json", "[]")],
  ["validate", file("few.json", '{"secondline":"rig/1"}')],
  ["validate", file("broken.json", '{"a":')],
  ["validate", file("wide.json", "\ufffd")],
  ["strength", file("odd.csv", "a,b\n1,2\n")],
  ["measured", file("odd.txt", "# what-if: fall@0.5\ntime [s],force [kN]\n0,1\n"), rig],
];

const inWords = (args: readonly string[]) => args.map((one) => one.replace(/^.*[/\\]/, "")).join(" ");

describe("a second language", () => {
  it.each(CALLS.map((args) => [inWords(args), args] as const))(
    "is all that is said by: secondline %s",
    async (_, args) => {
      const said = await secondline(...args);
      expect(said.out + said.err).toMatch(/⟦.*⟧/s);
      expect(strayIn(said, args)).toEqual([]);
    },
  );

  it("names the webbings of its library in that language, and somebody's own one as they named it", async () => {
    const rig = JSON.parse(readFileSync(short, "utf8"));
    rig.stocks = [{ id: "own-red", like: "polyester-webbing-25", name: "Red tape" }];
    rig.main.sections[0].stock = "own-red";
    const own = file("own.json", JSON.stringify(rig));
    const [page, card] = ["own-report.html", "own-card.html"].map((name) => join(folder, name)) as [string, string];
    expect((await secondline("report", own, "--out", page, ...few)).status).toBe(0);
    expect((await secondline("card", own, "--out", card, "--on", "2026-07-01", ...few)).status).toBe(0);
    expect(readFileSync(page, "utf8")).toContain("Red tape");
    for (const text of [page, card].map((one) => readFileSync(one, "utf8"))) {
      expect(text).toMatch(/⟦Dýýñáámííç ŕŕóópéé 10 mm⟧/);
      expect(text).not.toMatch(/(?:polyester|HMPE) webbing|dynamic rope/i);
    }
  });

  it.each(MISTAKES.map((args) => [inWords(args), args] as const))("refuses: secondline %s", async (_, args) => {
    const said = await secondline(...args);
    expect(said.status).toBe(2);
    expect(said.err).toMatch(/⟦.*⟧/s);
    expect(strayIn(said, args)).toEqual([]);
  });
});
