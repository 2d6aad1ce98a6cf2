/** Reasons to doubt a group's numbers. They are shown before the numbers, and the program never acts on one silently. */
import { isComplete } from "@secondline/statistics";
import { copiesIn } from "../breakLog/copies.ts";
import { batchKey } from "../breakLog/testGroup.ts";
import { type DoubtFact, doubtFact } from "./doubtFacts.ts";
import type { GroupFindings } from "./groupFindings.ts";

export interface GroupDoubt {
  readonly kind:
    | "fewTests"
    | "censored"
    | "copies"
    | "outlier"
    | "batches"
    | "batchesUnchecked"
    | "batchesUnseen"
    | "modes"
    | "distribution"
    | "noFit"
    | "spread";
  readonly message: DoubtFact;
}

/** Coefficient of variation above which the tests hardly describe one kind of part [-]. */
const WIDE_SPREAD = 0.25;

/** `accepted`: how many families fit and were not rejected [-]. */
export function groupDoubts(found: GroupFindings, accepted: number): GroupDoubt[] {
  return [
    few(found),
    censored(found),
    copies(found),
    outlier(found),
    batches(found),
    unseenBatches(found),
    failureModes(found),
    distribution(found, accepted),
    spread(found),
  ].flat();
}

function few({ tests }: GroupFindings): GroupDoubt[] {
  const count = tests.length;
  if (count > 4) return [];
  return [{ kind: "fewTests", message: doubtFact(count <= 2 ? "doubt.fewTests" : "doubt.severalTests", { count }) }];
}

function censored({ sample }: GroupFindings): GroupDoubt[] {
  if (isComplete(sample)) return [];
  const count = sample.filter((o) => o.kind !== "exact").length;
  return [{ kind: "censored", message: doubtFact("doubt.censored", { count, of: sample.length }) }];
}

function copies({ tests }: GroupFindings): GroupDoubt[] {
  const count = copiesIn(tests);
  return count === 0 ? [] : [{ kind: "copies", message: doubtFact("doubt.copies", { count, of: tests.length }) }];
}

function outlier({ outlier: test, sample }: GroupFindings): GroupDoubt[] {
  if (test?.index === undefined) return [];
  const values = sample.flatMap((o) => (o.kind === "exact" ? [o.value] : []));
  return [{ kind: "outlier", message: doubtFact("doubt.outlier", { load: { force: values[test.index]! } }) }];
}

function batches({ batches: test, tests }: GroupFindings): GroupDoubt[] {
  const names = new Set(tests.map(batchKey));
  if (names.size < 2) return [];
  if (test === undefined) return [{ kind: "batchesUnchecked", message: doubtFact("doubt.batchesUnchecked", {}) }];
  return test.poolable ? [] : [{ kind: "batches", message: doubtFact("doubt.batches", {}) }];
}

/** Cases that the tests cannot show, and that the value therefore does not cover. */
function unseenBatches({ tests }: GroupFindings): GroupDoubt[] {
  const named = new Set(tests.map(batchKey).filter((batch) => batch !== ""));
  if (tests.length < 3 || named.size > 1) return [];
  const code = named.size === 1 ? "doubt.oneBatch" : "doubt.noBatches";
  return [{ kind: "batchesUnseen", message: doubtFact(code, {}) }];
}

function failureModes({ tests }: GroupFindings): GroupDoubt[] {
  const broke = tests.filter(({ outcome }) => outcome === "broke");
  const names = [...new Set(broke.flatMap(({ failureMode }) => failureMode ?? []))];
  if (names.length < 2) return [];
  return [{ kind: "modes", message: doubtFact("doubt.modes", { list: { list: names.slice(0, 4) } }) }];
}

function distribution({ families, failures }: GroupFindings, accepted: number): GroupDoubt[] {
  if (families.length === 0) {
    return [{ kind: "noFit", message: doubtFact("doubt.noFit", { reason: { brought: failures[0]!.reason } }) }];
  }
  return accepted > 0 ? [] : [{ kind: "distribution", message: doubtFact("doubt.distribution", {}) }];
}

function spread({ mean, deviation }: GroupFindings): GroupDoubt[] {
  if (mean === undefined || deviation === undefined || deviation / mean <= WIDE_SPREAD) return [];
  const percent = { rounded: (100 * deviation) / mean, decimals: 0 };
  return [{ kind: "spread", message: doubtFact("doubt.spread", { percent }) }];
}
