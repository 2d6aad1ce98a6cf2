/** The page of evidence and the app's summary say what the kept records say. Written anew by `npm run evidence`. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { CONSTANTS } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { keptCatches } from "./catches.ts";
import { difference, type Kept, recordOf, WRITES } from "./evidence.ts";
import { allKept, countsOf, evidencePage, keptNames, summaryOf } from "./page.ts";
import { catchesPicture } from "./picture.ts";

const root = new URL("../../", import.meta.url);

/** Lines break as the system pleases where git checks a file out. */
function isWritten(path: string, text: string): void {
  const file = new URL(path, root);
  if (WRITES) writeFileSync(file, text);
  expect(readFileSync(file, "utf8").replaceAll("\r\n", "\n") === text, `${path} is stale: npm run evidence`).toBe(true);
}

describe("the evidence", () => {
  it("is in docs/EVIDENCE.md as the tests found it", () => isWritten("docs/EVIDENCE.md", evidencePage(allKept())));
  it("is drawn as the tests found it", () => isWritten("docs/evidence-catches.svg", catchesPicture(keptCatches())));
  it("is summed up for the app", () =>
    isWritten(
      "packages/workbench/src/evidence/evidence.json",
      `${JSON.stringify(summaryOf(allKept()), undefined, 2)}\n`,
    ));

  it("is kept for the test files that make it, and no others", () => {
    const tests = new URL("tests/", root);
    const made = ["published", "reference", "ensembles"].flatMap((folder) =>
      readdirSync(new URL(`${folder}/`, tests))
        .filter((name) => name.endsWith(".ts"))
        .flatMap((name) => {
          const text = readFileSync(new URL(`${folder}/${name}`, tests), "utf8");
          const told = /= evidence\("([^"]+)"\)/.exec(text)?.[1];
          if (told !== undefined) expect(text, name).toMatch(/^\s*keeps\(\);/m);
          return told ?? [];
        }),
    );
    expect(made.sort()).toEqual([...keptNames]);
  });

  it("has at least 80 checks against numbers from outside, and says that none is a measured fall", () => {
    expect(countsOf(allKept()).outside).toBeGreaterThanOrEqual(80);
    expect(evidencePage(allKept())).toContain("None yet against a measured fall");
  });

  it("has a row for every number that strengths rest on", () => {
    const page = evidencePage(allKept());
    expect(CONSTANTS.size).toBeGreaterThan(100);
    for (const key of CONSTANTS.keys()) expect(page).toContain(`| \`${key}\` |`);
    expect(Object.values(countsOf(allKept()).constants).reduce((sum, n) => sum + n, 0)).toBe(CONSTANTS.size);
  });

  it("uses no more than its tolerances, but where it says why", () => {
    for (const one of allKept()) if (one.disagrees === undefined) expect(one.used, one.quantity).toBeLessThanOrEqual(1);
  });
});

describe("a record", () => {
  const check = { source: "codeAster", quantity: "sag", unit: "m", share: 0.01, why: "rounded" } as const;
  const kept: Kept = recordOf({ ...check, pairs: [[1.004, 1]] });

  it("is the entry of a table that uses most of its tolerance, or the one that is no number", () => {
    const pairs = [
      [1.001, 1],
      [2.016, 2],
      [3, 3],
    ] as const;
    expect(recordOf({ ...check, pairs })).toMatchObject({ got: 2.016, of: 3, used: 0.8 });
    expect(recordOf({ ...check, pairs: [...pairs, [Number.NaN, 4]] }).used).toBeNaN();
  });

  it("takes a range by its middle", () => {
    expect(recordOf({ ...check, pairs: [[3, [0, 4]]] })).toMatchObject({ off: 1, tolerance: 2, used: 0.5 });
  });

  it("is stale when the number, what was expected, the tolerance or its reason is another", () => {
    expect(difference(kept, kept)).toBeUndefined();
    expect(difference(recordOf({ ...check, pairs: [[1.0041, 1]] }), kept)).toBeUndefined();
    expect(difference(recordOf({ ...check, pairs: [[1.0045, 1]] }), kept)).toMatch(/is kept as 1.004/);
    expect(difference(recordOf({ ...check, pairs: [[1.004, 1.001]] }), kept)).toMatch(/other words/);
    expect(difference(recordOf({ ...check, share: 0.02, pairs: [[1.004, 1]] }), kept)).toMatch(/other words/);
    expect(difference(recordOf({ ...check, why: "so", pairs: [[1.004, 1]] }), kept)).toMatch(/other words/);
    expect(difference(kept, undefined)).toBe("is not kept");
  });
});
