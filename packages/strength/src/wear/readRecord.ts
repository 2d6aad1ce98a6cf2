/** Reads a wear record. It reports all faults at once, each with its path, and returns no record if there is a fault. */
import {
  checkTexts,
  type FactValue,
  type Issues,
  issuesListed,
  pathText,
  readJson,
  rigFact,
  sameFact,
  valueAt,
} from "@secondline/rig";
import type * as z from "zod";
import { checkPart } from "./checkPart.ts";
import { samePlaceFaults } from "./checkPlaces.ts";
import { checkWebbing } from "./checkWebbing.ts";
import { entryKindOf, WEBBING_EVENTS } from "./entries/entryKinds.ts";
import type { RecordIssue } from "./faults.ts";
import { PART_EVENTS, partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import type { WearRecord } from "./record.ts";
import { type RecordFact, recordFact } from "./recordFacts.ts";
import { DAY_SECONDS, type ReadWear, type WearDocument, wearSchema } from "./schema.ts";
import { present, type RecordFaultParams } from "./values.ts";

export type WearReading =
  | { readonly ok: true; readonly record: WearRecord; readonly document: WearDocument }
  | ({ readonly ok: false } & Issues<RecordIssue>);

/** Largest file that is read [bytes]; in a text, characters are counted. */
export const MAX_WEAR_TEXT = 5_000_000;
const RECORD_FILE = { noun: recordFact("noun.record", {}), longest: MAX_WEAR_TEXT };

/** Reads the text of a file, or an object that came from JSON. */
export function readWearRecord(input: unknown): WearReading {
  const json = typeof input === "string" ? readJson(input, RECORD_FILE) : { parsed: true, document: input, issues: [] };
  if (!json.parsed) return { ok: false, issues: json.issues };
  const { document } = json;
  const texts = checkTexts(document, RECORD_FILE.noun);
  if (texts.bottomless) return { ok: false, issues: texts.issues };
  const before = [...json.issues, ...texts.issues];
  const read = wearSchema.safeParse(document);
  if (!read.success || before.length > 0) {
    const faults = read.success ? [] : read.error.issues.flatMap((fault) => issuesOf(fault, document));
    return { ok: false, ...issuesListed(oncePerPath([...before, ...faults])) };
  }
  const record = build(read.data);
  const issues = [
    ...record.webbings.flatMap((webbing, i) => checkWebbing(webbing, `webbings[${i}]`)),
    ...repeatedNames(
      record.webbings.map((w) => w.id),
      "webbings",
      "id",
    ),
    ...samePlaceFaults(record.webbings),
    ...record.parts.flatMap((part, i) => checkPart(part, `parts[${i}]`)),
    ...repeatedNames(
      record.parts.map(({ part, rig }) => recordFact("part.ofRig", { part, rig })),
      "parts",
      "part",
    ),
    ...repeatedNames(
      record.plans.map(({ rig }) => rig),
      "plans",
      "rig",
    ),
  ];
  return issues.length > 0
    ? { ok: false, ...issuesListed(issues) }
    : { ok: true, record, document: document as WearDocument };
}

/** The first issue of every path: the others follow from it. */
function oncePerPath(issues: readonly RecordIssue[]): RecordIssue[] {
  const seen = new Set<string>();
  return issues.filter(({ path }) => !seen.has(path) && seen.add(path));
}

function issuesOf(fault: z.core.$ZodIssue, document: unknown): RecordIssue[] {
  const path = pathText(fault.path);
  const value = valueAt(document, fault.path);
  const got = (value === undefined ? undefined : JSON.stringify(value)?.slice(0, 60)) ?? rigFact("got.nothing", {});
  if (fault.code === "custom") return [{ path, ...(fault.params as RecordFaultParams) }];
  if (fault.code === "unrecognized_keys") {
    return fault.keys.map((key) => ({
      path: pathText([...fault.path, key]),
      got: `"${key}"`,
      expected: recordFact("expected.key", {}),
      message: recordFact("record.key", { key }),
    }));
  }
  const expected = expectedOf(fault);
  const message =
    path === "" ? recordFact("form.file", { got, expected }) : recordFact("form.field", { at: path, got, expected });
  return [{ path, got, expected, message }];
}

function expectedOf(fault: z.core.$ZodIssue): RecordFact {
  if (fault.code === "invalid_value") return oneOf(fault.values.map((value) => `"${String(value)}"`));
  if (fault.code === "invalid_union") {
    if (fault.discriminator === undefined) return recordFact("expected.textOrNumber", {});
    return oneOf(fault.path[0] === "parts" ? PART_EVENTS : WEBBING_EVENTS);
  }
  if (fault.code === "invalid_type") return expectedType(fault.expected);
  if (fault.code === "too_small") return rigFact("expected.atLeast", { least: `${fault.minimum}` });
  if (fault.code === "too_big") return rigFact("expected.atMost", { most: `${fault.maximum}` });
  return recordFact("expected.other", {});
}

const oneOf = (list: readonly FactValue[]): RecordFact => rigFact("expected.oneOf", { list: { list } });

function expectedType(type: string): RecordFact {
  switch (type) {
    case "object":
      return recordFact("expected.groupOfValues", {});
    case "string":
    case "number":
    case "boolean":
    case "array":
      return recordFact(`expected.${type}`, {});
    default:
      return recordFact("expected.type", { type });
  }
}

function build(read: ReadWear): WearRecord {
  return {
    name: read.name,
    invented: read.invented ?? false,
    ...present({ latitude: read.latitude, hemisphere: read.hemisphere }),
    webbings: (read.webbings ?? []).map(({ made, firstUse, entries, ...webbing }) => ({
      ...webbing,
      ...present({ made, firstUse }),
      entries: entries.map((entry) => entryKindOf(entry.event).read(entry)),
    })),
    parts: (read.parts ?? []).map(({ made, firstUse, entries, ...part }) => ({
      ...part,
      ...present({ made, firstUse }),
      entries: entries.map((entry) => partEntryKindOf(entry.event).read(entry)),
    })),
    plans: (read.plans ?? []).map(({ rig, inspectEvery, falls }) => ({
      rig,
      // Drops the part of a day, so that the inspection comes no later than was meant.
      ...(inspectEvery === undefined ? {} : { inspectEveryDays: Math.floor(inspectEvery / DAY_SECONDS) }),
      ...(falls === undefined ? {} : { falls }),
    })),
  };
}

function repeatedNames(names: readonly FactValue[], list: string, key: string): RecordIssue[] {
  return names.flatMap((name, i) =>
    names.findIndex((other) => sameFact(other, name)) === i
      ? []
      : [
          {
            path: `${list}[${i}].${key}`,
            got: recordFact("got.again", { name }),
            expected: recordFact("expected.once", {}),
            message: recordFact("twice", { name }),
          },
        ],
  );
}
