/** `docs/EVIDENCE.md` and the summary that the app shows, from the kept records and the table of constants. */
import { readdirSync, readFileSync } from "node:fs";
import { CONSTANTS, type ConstantStatus } from "@secondline/strength";
import type { Kept } from "./evidence.ts";
import { type Kind, SOURCES, type Source, type SourceKey } from "./sources.ts";

const folder = new URL("kept/", import.meta.url);
export const keptNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json") && name !== "catches.json")
  .map((name) => name.replace(".json", ""))
  .sort();

export function allKept(): readonly Kept[] {
  return keptNames.flatMap((name) => JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8")) as Kept[]);
}

/** Kinds whose numbers neither this code nor a formula that we evaluated has produced. */
const OUTSIDE: readonly Kind[] = ["printed", "second hand", "from memory", "other program"];
const STATUSES: readonly ConstantStatus[] = ["published", "seen second hand", "from memory", "assumed"];

export interface Counts {
  /** Checks by kind; a table that is checked over many n counts once. */
  readonly kinds: Readonly<Record<Kind, number>>;
  /** Checks of outside origin, and the sources they are from. */
  readonly outside: number;
  readonly outsideSources: number;
  /** Checks against the one program that solves whole falls. */
  readonly lineProgram: number;
  readonly disagree: number;
  readonly constants: Readonly<Record<ConstantStatus, number>>;
}

export function countsOf(kept: readonly Kept[]): Counts {
  const count = (kind: Kind) => kept.filter((one) => one.kind === kind).length;
  const outside = kept.filter(({ kind }) => OUTSIDE.includes(kind));
  const rows = [...CONSTANTS.values()];
  const status = (wanted: ConstantStatus) => rows.filter((row) => row.status === wanted).length;
  return {
    kinds: {
      printed: count("printed"),
      "second hand": count("second hand"),
      "from memory": count("from memory"),
      "other program": count("other program"),
      computed: count("computed"),
    },
    outside: outside.length,
    outsideSources: new Set(outside.map(({ source }) => source)).size,
    lineProgram: kept.filter(({ source }) => source === "lineProgram").length,
    disagree: kept.filter(({ disagrees }) => disagrees !== undefined).length,
    constants: Object.fromEntries(STATUSES.map((one) => [one, status(one)])) as Counts["constants"],
  };
}

interface OfSource extends Source {
  readonly checks: number;
  /** Largest share of a tolerance that is used [-]; of those that agree. */
  readonly most: number;
  readonly disagree: number;
}

/** What the app shows: the counts, and a line for each source. */
export interface Summary {
  readonly counts: Counts;
  readonly sources: readonly OfSource[];
}

export function summaryOf(kept: readonly Kept[]): Summary {
  const sources = sourcesIn(kept).map(([key, ofSource]) => {
    const agree = ofSource.filter(({ disagrees }) => disagrees === undefined);
    const most = Math.max(...agree.map(({ used }) => used));
    return { ...SOURCES[key], checks: ofSource.length, most, disagree: ofSource.length - agree.length };
  });
  return { counts: countsOf(kept), sources };
}

/** The records of each source that has some, in the order of the list of sources. */
function sourcesIn(kept: readonly Kept[]): readonly (readonly [SourceKey, readonly Kept[]])[] {
  return (Object.keys(SOURCES) as SourceKey[]).flatMap((key) => {
    const own = kept.filter(({ source }) => source === key);
    return own.length === 0 ? [] : [[key, own] as const];
  });
}

const cell = (text: string) => text.replaceAll("|", "\\|");

/** A number to a tenth of its tolerance. */
function shown(x: number, tolerance: number): string {
  if (x === 0) return "0";
  const digits = Math.ceil(Math.log10(Math.abs(x)) - Math.log10(tolerance)) + 2;
  return String(Number(x.toPrecision(Math.min(10, Math.max(2, digits)))));
}

function expectedText({ expected, kind, tolerance }: Kept): string {
  if (typeof expected !== "number") return `${shown(expected[0], tolerance)} to ${shown(expected[1], tolerance)}`;
  return kind === "printed" ? String(expected) : shown(expected, tolerance);
}

function row(one: Kept): string {
  const many = one.of > 1 ? ` (worst of ${one.of})` : "";
  const where = one.where === undefined ? "" : `; ${one.where}`;
  return `| ${[
    `${one.quantity}${many}${where}`,
    one.kind,
    `${expectedText(one)}${one.unit === "" ? "" : ` ${one.unit}`}`,
    shown(one.got, one.tolerance),
    String(one.off),
    `${one.tolerance}: ${one.why}`,
    one.disagrees === undefined ? `${Math.round(100 * one.used)} %` : `**does not agree** (${one.disagrees})`,
  ]
    .map(cell)
    .join(" | ")} |`;
}

const HEAD =
  "| quantity | known | expected | found | difference | tolerance, and why | used |\n| --- | --- | --- | --- | --- | --- | --- |";

function partOf(kept: readonly Kept[], part: Source["part"]): string {
  return sourcesIn(kept)
    .filter(([key]) => SOURCES[key].part === part)
    .map(([key, own]) => {
      const { title, year } = SOURCES[key];
      return `### ${title} (${year})\n\n${HEAD}\n${own.map(row).join("\n")}`;
    })
    .join("\n\n");
}

function strengths(): string {
  const rows = [...CONSTANTS].map(
    ([key, { value, unit, status, meaning }]) =>
      `| \`${key}\` | ${value}${unit === "" ? "" : ` ${unit}`} | ${status} | ${cell(meaning)} |`,
  );
  return `| factor or number | value | known | what it is, and its source |\n| --- | --- | --- | --- |\n${rows.join("\n")}`;
}

/** The page, as Markdown. */
export function evidencePage(kept: readonly Kept[]): string {
  const { kinds, outside, outsideSources, lineProgram, disagree, constants } = countsOf(kept);
  return `# How do we know?

The tests write this page (\`npm run evidence\`). A test fails when the page does not say what the tests find.

**The count.** ${outside} checks are against numbers from outside, of ${outsideSources} sources: ${kinds.printed} printed, ${kinds["second hand"]} second hand, ${kinds["from memory"]} from memory,
${kinds["other program"]} by other programs. ${lineProgram} of these are against one program of another author, which solves whole falls as this one does; ${outside - lineProgram} are not. ${kinds.computed} more checks are
against numbers that we computed ourselves from published equations: they find slips in the code, not in the choice of the equation. A table that is
checked over many entries counts once, and repeated runs of one case count once. ${disagree} checks are known not to agree; each says so and why. Of the ${
    constants.published + constants["seen second hand"] + constants["from memory"] + constants.assumed
  } numbers that
strengths rest on, ${constants.published} are published, ${constants["seen second hand"]} seen second hand, ${constants["from memory"]} from memory and ${constants.assumed} assumed. **No check is against a fall that somebody measured.**

A number is _printed_ (we read it in the source), _second hand_ (we read it where somebody else quotes it), _from memory_ (we did not look it up
again), of an _other program_ (which we did not write), or _computed_ (by us, from an equation that the source names).
_Used_ is the difference over the tolerance. Of a table, the entry with the largest share stands here.

## Theory

Closed forms, printed examples and statistics.

${partOf(kept, "theory")}

## Other programs

The same problem, solved by a program that is not ours. A catch on a backup is chaotic: a gram more on the walker moves a load by 5 to 15 %. So
falls that are caught are compared as ensembles, runs that differ a little. The picture has a row for each: our runs as a band with their mean, the
other program's as dots, all over the other program's mean. \`npm run test:long\` makes these runs anew.

![Loads of eleven ensembles: our runs as bands, the other program's as dots](evidence-catches.svg)

${partOf(kept, "programs")}

## Strengths

What a part still holds is the rated strength times factors. This is every number in them, from the table that [DERATING.md](../packages/strength/DERATING.md)
is made from. Most are assumed: own break tests take their place.

${strengths()}

## Validation

**None yet against a measured fall.** Nobody has given us a recording of a fall into a rig that was written down. Everything above says that the equations
are solved well. It does not say that they are the right ones for webbing, a body and an anchor on a rock.

What would count: the recording of a load cell at a named place of a rig, at 1000 values a second or more, with the rig's document (webbing,
length, tension, leash, backup), the walker's mass, and where the fall began. \`secondline measured RECORDING.csv RIG.json\` holds such a
recording against the model; [MEASURED.md](MEASURED.md) has the format and says what the comparison tells. One recording is one check. A recording
that the model misses counts as much as one that it meets.
`;
}
