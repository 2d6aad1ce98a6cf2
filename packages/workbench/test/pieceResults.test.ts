/** The teardown's page without its page: the plan from the record as written, and typed results as rows of the log. */
import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import type { Teardown } from "@secondline/strength";
import { beforeAll, describe, expect, test } from "vitest";
import { isResult, NOTHING_TYPED, pieceResultOf, readTyped } from "../src/wear/pieceResults.ts";
import { plan } from "../src/wear/teardown.ts";

const demo = (name: string) => readFileSync(new URL(`../../../demo-data/${name}`, import.meta.url), "utf8");
const record: unknown = JSON.parse(demo("old-rig-wear.json"));

let found: Teardown;
beforeAll(() => {
  const reading = readRig(demo("old-rig.json"));
  if (!reading.ok) throw new Error("the demonstration rig is not sound");
  const answer = plan({ rig: reading.rig, record, on: "2026-11-10", pulls: 4, tests: [] });
  if (!answer.ok) throw new Error("there is no plan");
  found = answer.teardown;
}, 120_000);

describe("a result typed beside a piece", () => {
  test("becomes a row of the break log that says where it comes from, and is found again", () => {
    const piece = found.pieces.find(({ cuts }) => cuts.length > 0)!;
    const reading = readTyped(found, piece, { ...NOTHING_TYPED, result: " 21,5 ", failure_place: "at the drum" });
    if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
    expect(reading.test).toMatchObject({
      date: "2026-11-10",
      material: piece.stock!.id,
      note: `piece ${piece.id}`,
      failurePlace: "at the drum",
      result: { kind: "exact", value: 21_500 },
      invented: true,
    });
    expect(pieceResultOf([reading.test], found, piece)).toBe(reading.test);
    expect(isResult(reading.test, "2026-11-10")).toBe(true);
    expect(isResult(reading.test, "2026-11-11")).toBe(false);
    expect(pieceResultOf([reading.test], found, found.pieces.find((one) => one !== piece)!)).toBeUndefined();
  });

  test("without a number is refused with its reason, and an upper load counts between two loads only", () => {
    const [piece] = found.pieces;
    const empty = readTyped(found, piece!, NOTHING_TYPED);
    expect(empty.ok ? [] : empty.faults.map(({ column }) => column)).toEqual(["result"]);
    const typed = { ...NOTHING_TYPED, result: "9", result_to: "10" };
    expect(readTyped(found, piece!, typed)).toMatchObject({ test: { result: { kind: "exact", value: 9000 } } });
    const between = readTyped(found, piece!, { ...typed, outcome: "broke between" });
    expect(between).toMatchObject({ test: { result: { kind: "between", from: 9000, to: 10_000 } } });
  });
});

test("a record with faults gives no plan", () => {
  const reading = readRig(demo("old-rig.json"));
  if (!reading.ok) throw new Error("the demonstration rig is not sound");
  expect(() => plan({ rig: reading.rig, record: {}, on: "2026-11-10", pulls: 4, tests: [] })).toThrow("has faults");
});
