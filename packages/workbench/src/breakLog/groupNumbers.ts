/** What the statistics say of a group of tests, as rows and sentences. */
import type { GroupReport, Narrowing } from "@secondline/strength";
import { broughtIn, capital, listed, quantity } from "@secondline/words";
import { sayBreakLog as say } from "@secondline/words/page/breakLog";

export interface GroupNumber {
  readonly label: string;
  readonly value: string;
  readonly note: string;
  /** A number that riggers decide by. */
  readonly strong: boolean;
}

/** A difference beside loads in kilonewtons: in the same unit, however small. */
const small = (newtons: number): string => `${quantity.number(Number((newtons / 1000).toPrecision(2)))} kN`;
const rounded = (value: number, decimals: number): string => quantity.rounded(value, decimals, "nearest");

export function groupNumbers(report: GroupReport): readonly GroupNumber[] {
  const { tests, sample, mean, deviation, characteristic, en1990 } = report;
  const bounds = sample.filter(({ kind }) => kind !== "exact").length;
  const row = (label: string, value: string, note: string, strong = false) => ({ label, value, note, strong });
  const bound = (label: string, { value, method }: GroupReport["characteristic"]["at75"]) =>
    row(label, quantity.strength(value), broughtIn(method), true);
  const spread = () =>
    deviation === undefined
      ? say("groupPart.noSpread")
      : `± ${quantity.load(deviation)}, ${quantity.percent(deviation / mean!, "up")}`;
  return [
    bound(say("groupPart.bound75"), characteristic.at75),
    bound(say("groupPart.bound95"), characteristic.at95),
    ...(en1990
      ? [
          row(
            say("groupPart.en1990"),
            quantity.strength(en1990.value),
            say("groupPart.k", { factor: quantity.rounded(en1990.factor, 2, "up") }),
          ),
        ]
      : []),
    ...(mean === undefined ? [] : [row(say("groupPart.mean"), quantity.strength(mean), spread())]),
    row(
      say("groupPart.tests"),
      String(tests.length),
      bounds === 0 ? say("groupPart.allBroke") : say("groupPart.boundCount", { bounds }),
    ),
  ];
}

/** The families that were fitted: name, median, what 5 % fall short of, and how well each fits. */
export function fitRows({ families, best }: GroupReport): readonly (readonly string[])[] {
  const range = ([low, value, high]: readonly [number, number, number]) =>
    say("groupPart.value", {
      value: quantity.strength(value),
      from: quantity.strength(low),
      to: quantity.strength(high),
    });
  return families.map(({ fit, median, fivePercent, goodness }) => [
    `${capital(broughtIn(fit.family))}${best === fit.family ? say("groupPart.least") : ""}`,
    range(median),
    range(fivePercent),
    fit.aicc === undefined ? say("groupPart.tooFewTests") : rounded(fit.aicc, 1),
    goodness ? say("groupPart.p", { significance: significance(goodness) }) : say("groupPart.tooFewForGoodness"),
  ]);
}

const significance = (goodness: { readonly significance: number }): string =>
  goodness.significance < 0.01 ? `< ${quantity.number(0.01)}` : `= ${rounded(goodness.significance, 2)}`;

export const FIT_HEADS = [
  say("groupPart.family"),
  say("groupPart.median"),
  say("groupPart.fivePercentValue"),
  say("groupPart.aicc"),
  say("groupPart.andersonDarling"),
];

/** Families that could not be fitted, and whether batches may be pooled. */
export function fitNotes({ failures, batches }: GroupReport): readonly string[] {
  return [
    ...failures.map(({ family, reason }) =>
      say("groupPart.notFitted", { family: capital(broughtIn(family)), reason: broughtIn(reason) }),
    ),
    ...(batches
      ? [
          say("groupPart.batchTest", {
            pooled: say(batches.poolable ? "groupPart.mayPooled" : "groupPart.differ"),
            statistic: rounded(batches.statistic, 2),
            critical: rounded(batches.critical, 2),
          }),
        ]
      : []),
  ];
}

/** The heading of the fits: what one more test would be worth. */
export const fitsTitle = ([one]: readonly Narrowing[]): string =>
  say("groupPart.fitsTitle", {
    best: one ? say("groupPart.gainOfOneMore", { small: small(Math.max(0, one.gain)) }) : "",
  });

/** What more tests would be worth. */
export function gainWords(steps: readonly Narrowing[]): string {
  if (steps.length === 0) return say("groupPart.gainUnknown");
  const told = steps.map(({ more, value, gain }) => {
    const count = Number.isFinite(more) ? say("groupPart.more", { more }) : say("groupPart.gainAtMost");
    return `${count} ${quantity.strength(value)}${gain > 0 ? ` (+${small(gain)})` : ""}`;
  });
  return `${say("groupPart.gainNote")} ${listed(told, "semicolon")}.`;
}
