/** The report on the tests of one group: numbers, fits, doubts, and the characteristic value. */
import {
  andersonDarling,
  batchesPoolable,
  en1990Factor,
  exactValues,
  FAMILY_NAMES,
  type Fit,
  fitFamily,
  fittedQuantile,
  isComplete,
  maximumNormedResidual,
  mean,
  type Observation,
  type Poolability,
  profileInterval,
  standardDeviation,
} from "@secondline/statistics";
import { grouped } from "../breakLog/grouped.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { batchKey } from "../breakLog/testGroup.ts";
import { brokenValues, CHARACTERISTIC_CONTENT, characteristicValues } from "./characteristic.ts";
import { type GroupDoubt, groupDoubts } from "./doubts.ts";
import type { FamilyReport, GroupFindings } from "./groupFindings.ts";
import { narrowing } from "./narrowing.ts";

export interface GroupReport extends GroupFindings {
  readonly doubts: readonly GroupDoubt[];
}

/** Least number of values for which the published significance levels are good [-]. */
const LEAST_VALUES_FOR_GOODNESS = 5;
/** Significance below which a family is rejected [-]. */
const REJECTION_SIGNIFICANCE = 0.05;

export interface GroupReportOptions {
  /** Share of parts that reach the characteristic value; default 0.95 [-]. */
  readonly content?: number;
}

export function groupReport(
  key: string,
  label: string,
  tests: readonly BreakTest[],
  { content = CHARACTERISTIC_CONTENT }: GroupReportOptions = {},
): GroupReport {
  const sample = tests.map((test) => test.result);
  const values = exactValues(sample);
  const fits = FAMILY_NAMES.map((name) => fitFamily(sample, name));
  const families = fits.flatMap((fit) => (fit.ok ? [familyReport(sample, fit)] : []));
  const accepted = families.filter((f) => (f.goodness?.significance ?? 1) >= REJECTION_SIGNIFICANCE);
  const best = [...(accepted.length > 0 ? accepted : families)].sort(
    (a, b) => (a.fit.aicc ?? a.fit.aic) - (b.fit.aicc ?? b.fit.aic),
  )[0];
  const outlier = maximumNormedResidual(values);
  const batches = poolability(tests);
  const deviation = standardDeviation(values);
  const options = { content, batches: tests.map(batchKey) };
  const [at75, at95] = characteristicValues(sample, [0.75, 0.95], options);
  const characteristic = { at75: at75!, at95: at95! };
  const found: GroupFindings = {
    key,
    label,
    tests,
    sample,
    ...(values.length > 0 ? { mean: mean(values) } : {}),
    ...(deviation === undefined ? {} : { deviation }),
    families,
    failures: fits.flatMap((fit) => (fit.ok ? [] : [fit])),
    ...(best === undefined ? {} : { best: best.fit.family }),
    ...(outlier === undefined ? {} : { outlier }),
    ...(batches === undefined ? {} : { batches }),
    characteristic,
    ...en1990(sample),
    narrowing: narrowing(brokenValues(sample), characteristic.at75),
  };
  return { ...found, doubts: groupDoubts(found, accepted.length) };
}

function familyReport(sample: readonly Observation[], fit: Fit): FamilyReport {
  const interval = (p: number): [number, number, number] => {
    const [low, high] = profileInterval(sample, fit, { kind: "quantile", p }, 0.95);
    return [low, fittedQuantile(fit, p), high];
  };
  const values = exactValues(sample);
  const testable = isComplete(sample) && values.length >= LEAST_VALUES_FOR_GOODNESS;
  return {
    fit,
    median: interval(0.5),
    fivePercent: interval(1 - CHARACTERISTIC_CONTENT),
    ...(testable ? { goodness: andersonDarling(values, fit.family, withUnbiasedSpread(values, fit)) } : {}),
  };
}

/** The published significance levels go with n − 1 in the normal families' spread, not with the likelihood's n. */
function withUnbiasedSpread(values: readonly number[], fit: Fit): Fit {
  if (fit.family === "weibull") return fit;
  return { ...fit, logScale: fit.logScale + 0.5 * Math.log(values.length / (values.length - 1)) };
}

function poolability(tests: readonly BreakTest[]): Poolability | undefined {
  const byBatch = grouped(tests, batchKey);
  const batches = [...byBatch.values()].map((batch) => exactValues(batch.map((test) => test.result)));
  const enough = batches.length >= 2 && batches.every((b) => b.length >= 2) && new Set(batches.flat()).size >= 2;
  return enough ? batchesPoolable(batches) : undefined;
}

function en1990(sample: readonly Observation[]): Pick<GroupFindings, "en1990"> {
  const values = exactValues(sample);
  // Equal values have no deviation to multiply.
  if (!isComplete(sample) || values.length < 3 || new Set(values).size < 2) return {};
  const factor = en1990Factor(values.length, false);
  return { en1990: { factor, value: mean(values) - factor * standardDeviation(values)! } };
}
