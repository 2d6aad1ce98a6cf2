/** Random rigs with random break logs, and the effect of a worse history or a lower test on their strengths. */
import type { Random } from "@secondline/statistics";
import { type BreakTest, factorsFromLog, partStrengths } from "../src/index.ts";
import { exampleRig, section } from "./exampleRig.ts";

export interface History {
  /** Months outside, falls in a zone, months in a clamp that has been moved. */
  readonly months: number;
  readonly falls: number;
  readonly clamped: number;
}

export const randomHistory = (random: Random): History => ({
  months: 30 * random.uniform(),
  falls: 350 * random.uniform(),
  clamped: 22 * random.uniform(),
});

/** The same with one thing worse. */
export function worse(history: History, random: Random): History {
  const key = (["months", "falls", "clamped"] as const)[Math.floor(3 * random.uniform())]!;
  return { ...history, [key]: history[key] * (1 + 0.6 * random.uniform()) + 0.1 };
}

/** New pieces and pieces from the sun; with `all` from fall zones and clamp marks too, as a line has them that came down. */
export function randomLog(random: Random, all: boolean): BreakTest[] {
  const level = 0.8 + 0.35 * random.uniform();
  const sunMonths = 2 + 22 * random.uniform();
  const some = (share: number, given: Partial<BreakTest>): BreakTest[] =>
    Array.from({ length: Math.floor(6 * random.uniform()) }, () => {
      const value = 30_000 * level * share * Math.exp(0.05 * random.normal());
      const result = { kind: "exact", value } as const;
      return { part: "webbing", material: "pes", state: "used", wet: false, outcome: "broke", result, ...given };
    });
  const worn = 0.55 + 0.4 * random.uniform();
  return [
    ...some(1, { state: "new", sunMonths: 0 }),
    ...some(worn, { sunMonths }),
    ...(all ? some(worn * 0.85, { sunMonths, falls: 20 + 200 * random.uniform() }) : []),
    ...(all ? some(worn * 0.6, { sunMonths, state: "clamp mark", clampedMonths: 1 + 20 * random.uniform() }) : []),
  ];
}

/** In a quarter of the logs some pieces outlast the machine. */
export function someSurvive(log: readonly BreakTest[], random: Random): BreakTest[] {
  const share = random.uniform() < 0.25 ? 0.4 : 0;
  return log.map((test) =>
    random.uniform() < share && test.result.kind === "exact"
      ? { ...test, outcome: "stopped", result: { kind: "above", value: test.result.value } }
      : test,
  );
}

/** One test lower by up to a third, a survivor's bound as well as a breaking load; as it was when there is none. */
export function oneLower(log: readonly BreakTest[], random: Random): BreakTest[] {
  const which = Math.floor(log.length * random.uniform());
  return log.map((test, i) => {
    if (i !== which || (test.result.kind !== "exact" && test.result.kind !== "above")) return test;
    const value = test.result.value * (0.67 + 0.32 * random.uniform());
    return { ...test, result: { kind: test.result.kind, value } };
  });
}

/** Some breaks told only as a load below which they broke, or as an interval. */
export function someBounded(log: readonly BreakTest[], random: Random): BreakTest[] {
  return log.map((test) => {
    if (test.result.kind !== "exact" || random.uniform() < 0.5) return test;
    const { value } = test.result;
    const by = random.uniform();
    if (random.uniform() < 0.7)
      return { ...test, outcome: "broke below", result: { kind: "below", value: value * (0.8 + by) } };
    return {
      ...test,
      result: { kind: "between", from: value * (0.75 + 0.25 * random.uniform()), to: value * (1 + 0.1 * by) },
    };
  });
}

/** One load lower below which a piece broke, or one end of an interval. */
export function worseBound(log: readonly BreakTest[], kind: "below" | "between", random: Random): BreakTest[] {
  const bounded = log.flatMap(({ result }, i) => (result.kind === kind ? [i] : []));
  const which = bounded[Math.floor(bounded.length * random.uniform())];
  const [least, range] = kind === "below" ? [0.3, 0.69] : [0.67, 0.32];
  const [by, isLower] = [least + range * random.uniform(), random.uniform() < 0.5];
  return log.map((test, i): BreakTest => {
    const { result } = test;
    if (i !== which) return test;
    if (result.kind === "below") return { ...test, result: { kind: "below", value: result.value * by } };
    if (result.kind !== "between") return test;
    if (isLower) return { ...test, result: { ...result, from: result.from * by } };
    return { ...test, result: { ...result, to: result.from + (result.to - result.from) * by } };
  });
}

interface Held {
  readonly id: string;
  readonly strength: number;
  readonly strength5: number;
}

/** Every part, and of the main line every zone. */
export function held({ months, falls, clamped }: History, log: readonly BreakTest[]): Held[] {
  const wear = [
    { kind: "fallZone" as const, from: 20, to: 30, falls },
    { kind: "clampMark" as const, at: 5, length: 0.15, months: clamped, load: 3000 },
  ];
  const main = {
    ...exampleRig().main,
    sections: [section({ condition: { monthsOutside: months, sun: 1, ageYears: 2.5, wet: false }, wear })],
  };
  return partStrengths(exampleRig({ main }), factorsFromLog(log)).flatMap((part) =>
    (part.zones ?? [part]).map(({ strength, strength5 }, i) => ({ id: `${part.id} ${i}`, strength, strength5 })),
  );
}

/** Largest share by which a strength rose from one to the other: central, and of the 5 % value [-]. */
export function largestRise(before: readonly Held[], after: readonly Held[]): readonly [number, number] {
  const rise = (of: (one: Held) => number) => Math.max(...before.map((one, i) => of(after[i]!) / of(one) - 1));
  return [rise(({ strength }) => strength), rise(({ strength5 }) => strength5)];
}
