/** Values of a wear record: text with units, dates, counts, each read into SI or refused with the expected form. */
import { type Dimension, describeValue, parseQuantity, rigFact } from "@secondline/rig";
import * as z from "zod";
import { type PlainDate, readDate } from "../dates/calendarDate.ts";
import type { RecordIssue } from "./faults.ts";
import { recordFact } from "./recordFacts.ts";

// The schema library must not compile code: a page may forbid that, and even its trial of it breaks the page's policy.
z.config({ jitless: true });

export type RecordFaultParams = Omit<RecordIssue, "path">;

/** Limits in the units of the file. */
type Limits = readonly [low: string, high: string];

/** A quantity within limits, both in SI units. */
export function quantity(dimension: Dimension, least: number, most: number, [low, high]: Limits) {
  return z.union([z.string(), z.number()]).transform((written, context): number => {
    const read = parseQuantity(written, dimension);
    const within = read.ok && read.value >= least && read.value <= most;
    if (read.ok && within) return read.value;
    const expected = rigFact("expected.range", { low, high });
    const got = describeValue(written);
    const message = recordFact("value.outOfBounds", { got, expected });
    const { ok: _, ...params } = read.ok ? { ok: false, got, expected, message } : read;
    context.addIssue({ code: "custom", params: params satisfies RecordFaultParams });
    return z.NEVER;
  });
}

export const date = z.string().transform((text, context): PlainDate => {
  const read = readDate(text);
  if (read !== undefined) return read;
  const got = describeValue(text);
  const params: RecordFaultParams = {
    got,
    expected: recordFact("expected.date", {}),
    message: recordFact("value.noDate", { got }),
  };
  context.addIssue({ code: "custom", params });
  return z.NEVER;
});

export const position = quantity("length", 0, 2000, ["0 m", "2000 m"]);
export const extent = quantity("length", 0.001, 10, ["1 mm", "10 m"]);
export const pulled = quantity("length", -50, 50, ["−50 m", "50 m"]);
export const share = quantity("share", 0, 1, ["0 %", "100 %"]);
export const force = quantity("force", 0, 100e3, ["0 kN", "100 kN"]);
export const count = quantity("count", 0, 100_000, ["0", "100000"]);
export const text = z.string().min(1).max(200);
export const side = z.enum(["A", "B"]);

/** Makes keys optional whose value may be undefined; the record's types tell the two apart. */
export type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** The same group without the keys whose value is undefined. */
export function present<T extends object>(group: T): Present<T> {
  return Object.fromEntries(Object.entries(group).filter(([, value]) => value !== undefined)) as Present<T>;
}
