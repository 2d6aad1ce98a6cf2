/**
 * Loss to sunlight. The dose is counted in months of full sun in an average month of a mid-latitude year; season,
 * latitude and shade turn calendar months into dose (see `sunDose.ts`).
 */
import type { Basis, Condition, Fibre } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";
import { mostDose } from "./sunDose.ts";
import { possibleYears } from "./unknown.ts";

interface SunModel {
  /** Share left after a dose [months]. */
  readonly retention: (months: number) => number;
  /** Longest dose covered [months]. */
  readonly to: number;
  readonly basis: Basis;
}

/** Loss that levels off. */
function levellingLoss(fibre: "polyester" | "aramid") {
  const [loss, years] = [constant(`sun.${fibre}.loss`), constant(`sun.${fibre}.years`)];
  return (months: number) => 1 - loss * (1 - Math.exp(-months / 12 / years));
}

/** Loss in a straight line, given by the loss after 36 months. */
function straightLoss(fibre: "polyamide" | "hmpe") {
  const loss = constant(`sun.${fibre}.loss`);
  return (months: number) => 1 - (loss * months) / 36;
}

const SUN_MODELS: Readonly<Record<Fibre, SunModel>> = {
  polyester: {
    retention: levellingLoss("polyester"),
    to: constant("sun.polyester.to"),
    basis: {
      kind: "assumed",
      note: "curve drawn through WSTDA-UV-Sling-2003 as reproduced elsewhere: most loss in 12 months, levelling off near 30 %",
    },
  },
  polyamide: {
    retention: straightLoss("polyamide"),
    to: constant("sun.polyamide.to"),
    basis: {
      kind: "assumed",
      note: "line drawn through WSTDA-UV-Sling-2003 as reproduced elsewhere: steady loss nearing 50 to 60 % after 36 months",
    },
  },
  hmpe: {
    retention: straightLoss("hmpe"),
    to: constant("sun.hmpe.to"),
    basis: { kind: "assumed", note: "no open number found for HMPE in the sun; taken as bad as polyamide" },
  },
  aramid: {
    retention: levellingLoss("aramid"),
    to: constant("sun.aramid.to"),
    basis: { kind: "assumed", note: "from memory, aramid loses strength fast in daylight; the curve is assumed" },
  },
};

/**
 * The spread grows with the loss itself. It is so wide that "up to 40 % lost in 16 months" (Lift & Access, quoting WSTDA 2003,
 * of synthetic slings) is not below the 5 % value of either fibre [-].
 */
const SPREAD_PER_LOSS = constant("sun.spreadPerLoss");

/**
 * Dose of a condition [months of full sun]; undefined when the condition says nothing about it. Months outside may have been any months
 * of its years: they count as the sunniest.
 */
export function conditionSunMonths(condition: Condition): number | undefined {
  if (condition.sunMonths !== undefined) return condition.sunMonths;
  if (condition.monthsOutside === undefined) return undefined;
  return (condition.sun ?? 1) * mostDose(condition.monthsOutside, possibleYears(condition), condition.latitude);
}

/** Factor for a dose of sun [months of full sun] on a fibre. */
export function sunFactor(fibre: Fibre, months: number): StrengthFactor {
  const model = SUN_MODELS[fibre];
  return evaluateFactor({
    name: "sun",
    cause: `sun on ${fibre}`,
    shared: constant("sun.shared"),
    basis: model.basis,
    validity: { quantity: "time in full sun", unit: "months", from: 0, to: model.to, got: months },
    at: (m) => {
      const value = model.retention(m);
      return { value, spread: SPREAD_PER_LOSS * (1 - value) };
    },
  });
}
