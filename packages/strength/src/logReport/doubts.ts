/** What stands in the way of believing a group's numbers. Shown before the numbers, never acted upon silently. */

import { formatForce } from "@secondline/rig";
import { isComplete } from "@secondline/statistics";
import type { GroupFindings } from "./groupFindings.ts";

export interface Doubt {
  readonly kind:
    | "fewTests"
    | "censored"
    | "outlier"
    | "batches"
    | "batchesUnchecked"
    | "batchesUnseen"
    | "modes"
    | "distribution"
    | "noFit"
    | "spread";
  readonly message: string;
}

/** Coefficient of variation above which the tests hardly describe one kind of part [-]. */
const WIDE_SPREAD = 0.25;

/** `accepted`: how many families fit and were not rejected [-]. */
export function doubtsOf(found: GroupFindings, accepted: number): Doubt[] {
  return [
    few(found),
    censored(found),
    outlier(found),
    batches(found),
    unseen(found),
    modes(found),
    distribution(found, accepted),
    spread(found),
  ].flat();
}

function few({ tests }: GroupFindings): Doubt[] {
  const n = tests.length;
  if (n > 4) return [];
  const message =
    n <= 2
      ? `${n === 1 ? "One test says" : "Two tests say"} next to nothing about the scatter: the characteristic value is very cautious.`
      : `${n} tests give a wide answer: the exact factors are large for so few.`;
  return [{ kind: "fewTests", message }];
}

function censored({ sample }: GroupFindings): Doubt[] {
  if (isComplete(sample)) return [];
  const count = sample.filter((o) => o.kind !== "exact").length;
  const bounds = count === 1 ? "is a bound, not a breaking load" : "are bounds, not breaking loads";
  const text = `${count} of ${sample.length} results ${bounds}, and ${count === 1 ? "counts" : "count"} as such: what they say of the scatter is little.`;
  return [{ kind: "censored", message: text }];
}

function outlier({ outlier: test, sample }: GroupFindings): Doubt[] {
  if (test?.index === undefined) return [];
  const values = sample.flatMap((o) => (o.kind === "exact" ? [o.value] : []));
  const value = formatForce(values[test.index]!);
  return [
    {
      kind: "outlier",
      message: `${value} does not belong with the others (maximum normed residual). It is kept: find out why.`,
    },
  ];
}

function batches({ batches: test, tests }: GroupFindings): Doubt[] {
  const names = new Set(tests.map((t) => t.batch ?? ""));
  if (names.size < 2) return [];
  if (test === undefined) {
    return [
      {
        kind: "batchesUnchecked",
        message:
          "There are several batches, but too few tests in one of them to compare them; scatter between batches is allowed for.",
      },
    ];
  }
  if (test.poolable) return [];
  return [
    {
      kind: "batches",
      message:
        "The batches differ (k-sample Anderson–Darling, 5 %). The values allow for scatter between batches, and are lower for it.",
    },
  ];
}

/** What the tests cannot show is said not to be covered. */
function unseen({ tests }: GroupFindings): Doubt[] {
  const named = new Set(tests.flatMap((t) => (t.batch === undefined || t.batch === "" ? [] : [t.batch])));
  if (tests.length < 3 || named.size > 1) return [];
  const why = named.size === 1 ? "All tests are of one batch" : "No batches are named";
  const message = `${why}: other batches, or weak parts mixed in among good ones, are not covered by these values.`;
  return [{ kind: "batchesUnseen", message }];
}

function modes({ tests }: GroupFindings): Doubt[] {
  const broke = tests.filter(({ outcome }) => outcome === "broke");
  const names = [...new Set(broke.flatMap(({ failureMode }) => failureMode ?? []))];
  if (names.length < 2) return [];
  const message = `They failed in different ways (${names.slice(0, 4).join(", ")}). The values are for whichever comes first; one place alone holds no less.`;
  return [{ kind: "modes", message }];
}

function distribution({ families, failures }: GroupFindings, accepted: number): Doubt[] {
  if (families.length === 0) return [{ kind: "noFit", message: `No distribution was fitted: ${failures[0]!.reason}.` }];
  if (accepted > 0) return [];
  return [
    {
      kind: "distribution",
      message:
        "No distribution fits these tests (Anderson–Darling, 5 %): parts of several kinds may be mixed, which no value here covers.",
    },
  ];
}

function spread({ mean, deviation }: GroupFindings): Doubt[] {
  if (mean === undefined || deviation === undefined || deviation / mean <= WIDE_SPREAD) return [];
  const percent = Math.round((100 * deviation) / mean);
  return [
    {
      kind: "spread",
      message: `The results scatter by ${percent} %: more than one kind of part, state or failure may be mixed here.`,
    },
  ];
}
