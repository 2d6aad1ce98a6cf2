/** The wear record's file format: strict JSON with units in the values, read into SI. */
import { type Dimension, describeValue, parseQuantity } from "@secondline/rig";
import * as z from "zod";
import { type PlainDate, readDate } from "../dates/calendarDate.ts";

/** The tag by which a file is known as a wear record of ours, with the version of the format. */
export const WEAR_FORMAT = "wear/1";

export interface FaultParams {
  readonly got: string;
  readonly expected: string;
}

/** A quantity within limits, both in SI units. */
function quantity(dimension: Dimension, least: number, most: number, limits: string) {
  return z.union([z.string(), z.number()]).transform((written, context): number => {
    const read = parseQuantity(written, dimension);
    const within = read.ok && read.value >= least && read.value <= most;
    if (read.ok && within) return read.value;
    const params: FaultParams = read.ok ? { got: JSON.stringify(written), expected: limits } : read;
    const message = read.ok ? `${JSON.stringify(written)} is out of bounds: ${limits} is expected here.` : read.message;
    context.addIssue({ code: "custom", message, params });
    return z.NEVER;
  });
}

const date = z.string().transform((text, context): PlainDate => {
  const read = readDate(text);
  if (read !== undefined) return read;
  const got = describeValue(text);
  const params: FaultParams = { got, expected: "a calendar date such as 2026-05-31" };
  context.addIssue({ code: "custom", message: `${got} is not a date such as 2026-05-31.`, params });
  return z.NEVER;
});

const position = quantity("length", 0, 2000, "0 m to 2000 m");
const extent = quantity("length", 0.001, 10, "1 mm to 10 m");
const pulled = quantity("length", -50, 50, "−50 m to 50 m");
const share = quantity("share", 0, 1, "0 % to 100 %");
const force = quantity("force", 0, 100e3, "0 kN to 100 kN");
const count = quantity("count", 0, 100_000, "0 to 100000");
const text = z.string().min(1).max(200);
const side = z.enum(["A", "B"]);

const placement = {
  rig: text,
  line: z.enum(["main", "backup"]),
  section: quantity("count", 0, 49, "0 to 49").optional(),
  markedEnd: side,
  from: position,
  to: position,
  clampedAt: z.array(side).max(2).optional(),
  sun: share.optional(),
};

const webbingEntry = z.discriminatedUnion("event", [
  z.strictObject({ date, event: z.literal("rigged"), ...placement }),
  z.strictObject({ date, event: z.literal("moved"), ...placement }),
  z.strictObject({ date, event: z.literal("takenDown") }),
  z.strictObject({ date, event: z.literal("retensioned"), end: side, pulled }),
  z.strictObject({ date, event: z.literal("falls"), from: position, to: position, falls: count }),
  z.strictObject({ date, event: z.literal("shade"), sun: share }),
  z.strictObject({ date, event: z.literal("wet"), wet: z.boolean() }),
  z.strictObject({
    date,
    event: z.literal("damage"),
    kind: z.enum(["abrasion", "heat", "cut"]),
    from: position,
    to: position,
    depth: share,
  }),
  z.strictObject({
    date,
    event: z.literal("clamped"),
    until: date.optional(),
    at: position,
    length: extent,
    load: force.optional(),
  }),
  z.strictObject({ date, event: z.literal("sewn"), at: position, length: extent }),
  z.strictObject({ date, event: z.literal("cutToLength"), from: position, to: position }),
]);

const partEntry = z.discriminatedUnion("event", [
  z.strictObject({ date, event: z.literal("putUp"), sun: share.optional() }),
  z.strictObject({ date, event: z.literal("takenDown") }),
  z.strictObject({ date, event: z.literal("shade"), sun: share }),
  z.strictObject({ date, event: z.literal("wet"), wet: z.boolean() }),
  z.strictObject({ date, event: z.literal("falls"), falls: count }),
  z.strictObject({ date, event: z.literal("replaced") }),
]);

export const WEBBING_EVENTS: readonly string[] = webbingEntry.options.map((option) => option.shape.event.value);
export const PART_EVENTS: readonly string[] = partEntry.options.map((option) => option.shape.event.value);

export const wearSchema = z.strictObject({
  secondline: z.literal(WEAR_FORMAT),
  name: text,
  notes: z.string().max(10_000).optional(),
  invented: z.boolean().optional(),
  latitude: z.enum(["low", "middle", "high"]).optional(),
  hemisphere: z.enum(["north", "south"]).optional(),
  webbings: z
    .array(
      z.strictObject({
        id: text,
        name: text,
        length: quantity("length", 0.1, 2000, "0.1 m to 2000 m"),
        mark: text,
        made: date.optional(),
        entries: z.array(webbingEntry).max(2000),
      }),
    )
    .max(100)
    .optional(),
  parts: z
    .array(z.strictObject({ rig: text, part: text, made: date.optional(), entries: z.array(partEntry).max(2000) }))
    .max(200)
    .optional(),
});

/** A wear record as written. */
export type WearDocument = z.input<typeof wearSchema>;
export type ReadWear = z.output<typeof wearSchema>;
