/** The numbers computed from the tests of one group, before any doubt about them. */
import type {
  FamilyName,
  Fit,
  FitFailure,
  GoodnessOfFit,
  Observation,
  OutlierTest,
  Poolability,
} from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import type { Characteristic } from "./characteristic.ts";
import type { Narrowing } from "./narrowing.ts";

export interface FamilyReport {
  readonly fit: Fit;
  /** Two-sided 95 % profile-likelihood intervals of the median and of the 5 % value [N]. */
  readonly median: readonly [low: number, value: number, high: number];
  readonly fivePercent: readonly [low: number, value: number, high: number];
  /** Only for complete samples of five values or more. */
  readonly goodness?: GoodnessOfFit;
}

export interface GroupFindings {
  readonly key: string;
  /** Such as "webbing, polyester 25 mm, fall zone, dry". */
  readonly label: string;
  readonly tests: readonly BreakTest[];
  readonly sample: readonly Observation[];
  /** Mean and standard deviation of the breaking loads [N]; the mean needs one, the deviation two. */
  readonly mean?: number;
  readonly deviation?: number;
  readonly families: readonly FamilyReport[];
  readonly failures: readonly FitFailure[];
  /** The family with the least AICc among the families that are not rejected. */
  readonly best?: FamilyName;
  readonly outlier?: OutlierTest;
  readonly batches?: Poolability;
  readonly characteristic: { readonly at75: Characteristic; readonly at95: Characteristic };
  /** EN 1990 Annex D, spread from the tests [N]; from three complete tests on. */
  readonly en1990?: { readonly factor: number; readonly value: number };
  readonly narrowing: readonly Narrowing[];
}
