/** The wear record's file format: strict JSON with units in the values, read into SI. */
import * as z from "zod";
import { webbingEntrySchema } from "./entries/entryKinds.ts";
import { partEntrySchema } from "./partEntries/partEntryKinds.ts";
import { count, date, quantity, text } from "./values.ts";

/** [s] */
export const DAY_SECONDS = 86_400;

/** The tag by which a file is known as a wear record of ours, with the version of the format. */
export const WEAR_FORMAT = "wear/1";

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
        length: quantity("length", 0.1, 2000, ["0.1 m", "2000 m"]),
        mark: text,
        made: date.optional(),
        /** Until this day the webbing or part lay unused. */
        firstUse: date.optional(),
        entries: z.array(webbingEntrySchema).max(2000),
      }),
    )
    .max(100)
    .optional(),
  parts: z
    .array(
      z.strictObject({
        rig: text,
        part: text,
        made: date.optional(),
        firstUse: date.optional(),
        entries: z.array(partEntrySchema).max(2000),
      }),
    )
    .max(200)
    .optional(),
  /** The plan for a rig while it hangs: how often it is inspected, and how many falls may come between. */
  plans: z
    .array(
      z.strictObject({
        rig: text,
        inspectEvery: quantity("time", DAY_SECONDS, 732 * DAY_SECONDS, ["1 day", "2 years"]).optional(),
        falls: count.optional(),
      }),
    )
    .max(100)
    .optional(),
});

/** A wear record as written. */
export type WearDocument = z.input<typeof wearSchema>;
export type ReadWear = z.output<typeof wearSchema>;
