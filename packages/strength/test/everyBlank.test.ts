import {
  editDocument,
  type FactValue,
  FIELDS,
  type Field,
  quantityText,
  type Rig,
  type RigDocument,
  readRig,
  valueAt,
} from "@secondline/rig";
import { seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { type PartStrength, partStrengths } from "../src/index.ts";

/**
 * The rule on blanks, over every field that the rig document has: the fields, their kinds and their limits are read from the table from
 * which the schema is made. A new field is tried here by itself, or fails here until somebody says below why it weakens nothing.
 */

/** Fields that do not bear on a part's strength, and fields that are no blank when they are left out, each with the reason. */
const NO_BLANK: readonly (readonly [pattern: RegExp, why: string])[] = [
  [/^(id|name|notes|invented|unconfirmed.*|span|rise|required\w+|ground.*|walker\..*)$/, "says nothing of a part"],
  [/\.name$|\.?[bB]asis$|stocks\[\]\.(id|like)$|\.stock$/, "a name or a source"],
  [/^anchor[AB]\.(legAngle|legLength|stiffness)$|\.(carries|slipLoad)$|^main\.pretension$/, "decides about loads"],
  [/^backup\.(slack|length)$|sections\[\]\.length$|^leash\.length$|\.at$|\.from$|\.to$/, "says where something is"],
  [
    /wear\[\]\.length$|knots\[\]\.where$|^rings\[\]\.(mass|clearance|friction)$/,
    "says where and how large something is",
  ],
  [/^stocks\[\]\.(mass|width|fibre|curve.*|branches.*)$/, "needed, or taken from what the stock is like"],
  [/\.strength$/, "needed; a knot without one has the strength of its webbing, which is written with the stock"],
  [/\.own\.(factor|reason)$/, "what its owner thinks; no thought is no fact"],
];
/** Fields without which a document is refused. */
const NEEDED = /wear\[\]\.(clamped|falls|depth)$/;
const exempt = (path: string) => NO_BLANK.some(([pattern]) => pattern.test(path));

const NEW = { outside: "0 months", sun: "50 %", age: "0 months", wet: false };
const rated = (strength: string) => ({ strength, basis: "assumed: invented for a test" });
const webbing = (): object => ({
  sections: [{ stock: "own", condition: NEW, wear: [{ kind: "stitching", at: "5 m", length: "0.2 m" }] }],
  endA: { kind: "weblock", ...rated("45 kN"), clamped: "0 months", bend: 8, condition: NEW },
  endB: { kind: "weblock", ...rated("45 kN"), clamped: "0 months", bend: 8, condition: NEW },
});
const anchor = {
  points: [{ name: "Point", kind: "bolt", ...rated("25 kN"), pullAngle: "90 deg", condition: NEW }],
  hardware: [{ name: "Part", kind: "shackle", ...rated("50 kN"), condition: NEW }],
};
/** Every part once, and nothing left blank. */
const STATED = {
  secondline: "rig/1",
  name: "test",
  span: "60 m",
  latitude: "middle",
  stocks: [
    {
      id: "own",
      name: "webbing",
      fibre: "polyamide",
      form: "webbing",
      mass: "60 g/m",
      width: "25 mm",
      ...rated("30 kN"),
      curve: [
        ["0 %", "0 kN"],
        ["20 %", "20 kN"],
      ],
      branches: [],
    },
  ],
  anchorA: anchor,
  anchorB: anchor,
  main: { pretension: "2 kN", ...webbing() },
  backup: {
    slack: "5 %",
    ...webbing(),
    connections: [{ at: 0.5, ...rated("15 kN"), condition: NEW }],
    tapes: [{ at: 0.3, ...rated("300 N"), condition: NEW }],
  },
  rings: [{ name: "Ring", mass: "0.1 kg", ...rated("40 kN"), condition: NEW }],
  leash: {
    stock: "own",
    length: "1.4 m",
    knots: [{ kind: "barrel", where: "ring" }],
    condition: NEW,
    falls: 0,
    sheathSlip: "0 %",
    glazed: "0 %",
  },
  harness: { ...rated("15 kN"), condition: NEW },
  walker: { mass: "80 kg" },
  ground: [
    ["0 m", "-1 m"],
    ["60 m", "-1 m"],
  ],
} as unknown as RigDocument;

const concrete = (path: string) => path.replaceAll("[]", "[0]");

/** Values from the least to the most that a field accepts, as they are typed. */
function valuesOf(field: Field): readonly unknown[] {
  switch (field.kind) {
    case "quantity": {
      const [low, high] = field.limits;
      const natural = field.natural ?? field.limits;
      const middle = (natural[0] + natural[1]) / 2;
      return [...new Set([low, natural[0], middle, natural[1], high])].map((value) => {
        const text = quantityText(value, field.dimension, undefined, 12);
        return field.dimension === "ratio" || field.dimension === "count" ? Number(text) : text;
      });
    }
    case "choice":
      return field.options.map(({ value }) => value);
    case "flag":
      return [false, true];
    case "text":
    case "basis":
    case "stock":
      return [];
  }
}

const read = (document: RigDocument): Rig | undefined => {
  const reading = readRig(JSON.stringify(document));
  return reading.ok ? reading.rig : undefined;
};

/** Where the worn places of the test lie. */
const PLACES: Readonly<Record<string, string>> = { at: "5 m", length: "0.2 m", from: "10 m", to: "12 m" };

const isNothing = (got: FactValue): boolean => typeof got === "object" && "code" in got && got.code === "got.nothing";

/** The document with a part of another kind: its needed fields put in, and its forbidden fields taken out. */
function repaired(document: RigDocument): RigDocument | undefined {
  let now = document;
  for (let i = 0; i < 12; i++) {
    const reading = readRig(JSON.stringify(now));
    if (reading.ok) return now;
    for (const { path, got } of reading.issues) {
      const field = FIELDS[path.replace(/\[\d+\]/g, "[]")];
      if (field === undefined) return undefined;
      const place = PLACES[path.replace(/^.*\./, "")];
      const needed = isNothing(got) ? (place ?? valuesOf(field)[1] ?? valuesOf(field)[0]) : undefined;
      now = editDocument(now, path, needed);
    }
  }
  return undefined;
}

/** The part to which a field belongs: the nearest group with a kind, or the group of the part. */
function ownerOf(path: string): { owner: string; kinds: readonly string[] } {
  const groups = path.split(".").map((_, i, steps) => steps.slice(0, steps.length - 1 - i).join("."));
  for (const group of groups) {
    const kind = FIELDS[`${group}.kind`];
    if (kind?.kind === "choice" && `${group}.kind` !== path)
      return { owner: group, kinds: kind.options.map((o) => o.value) };
  }
  return { owner: path.startsWith("stocks") ? "leash" : path.replace(/(\.condition)?\.\w+$/, ""), kinds: [] };
}

/** Months of a time as the documents here write it. */
function monthsIn(text: unknown): number | undefined {
  if (typeof text !== "string") return undefined;
  const [number, unit] = text.split(" ");
  const months = { month: 1, months: 1, year: 12, years: 12 }[unit!];
  if (months === undefined) throw new Error(`${text} is in neither months nor years`);
  return Number(number) * months;
}

interface WrittenCondition {
  readonly outside?: string;
  readonly age?: string;
}

/** Impossible entries for a part: outside for longer than it exists, or in a clamp for longer than outside. */
function isPossible(document: RigDocument): boolean {
  const conditions = [...JSON.stringify(document).matchAll(/"condition":(\{[^{}]*\})/g)];
  const life = ({ age }: WrittenCondition) => monthsIn(age) ?? 600;
  const read = conditions.map(([, text]) => JSON.parse(text!) as WrittenCondition);
  if (read.some((one) => (monthsIn(one.outside) ?? 0) > life(one) + 1e-6)) return false;
  return ["main", "backup"].every((line) =>
    ["endA", "endB"].every((end) => {
      const condition = (valueAt(document, `${line}.sections[0].condition`) ?? {}) as WrittenCondition;
      const clamped = monthsIn(valueAt(document, `${line}.${end}.clamped`)) ?? 0;
      return clamped <= (monthsIn(condition.outside) ?? life(condition)) + 1e-6;
    }),
  );
}

const found = new Map<string, readonly PartStrength[] | undefined>();
function strengths(document: RigDocument): readonly PartStrength[] | undefined {
  const key = JSON.stringify(document);
  if (!found.has(key)) {
    const rig = read(document);
    found.set(key, rig !== undefined && isPossible(document) ? partStrengths(rig) : undefined);
  }
  return found.get(key);
}

/** Parts that hold more by the first account than by the second. */
function stronger(blank: readonly PartStrength[], stated: readonly PartStrength[]): readonly string[] {
  return blank.flatMap((part) => {
    const other = stated.find(({ id }) => id === part.id)!;
    const more = part.strength > other.strength * (1 + 1e-9) || part.strength5 > other.strength5 * (1 + 1e-9);
    return more
      ? [`${part.id}: ${part.strength} > ${other.strength} or 5 %: ${part.strength5} > ${other.strength5}`]
      : [];
  });
}

/** Documents in which the other fields of the part, and of the webbing in it, are blank or anything. */
function contexts(base: RigDocument, path: string, owner: string): RigDocument[] {
  const { uniform } = seededRandom(7);
  const section = `${owner.split(".")[0]}.sections[].condition.`;
  const others = Object.keys(FIELDS).filter(
    (other) =>
      other !== path &&
      !exempt(other) &&
      !other.endsWith(".kind") &&
      (other.startsWith(`${owner}.`) || other.startsWith(section)) &&
      valueAt(base, concrete(other)) !== undefined,
  );
  const made = [base];
  // The other anchor, the other end and the backup are made by the same code.
  const count = /^(anchorB|backup)|\.endB/.test(path) ? 1 : 6;
  for (let i = 0; i < count; i++) {
    let document = base;
    for (const other of others) {
      const values = [undefined, valueAt(base, concrete(other)), ...valuesOf(FIELDS[other]!)];
      document = editDocument(document, concrete(other), values[Math.floor(uniform() * values.length)]);
    }
    made.push(document);
  }
  return made;
}

const tried = Object.keys(FIELDS).filter((path) => !exempt(path) && !path.endsWith(".kind"));

describe("the fields of the rig document", () => {
  it("are all tried, or left out for a reason that still holds for some field", () => {
    expect(tried.length).toBeGreaterThan(80);
    for (const [pattern, why] of NO_BLANK)
      expect(
        Object.keys(FIELDS).some((path) => pattern.test(path)),
        why,
      ).toBe(true);
  });
});

describe("left blank", () => {
  it.each(tried)("%s makes no part stronger than anything that could be written there, and is named", (path) => {
    const { owner, kinds } = ownerOf(path);
    const at = concrete(path);
    const bases = (kinds.length === 0 ? [undefined] : kinds).flatMap((kind) => {
      const base = repaired(kind === undefined ? STATED : editDocument(STATED, concrete(`${owner}.kind`), kind));
      return base === undefined ? [] : [base];
    });
    const faults: string[] = [];
    let [accepted, compared] = [0, 0];
    for (const base of bases) {
      for (const [i, context] of contexts(base, path, owner).entries()) {
        const blankDocument = editDocument(context, at, undefined);
        const stated = valuesOf(FIELDS[path]!).flatMap((value) => {
          const parts = strengths(editDocument(context, at, value));
          return parts === undefined ? [] : [{ value, parts }];
        });
        const unknown = stated.find(({ value }) => value === "unknown");
        const blank = strengths(blankDocument) ?? unknown?.parts;
        accepted += stated.length;
        if (blank === undefined) continue;
        compared += stated.length;
        for (const { value, parts } of stated) {
          for (const fault of stronger(blank, parts)) faults.push(`${JSON.stringify(value)} in ${i}: ${fault}`);
        }
        if (i > 0 || unknown !== undefined) continue;
        for (const { parts } of stated) {
          for (const part of parts) {
            const without = blank.find(({ id }) => id === part.id)!;
            const named = without.blanks?.some(({ field }) => field.replace(/\[\d+\]/g, "[]") === path);
            if (without.strength < part.strength * (1 - 1e-9) && !named) faults.push(`${part.id} does not name it`);
          }
        }
      }
    }
    expect(accepted, "no document of any kind takes it").toBeGreaterThan(0);
    // A field that must be there has no blank; any other has been compared.
    expect(compared > 0 || NEEDED.test(path), "it was never compared").toBe(true);
    expect([...new Set(faults)].slice(0, 8)).toEqual([]);
  });
});
