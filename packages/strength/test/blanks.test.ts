import type { AnchorPart, Condition, LineEnd, Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { partStrengths } from "../src/index.ts";
import { exampleRig, leashRope, polyesterWebbing, rated, section } from "./exampleRig.ts";

/**
 * A blank is never better than anything that could be written there: for every combination of all fields of every kind of part,
 * taking out one value never raises the central or the 5 % strength. `everyBlank.test.ts` tries every field of the document with fewer
 * combinations.
 */
type Values = Readonly<Record<string, readonly unknown[]>>;

const CONDITION: Values = {
  monthsOutside: [undefined, 0, 6, 24, 60, 120],
  sun: [undefined, 0, 0.5],
  latitude: [undefined, "high"],
  ageYears: [undefined, 0, 2, 10, 50],
  wet: [undefined, false, true],
};

/** Every choice of one value per field; blanks are left out. */
function combinations(values: Values): Record<string, unknown>[] {
  return Object.entries(values).reduce<Record<string, unknown>[]>(
    (made, [field, options]) =>
      made.flatMap((one) => options.map((value) => (value === undefined ? one : { ...one, [field]: value }))),
    [{}],
  );
}

/** A part has not been outside, or in a clamp, for longer than it has been there. */
function isPossible(given: Record<string, unknown>): boolean {
  const { monthsOutside, ageYears, monthsClamped } = given as Record<string, number | undefined>;
  const life = ageYears === undefined ? 600 : 12 * ageYears;
  return (monthsOutside ?? 0) <= life && (monthsClamped ?? 0) <= (monthsOutside ?? life);
}

interface Kind {
  readonly name: string;
  readonly id: string;
  readonly values: Values;
  readonly rig: (given: Record<string, unknown>) => Rig;
}

const conditionIn = ({ monthsOutside, sun, latitude, ageYears, wet }: Record<string, unknown>) =>
  Object.fromEntries(
    Object.entries({ monthsOutside, sun, latitude, ageYears, wet }).filter(([, value]) => value !== undefined),
  ) as Condition;
const without = (given: Record<string, unknown>, keys: readonly string[]) =>
  Object.fromEntries(Object.entries(given).filter(([key]) => keys.includes(key)));

function endKind(kind: LineEnd["kind"], stock = polyesterWebbing): Kind {
  const bends = { ...CONDITION, bend: [undefined, 0.1, 1, 8] };
  const values = kind === "weblock" ? { ...bends, monthsClamped: [undefined, 0, 6, 24, 60] } : bends;
  return {
    name: `${kind} on ${stock.fibre}`,
    id: "endA",
    values,
    rig: (given) => {
      const plain = exampleRig();
      const endA = { kind, rated: rated(60_000), ...without(given, ["monthsClamped", "bend"]) };
      return { ...plain, main: { ...plain.main, sections: [section({ stock, condition: conditionIn(given) })], endA } };
    },
  };
}

function anchorKind(kind: AnchorPart["kind"], list: "points" | "hardware", values: Values): Kind {
  return {
    name: kind,
    id: `anchorA.${list}.0`,
    values,
    rig: (given) => {
      const plain = exampleRig();
      const part = {
        name: "it",
        kind,
        rated: rated(25_000),
        condition: conditionIn(given),
        ...without(given, ["pullAngle", "rigged"]),
      };
      return { ...plain, anchorA: { ...plain.anchorA, [list]: [part] } };
    },
  };
}

const leash = (name: string, knots: Rig["leash"]["knots"], stock: Rig["leash"]["stock"]): Kind => ({
  name,
  id: "leash",
  values: {
    monthsOutside: [undefined, 0, 24, 60],
    ageYears: [undefined, 2, 10],
    wet: [undefined, false, true],
    falls: [undefined, 0, 400, 100_000],
    sheathSlip: [undefined, 0.05, 0.5],
    glazed: [undefined, 0.3, 0.99],
    form: stock.form === undefined ? [undefined] : [undefined, "rope", "webbing"],
  },
  rig: (given) => {
    const plain = exampleRig();
    const { form: _form, ...bare } = stock;
    const made = { ...bare, ...without(given, ["form"]) };
    const use = without(given, ["falls", "sheathSlip", "glazed"]);
    return { ...plain, leash: { stock: made, length: 1.4, knots, condition: conditionIn(given), ...use } };
  },
});

const KINDS: readonly Kind[] = [
  {
    name: "webbing with a seam and an old clamp mark",
    id: "main",
    values: { ...CONDITION, load: [undefined, 0, 3000, 20_000] },
    rig: (given) => {
      const plain = exampleRig();
      const wear = [
        { kind: "stitching", at: 30, length: 0.3 },
        { kind: "clampMark", at: 20, length: 0.2, months: 20, ...without(given, ["load"]) },
      ] as const;
      return { ...plain, main: { ...plain.main, sections: [section({ condition: conditionIn(given), wear })] } };
    },
  },
  endKind("weblock"),
  endKind("weblock", { ...polyesterWebbing, fibre: "aramid" }),
  endKind("sewnLoop", { ...polyesterWebbing, fibre: "polyamide" }),
  endKind("knot", { ...polyesterWebbing, fibre: "hmpe" }),
  leash("knotted leash", [{ kind: "barrel", where: "ring" }], leashRope),
  leash("sewn leash", [], leashRope),
  anchorKind("sling", "hardware", { ...CONDITION, rigged: [undefined, "straight", "choked", "basket"] }),
  anchorKind("shackle", "hardware", CONDITION),
  anchorKind("other", "hardware", CONDITION),
  anchorKind("tree", "points", CONDITION),
  anchorKind("bolt", "points", { ...CONDITION, pullAngle: [undefined, 0, 0.3, 0.54, 1, Math.PI / 2] }),
  {
    name: "harness",
    id: "harness",
    values: CONDITION,
    rig: (given) => exampleRig({ harness: { rated: rated(15_000), condition: conditionIn(given) } }),
  },
  {
    name: "connection",
    id: "connection.0",
    values: CONDITION,
    rig: (given) => {
      const plain = exampleRig();
      const joint = { at: 0.5, kind: "connection", rated: rated(20_000), condition: conditionIn(given) } as const;
      return { ...plain, backup: { ...plain.backup!, connections: [joint] } };
    },
  },
];

describe("a blank", () => {
  it.each(KINDS)("of a $name never makes it stronger than any value that is possible there", ({ id, values, rig }) => {
    const key = (given: Record<string, unknown>) => JSON.stringify(Object.entries(given).sort());
    const found = new Map<string, { strength: number; strength5: number }>();
    const holds = (given: Record<string, unknown>) => {
      const known = found.get(key(given)) ?? partStrengths(rig(given)).find((part) => part.id === id)!;
      found.set(key(given), known);
      return known;
    };
    const faults: string[] = [];
    for (const given of combinations(values).filter(isPossible)) {
      for (const field of Object.keys(given)) {
        const { [field]: _taken, ...blank } = given;
        const [stated, unknown] = [holds(given), holds(blank)];
        const better =
          unknown.strength > stated.strength * (1 + 1e-9) || unknown.strength5 > stated.strength5 * (1 + 1e-9);
        if (better)
          faults.push(
            `${field} of ${JSON.stringify(given)}: ${unknown.strength} > ${stated.strength} or 5 %: ${unknown.strength5} > ${stated.strength5}`,
          );
      }
    }
    expect(faults).toEqual([]);
  });

  it("is named with what it costs, the costliest first", () => {
    const plain = exampleRig();
    const { monthsClamped: _months, ...endA } = plain.main.endA;
    const rig = {
      ...plain,
      main: { ...plain.main, endA, sections: [section({ condition: { monthsOutside: 18, wet: false } })] },
    };
    const { blanks, strength } = partStrengths(rig).find((part) => part.id === "endA")!;
    expect(blanks!.map(({ field }) => field)).toEqual([
      "main.sections[0].condition.sun",
      "main.sections[0].condition.age",
      "main.endA.clamped",
    ]);
    const filled = { ...rig, main: { ...rig.main, endA: { ...endA, monthsClamped: 0 } } };
    const better = partStrengths(filled).find((part) => part.id === "endA")!;
    expect(strength / better.strength).toBeCloseTo(blanks![2]!.costs, 9);
  });
});
