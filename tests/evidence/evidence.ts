/**
 * Checks against outside sources, and the record of them that `docs/EVIDENCE.md` and the page "How do we know?" are made from. A test that
 * checks a number against a source calls `check`; the last test of its file compares what was found with `kept/NAME.json`. So a record
 * that is not what the tests find today fails. `npm run evidence` writes the records anew.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { type Kind, SOURCES, type SourceKey } from "./sources.ts";

/** Writes records instead of comparing with them. */
export const WRITES = process.env.SECONDLINE_EVIDENCE === "write";

/** One check, as it is kept. Numbers in the unit that is named. */
export interface Kept {
  readonly source: SourceKey;
  readonly where?: string;
  readonly kind: Kind;
  readonly quantity: string;
  readonly unit: string;
  /** How many numbers of one table this stands for; the one that used most of its tolerance is shown. */
  readonly of: number;
  readonly expected: number | readonly [least: number, most: number];
  readonly got: number;
  /** `got` less what was expected; to the middle of a range. */
  readonly off: number;
  /** Largest difference that passes, in the unit of the quantity. */
  readonly tolerance: number;
  readonly why: string;
  /** Share of the tolerance that is used [-]; above 1 only where `disagrees` says why that is known. */
  readonly used: number;
  readonly disagrees?: string;
}

export interface Check {
  readonly source: SourceKey;
  /** Where in the source. */
  readonly where?: string;
  /** Only where it is not that of the source. */
  readonly kind?: Kind;
  readonly quantity: string;
  readonly unit?: string;
  /** Pairs of what was found and what was expected, or of what was found and the range in which it must lie. */
  readonly pairs: readonly (readonly [got: number, expected: number | readonly [least: number, most: number]])[];
  /** Largest relative difference [-], or the largest absolute one; a range needs neither. */
  readonly share?: number;
  readonly within?: number;
  /** Why the tolerance is what it is. */
  readonly why: string;
  /** Why the check is known to fail: it is recorded and not asserted. */
  readonly disagrees?: string;
}

/** A record's numbers, to the digits that are kept. */
const digits = (x: number, count: number) => Number(x.toPrecision(count));

function judged({ share, within }: Check, [got, expected]: Check["pairs"][number]) {
  const isRange = typeof expected !== "number";
  const middle = isRange ? 0.5 * (expected[0] + expected[1]) : expected;
  const tolerance = isRange ? 0.5 * (expected[1] - expected[0]) : (within ?? share! * (Math.abs(expected) || 1));
  const off = got - middle;
  return { got, expected, off, tolerance, used: Math.abs(off) / tolerance };
}

/** The record of a check: of many pairs, the one that uses most of its tolerance. */
export function recordOf(check: Check): Kept {
  if (check.pairs.length === 0) throw new Error(`${check.quantity}: nothing is compared`);
  const all = check.pairs.map((pair) => judged(check, pair));
  // A number that is none uses all of every tolerance.
  const worst = all.find(({ used }) => Number.isNaN(used)) ?? all.reduce((a, b) => (b.used > a.used ? b : a));
  return {
    source: check.source,
    ...(check.where === undefined ? {} : { where: check.where }),
    kind: check.kind ?? SOURCES[check.source].kind,
    quantity: check.quantity,
    unit: check.unit ?? "",
    of: all.length,
    expected: typeof worst.expected === "number" ? digits(worst.expected, 10) : worst.expected,
    got: digits(worst.got, 8),
    off: digits(worst.off, 2),
    tolerance: digits(worst.tolerance, 3),
    why: check.why,
    used: digits(worst.used, 2),
    ...(check.disagrees === undefined ? {} : { disagrees: check.disagrees }),
  };
}

/** A kept number may differ from today's by so much of the tolerance [-]: machines round in their own ways. */
const SAME = 0.02;

/** What of a record is not as it is kept; `undefined` when nothing. */
export function difference(now: Kept, kept: Kept | undefined): string | undefined {
  if (kept === undefined) return "is not kept";
  const { got, off, used, ...words } = now;
  const { got: keptGot, off: _off, used: _used, ...keptWords } = kept;
  // Of a table, another entry may use as much of the tolerance on another machine.
  const one = (record: typeof words) => (now.of > 1 ? { ...record, expected: 0, tolerance: 0 } : record);
  if (JSON.stringify(one(words)) !== JSON.stringify(one(keptWords))) return "is kept in other words";
  const moved = now.of > 1 ? Math.abs(used - kept.used) : Math.abs(got - keptGot) / now.tolerance;
  if (!(moved <= SAME + 1e-7 * Math.abs(got / now.tolerance))) return `is kept as ${keptGot}, and is ${got}`;
  return undefined;
}

const fileOf = (name: string) => new URL(`kept/${name}.json`, import.meta.url);
export function keptOf(name: string): readonly Kept[] {
  const file = fileOf(name);
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : [];
}

/** The checks of one test file. `keeps` goes to its end: it is the test that compares them with their record. */
export function evidence(name: string): { check: (one: Check) => void; keeps: () => void } {
  const made = new Map<string, Kept>();
  function check(one: Check): void {
    const record = recordOf(one);
    const key = `${record.source}: ${record.quantity}`;
    if (made.has(key)) throw new Error(`two checks are called "${key}"`);
    made.set(key, record);
    if (one.disagrees !== undefined) return;
    const told = `${key}: ${record.got} against ${record.expected} ${record.unit}, off by ${record.off} (${record.why})`;
    expect(record.used, told).toBeLessThanOrEqual(1);
  }
  function keeps(): void {
    it("finds what the record says of it (npm run evidence writes it anew)", () => {
      const now = [...made.values()];
      if (WRITES) {
        writeFileSync(fileOf(name), `${JSON.stringify(now, undefined, 1)}\n`);
        return;
      }
      const kept = new Map(keptOf(name).map((one) => [`${one.source}: ${one.quantity}`, one]));
      const faults = now.flatMap((one) => {
        const key = `${one.source}: ${one.quantity}`;
        const fault = difference(one, kept.get(key));
        return fault === undefined ? [] : [`${key} ${fault}`];
      });
      const gone = [...kept.keys()].filter((key) => !made.has(key)).map((key) => `${key} is kept and not checked`);
      expect([...faults, ...gone]).toEqual([]);
    });
  }
  return { check, keeps };
}
