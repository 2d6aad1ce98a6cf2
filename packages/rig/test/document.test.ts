import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import {
  editDocument,
  FIELDS,
  type Field,
  fieldAt,
  GENERIC_STOCKS,
  type RigDocument,
  readField,
  readRig,
  valueAt,
  writeRig,
} from "../src/index.ts";
import { rigJsonSchema } from "../src/jsonSchema.ts";
import { accepted, DEMO_NAMES, type DemoName, demoDocument, demoText, issuePaths } from "./demoRigs.ts";

/** Paths of all single values of a document. */
function leaves(value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [path];
  if (Array.isArray(value)) return value.flatMap((item, i) => leaves(item, `${path}[${i}]`));
  return Object.entries(value).flatMap(([key, item]) => leaves(item, path === "" ? key : `${path}.${key}`));
}
/** Paths of all groups of a document. */
function groups(value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [];
  if (Array.isArray(value)) return value.flatMap((item, i) => groups(item, `${path}[${i}]`));
  return [path, ...Object.entries(value).flatMap(([key, item]) => groups(item, path === "" ? key : `${path}.${key}`))];
}

/** Values that no field of the kind accepts. */
function corruptions(field: Field): unknown[] {
  const never = [null, [], {}, Number.NaN, Number.NEGATIVE_INFINITY];
  switch (field.kind) {
    case "quantity":
      return [...never, "", "some", "5 parsec/kg", "NaN m", "1e999 m", "1e12 %", -1e9, 1e15, true];
    case "choice":
      return [...never, "", "nonsense", 3, true];
    case "flag":
      return [...never, "yes", 0, 1];
    case "basis":
      return [...never, "", "hearsay: somebody", "published", "published:", 3];
    case "stock":
      return [...never, "", "no-such-webbing", 3];
    case "text":
      return [...never, 3, true, "x".repeat(field.longest + 1)];
  }
}

const anyDemo = fc.constantFrom<DemoName>(...DEMO_NAMES);

describe("a fault in one field", () => {
  it.each(DEMO_NAMES)("is refused with the path of that field, wherever it is in %s", (name) => {
    const document = demoDocument(name);
    const paths = leaves(document).filter((path) => path !== "secondline");
    const any = fc
      .constantFrom(...paths)
      .chain((path) => fc.tuple(fc.constant(path), fc.constantFrom(...corruptions(fieldAt(path)!))));
    fc.assert(
      fc.property(any, ([path, bad]) => {
        // An empty list or group in place of a value is at fault itself, or in the values that it lacks.
        expect(issuePaths(editDocument(document, path, bad))).toContain(path);
      }),
      { seed: 20264, numRuns: 400 },
    );
  });

  it.each(DEMO_NAMES)("a key that nobody knows is refused with its path, in every group of %s", (name) => {
    const document = demoDocument(name);
    for (const group of groups(document)) {
      const path = group === "" ? "colour" : `${group}.colour`;
      expect(issuePaths(editDocument(document, path, "red"))).toEqual([path]);
    }
  });

  it("taking any value out of a rig is either a missing part or a stated default, never a crash", () => {
    for (const name of DEMO_NAMES) {
      const document = demoDocument(name);
      for (const path of leaves(document)) {
        const reading = readRig(editDocument(document, path, undefined));
        if (!reading.ok)
          expect(
            reading.issues.every((issue) => issue.message.code.length > 0 && JSON.stringify(issue.expected).length > 2),
          ).toBe(true);
      }
    }
  });

  it("whatever stands anywhere in a file, reading it never throws", () => {
    const anywhere = anyDemo.chain((name) => {
      const document = demoDocument(name);
      const paths = [...groups(document).filter((path) => path !== ""), ...leaves(document)];
      return fc.constantFrom(...paths).map((path) => [document, path] as const);
    });
    fc.assert(
      fc.property(anywhere, fc.anything(), ([document, path], value) => {
        const reading = readRig(editDocument(document, path, value));
        return reading.ok || reading.issues.length > 0;
      }),
      { seed: 20265, numRuns: 500 },
    );
  });
});

describe("writing a rig", () => {
  it.each(DEMO_NAMES)("gives back %s letter by letter", (name) => {
    expect(writeRig(accepted(readRig(demoText(name))).document)).toBe(demoText(name));
  });

  it("puts fields in the order of the format, whatever order they had", () => {
    const reversed = (value: unknown): unknown => {
      if (typeof value !== "object" || value === null) return value;
      if (Array.isArray(value)) return value.map(reversed);
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, item]) => [key, reversed(item)]),
      );
    };
    expect(writeRig(reversed(demoDocument("old-rig")) as RigDocument)).toBe(demoText("old-rig"));
  });

  it("keeps every value as typed, and reading it again gives the same rig", () => {
    const edits = fc.record({
      span: fc
        .double({ min: 59.5, max: 60, noNaN: true })
        .chain((m) => fc.constantFrom(`${m} m`, `${m / 0.3048} ft`, `${m * 100} cm`)),
      "main.pretension": fc
        .double({ min: 0.5, max: 12, noNaN: true })
        .chain((kN) => fc.constantFrom(`${kN} kN`, `${kN * 100} daN`, `${kN * 224.8} lbf`)),
      "backup.slack": fc
        .double({ min: 0, max: 30, noNaN: true })
        // Less than a computer holds with all its digits is refused.
        .map((s) => `${s < 1e-300 ? 0 : s} %`),
      "walker.at": fc.oneof(fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.constant("40 %")),
      name: fc.string({ minLength: 1, maxLength: 120 }),
      "walker.tieIn": fc.constantFrom(undefined, "1.1 m"),
      "main.sections[0].stock": fc.constantFrom("polyester-webbing-25", "polyamide-webbing-25", "aramid-webbing-25"),
    });
    fc.assert(
      fc.property(edits, (values) => {
        const document = Object.entries(values).reduce<RigDocument>(
          (d, [path, value]) => editDocument(d, path, value),
          demoDocument("sound-rig"),
        );
        const first = accepted(readRig(document));
        const again = accepted(readRig(writeRig(document)));
        expect(again.document).toEqual(document);
        expect(again.rig).toEqual(first.rig);
        expect(writeRig(again.document)).toBe(writeRig(document));
      }),
      { seed: 20266, numRuns: 100 },
    );
  });
});

describe("editing a rig", () => {
  const sound = demoDocument("sound-rig");

  it("leaves the document that it began with as it was, and shares what did not change", () => {
    const before = structuredClone(sound);
    const edited = editDocument(sound, "main.sections[0].condition.outside", "9 months");
    expect(sound).toEqual(before);
    expect(valueAt(edited, "main.sections[0].condition.outside")).toBe("9 months");
    expect(edited.backup).toBe(sound.backup);
  });

  it("adds to a list at its end, takes an item out, and makes groups on the way", () => {
    const more = editDocument(sound, "backup.connections[3]", { at: 0.9, strength: "22 kN" });
    expect(accepted(readRig(more)).rig.backup?.connections).toHaveLength(12);
    const fewer = editDocument(sound, "backup.connections[0]", undefined);
    expect(valueAt(fewer, "backup.connections[0].at")).toBe(0.5);
    expect(valueAt(editDocument(sound, "rings[0].condition.wet", true), "rings[0].condition")).toEqual({ wet: true });
    expect(editDocument(sound, "backup", undefined)).not.toHaveProperty("backup");
  });

  it("undoing an edit gives the same document again", () => {
    const paths = leaves(sound);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.string(), (path, text) => {
        const back = editDocument(editDocument(sound, path, text), path, valueAt(sound, path));
        expect(back).toEqual(sound);
      }),
      { seed: 20267, numRuns: 100 },
    );
  });

  it("does not reach into prototypes", () => {
    expect(() => editDocument(sound, "__proto__.polluted", 1)).toThrow("Not a path");
    expect(valueAt(sound, "constructor")).toBeUndefined();
  });
});

describe("the table of fields", () => {
  it("knows every value of the demonstration rigs", () => {
    const unknown = DEMO_NAMES.flatMap((name) => leaves(demoDocument(name))).filter(
      (path) => path !== "secondline" && !fieldAt(path),
    );
    expect(unknown).toEqual([]);
  });

  it("has exactly the fields of the schema", () => {
    const inSchema = new Set(schemaPaths(rigJsonSchema()));
    inSchema.delete("secondline");
    expect([...inSchema].sort()).toEqual(Object.keys(FIELDS).sort());
  });

  it("gives every slider a range inside what is accepted", () => {
    for (const [path, field] of Object.entries(FIELDS)) {
      if (field.kind !== "quantity" || !field.natural) continue;
      const [[least, most], [low, high]] = [field.limits, field.natural];
      expect(least <= low && low < high && high <= most, path).toBe(true);
    }
  });

  it("reads what is typed into one field, and refuses with the field's path", () => {
    expect(readField("main.pretension", " 3 kN ")).toEqual({ ok: true, value: "3 kN", si: 3000 });
    expect(readField("rings[0].friction", "0.2")).toEqual({ ok: true, value: 0.2, si: 0.2 });
    expect(readField("walker.at", "40 %")).toEqual({ ok: true, value: "40 %", si: 0.4 });
    expect(readField("main.endA.kind", "weblock")).toEqual({ ok: true, value: "weblock" });
    expect(readField("span", "-3 m")).toMatchObject({ ok: false, issue: { path: "span", got: '"-3 m"' } });
    expect(readField("backup.connections[2].at", "7")).toMatchObject({
      ok: false,
      issue: { path: "backup.connections[2].at" },
    });
    expect(readField("harness.basis", "trust me")).toMatchObject({ ok: false });
    expect(() => readField("span.colour", "red")).toThrow("no field");
  });
});

/** Field paths of a JSON Schema. */
function schemaPaths(schema: unknown, path = ""): string[] {
  const { properties, items, prefixItems, oneOf } = schema as Record<string, unknown>;
  if (properties)
    return Object.entries(properties as object).flatMap(([key, item]) =>
      schemaPaths(item, path === "" ? key : `${path}.${key}`),
    );
  if (prefixItems) return (prefixItems as unknown[]).flatMap((item, i) => schemaPaths(item, `${path}[${i}]`));
  if (items) return schemaPaths(items, `${path}[]`);
  if (oneOf) return (oneOf as unknown[]).flatMap((option) => schemaPaths(option, path));
  return [path];
}

describe("parts that one schema serves", () => {
  /** The fields below a path, by their names there. */
  const below = (path: string) =>
    Object.entries(FIELDS).flatMap(([at, { help: _, ...field }]) =>
      at.startsWith(`${path}.`) ? [[at.slice(path.length + 1), field] as const] : [],
    );
  const parents = (name: string) =>
    new Set(Object.keys(FIELDS).flatMap((path) => (path.includes(`.${name}.`) ? [path.split(`.${name}.`)[0]!] : [])));

  it.each(["condition", "own"])("are read alike: what is asked of their %s is the same for all", (name) => {
    expect(parents(name).size).toBeGreaterThan(8);
    for (const path of parents(name)) expect(below(`${path}.${name}`), path).toEqual(below(`leash.${name}`));
  });

  it("are read alike: sections and ends of main line and backup", () => {
    expect(below("backup.sections[]")).toEqual(below("main.sections[]"));
    for (const end of ["main.endB", "backup.endA", "backup.endB"]) expect(below(end), end).toEqual(below("main.endA"));
  });
});

describe("the published schema", () => {
  const file = readFileSync(new URL("../schema/rig.schema.json", import.meta.url), "utf8");

  it("is not stale (npm run schema -w packages/rig writes it)", () => {
    expect(file).toBe(`${JSON.stringify(rigJsonSchema(), null, 2)}\n`);
  });

  it("accepts the demonstration rigs by itself, and refuses an unknown key or a bare number", () => {
    const published = z.fromJSONSchema(JSON.parse(file));
    for (const name of DEMO_NAMES) expect(published.safeParse(demoDocument(name)).error).toBeUndefined();
    expect(published.safeParse({ ...demoDocument("sound-rig"), colour: "red" }).success).toBe(false);
    expect(published.safeParse({ ...demoDocument("sound-rig"), span: 60 }).success).toBe(false);
  });
});

describe("files of earlier releases", () => {
  it("a rig of format 1 with every kind of entry reads as it did when it was written", () => {
    const fixture = (name: string) => readFileSync(new URL(`fixtures/${name}`, import.meta.url), "utf8");
    const { rig } = accepted(readRig(fixture("rig-1.json")));
    // The words of a basis may be bettered; numbers, kinds and structure of an old file may not change.
    const withoutNotes = (text: string) => JSON.parse(text, (key, value) => (key === "note" ? undefined : value));
    expect(withoutNotes(JSON.stringify(rig))).toEqual(withoutNotes(fixture("rig-1.si.json")));
    const wear = rig.main.sections.flatMap((section) => section.wear.map((each) => each.kind));
    expect(wear).toEqual(["clampMark", "fallZone", "stitching", "abrasion", "cut"]);
  });
});

describe("the description of the format", () => {
  it("shows a shortest rig that is accepted as it stands", () => {
    const page = readFileSync(new URL("../FORMAT.md", import.meta.url), "utf8");
    const example = /```json\n([\s\S]*?)```/.exec(page)![1]!;
    expect(accepted(readRig(example)).rig.name).toBe("Quarry line");
  });

  it("lists every built-in webbing and rope", () => {
    const page = readFileSync(new URL("../FORMAT.md", import.meta.url), "utf8");
    expect([...GENERIC_STOCKS.keys()].filter((id) => !page.includes(`\`${id}\``))).toEqual([]);
  });
});
