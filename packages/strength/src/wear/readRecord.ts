/** Reads a wear record: every fault at once, each with its path, and no record when there is one. */
import { pathText, type RigIssue, valueAt } from "@secondline/rig";
import type * as z from "zod";
import { checkPart } from "./checkPart.ts";
import { samePlaceFaults } from "./checkPlaces.ts";
import { checkWebbing } from "./checkWebbing.ts";
import { entryKindOf, WEBBING_EVENTS } from "./entries/entryKinds.ts";
import { PART_EVENTS, partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import type { WearRecord } from "./record.ts";
import { type ReadWear, wearSchema } from "./schema.ts";
import type { FaultParams } from "./values.ts";

export type WearReading =
  | { readonly ok: true; readonly record: WearRecord }
  | { readonly ok: false; readonly issues: readonly RigIssue[] };

/** Longest text read [characters]. */
const LONGEST = 5_000_000;

/** Reads the text of a file, or an object that came from JSON. */
export function readWearRecord(input: unknown): WearReading {
  const refuse = (got: string, expected: string, message: string): WearReading => ({
    ok: false,
    issues: [{ path: "", got, expected, message }],
  });
  let document = input;
  if (typeof input === "string") {
    if (input.length > LONGEST) {
      return refuse("a very long file", "a wear record", "This file is too long for a wear record.");
    }
    try {
      document = JSON.parse(input);
    } catch (error) {
      return refuse("no JSON", "a JSON file", `This is not a JSON file: ${(error as Error).message}.`);
    }
  }
  const read = wearSchema.safeParse(document);
  if (!read.success) return { ok: false, issues: read.error.issues.flatMap((fault) => issuesOf(fault, document)) };
  const record = build(read.data);
  const issues = [
    ...record.webbings.flatMap((webbing, i) => checkWebbing(webbing, `webbings[${i}]`)),
    ...repeated(
      record.webbings.map((w) => w.id),
      "webbings",
      "id",
    ),
    ...samePlaceFaults(record.webbings),
    ...record.parts.flatMap((part, i) => checkPart(part, `parts[${i}]`)),
    ...repeated(
      record.parts.map((p) => `${p.part} of ${p.rig}`),
      "parts",
      "part",
    ),
  ];
  return issues.length > 0 ? { ok: false, issues } : { ok: true, record };
}

function issuesOf(fault: z.core.$ZodIssue, document: unknown): RigIssue[] {
  const path = pathText(fault.path);
  const value = valueAt(document, fault.path);
  const got = value === undefined ? "nothing" : (JSON.stringify(value)?.slice(0, 60) ?? "nothing");
  if (fault.code === "custom") return [{ path, message: fault.message, ...(fault.params as FaultParams) }];
  if (fault.code === "unrecognized_keys") {
    return fault.keys.map((key) => ({
      path: pathText([...fault.path, key]),
      got: `"${key}"`,
      expected: "a known key",
      message: `The key "${key}" is not known here.`,
    }));
  }
  const expected = expectedOf(fault);
  const where = path === "" ? "The file" : path;
  return [{ path, got, expected, message: `${where} is ${got}; ${expected} is needed here.` }];
}

function expectedOf(fault: z.core.$ZodIssue): string {
  if (fault.code === "invalid_value") return `one of ${fault.values.map((v) => `"${String(v)}"`).join(", ")}`;
  if (fault.code === "invalid_union") {
    if (fault.discriminator === undefined) return "text or a number";
    return `one of ${(fault.path[0] === "parts" ? PART_EVENTS : WEBBING_EVENTS).join(", ")}`;
  }
  if (fault.code === "invalid_type") return fault.expected === "object" ? "a group of values" : `a ${fault.expected}`;
  if (fault.code === "too_small") return `at least ${fault.minimum}`;
  if (fault.code === "too_big") return `at most ${fault.maximum}`;
  return "another value";
}

function build(read: ReadWear): WearRecord {
  return {
    name: read.name,
    invented: read.invented ?? false,
    latitude: read.latitude ?? "middle",
    hemisphere: read.hemisphere ?? "north",
    webbings: (read.webbings ?? []).map(({ made, entries, ...webbing }) => ({
      ...webbing,
      ...(made === undefined ? {} : { made }),
      entries: entries.map((entry) => entryKindOf(entry.event).read(entry)),
    })),
    parts: (read.parts ?? []).map(({ made, entries, ...part }) => ({
      ...part,
      ...(made === undefined ? {} : { made }),
      entries: entries.map((entry) => partEntryKindOf(entry.event).read(entry)),
    })),
  };
}

function repeated(names: readonly string[], list: string, key: string): RigIssue[] {
  return names.flatMap((name, i) =>
    names.indexOf(name) === i
      ? []
      : [
          {
            path: `${list}[${i}].${key}`,
            got: `"${name}" again`,
            expected: "every one once",
            message: `"${name}" is in the list twice.`,
          },
        ],
  );
}
