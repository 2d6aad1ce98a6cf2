/** The tests of a group on probability paper, on which the best fitted family is a straight line. */

import { type FamilyName, type Fit, familyQuantile, plottingPositions, profileInterval } from "@secondline/statistics";
import type { GroupReport } from "@secondline/strength";
import { broughtIn, capital, quantity } from "@secondline/words";
import type { BreakLogWords } from "@secondline/words/breakLog";
import type { Axis, Plot, PlotPoint, PlotRow, PlotRule } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";
import { digits, kN, testMark, testRow } from "./testMarks.ts";

/** Shares at which the curve and its band are worked out [-]. */
const CURVE_SHARES = [0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99];
/** Shares that the axis of probability names [-]. */
const TICK_SHARES = [0.0001, 0.001, 0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99, 0.999, 0.9999];
/** Most tests for which the band is drawn: with more it is narrower than the curve's stroke, and takes minutes [-]. */
const MOST_FOR_BAND = 300;
const STANDARD_PARAMETERS = { location: 0, logScale: 0 };

export function fitPlot(group: GroupReport, words: BreakLogWords): Plot {
  const { say } = words;
  const { tests, sample, characteristic } = group;
  const fit = group.families.find((one) => one.fit.family === group.best)?.fit;
  const family: FamilyName = fit?.family ?? characteristic.at75.family;
  const [across, up] = [(load: number) => (family === "normal" ? load : Math.log(load)), paper(family)];
  const positions = plottingPositions(sample);
  const y = shareAxis(positions, up, say("figure.fit.y"));
  // A survivor before any break has no share below it: it stands at the foot of the paper.
  const heightOf = (share: number) => Math.max(y.from, up(share));
  const band = fit === undefined || tests.length > MOST_FOR_BAND ? [] : bandOf(group, fit);
  const curve =
    fit === undefined ? [] : CURVE_SHARES.map((share) => [familyQuantile(family, fit, share), share] as const);
  const bounds = [characteristic.at95, characteristic.at75];
  const loads = [
    ...tests.flatMap(({ result }) => (result.kind === "between" ? [result.from, result.to] : [result.value])),
    ...bounds.map(({ value }) => value),
  ];
  return {
    figure: "fit",
    of: group.key,
    title: say("figure.fit.title", { label: capital(words.groupTitle(tests[0]!)), count: tests.length }),
    notes: [
      say("figure.fit.marks"),
      fit === undefined
        ? say("figure.fit.noCurve", { reason: broughtIn(group.failures[0]?.reason ?? "") })
        : say(band.length > 0 ? "figure.fit.band" : "figure.fit.noBand"),
    ],
    x: loadAxis(loads, across, say("figure.fit.x")),
    y,
    strength: "x",
    bands:
      band.length === 0
        ? []
        : [
            [
              ...band.map(({ low, share }): PlotPoint => [across(low), up(share)]),
              ...[...band].reverse().map(({ high, share }): PlotPoint => [across(high), up(share)]),
            ],
          ],
    curves:
      fit === undefined
        ? []
        : [
            {
              points: curve.map(([load, share]): PlotPoint => [across(load), up(share)]),
              tone: "own",
              width: 2,
              dash: [],
              label: say("figure.fit.curve", { family: capital(family) }),
            },
          ],
    marks: tests.map((test, i) => testMark(test, (load) => [across(load), heightOf(positions[i]!)])),
    rules: bounds.map(({ value, confidence, content }): PlotRule => {
      return {
        x: across(value),
        tone: "bound",
        dash: confidence > 0.9 ? [2, 3] : [7, 4],
        label: say("figure.fit.bound", {
          content: quantity.percent(content),
          value: quantity.strength(value),
          confidence: quantity.percent(confidence),
        }),
      };
    }),
    texts: [],
    height: 280,
    rows: [
      ...tests.map((test, i) => testRow(test, { share_below: digits(positions[i]!) })),
      ...curve.map(([load, share]): PlotRow => {
        const at = band.find((one) => one.share === share);
        return {
          series: `${family} fit`,
          strength_kN: kN(load),
          low_kN: at && kN(at.low),
          high_kN: at && kN(at.high),
          share_below: share,
        };
      }),
      ...bounds.map(
        ({ value, confidence, content }): PlotRow => ({
          series: `bound with ${quantity.percent(confidence)} confidence`,
          strength_kN: Math.floor(value) / 1000,
          share_below: digits(1 - content),
        }),
      ),
    ],
  };
}

/** Height on the paper of a share that broke below. */
function paper(family: FamilyName): (share: number) => number {
  return (share) => {
    const z = familyQuantile(family, STANDARD_PARAMETERS, share);
    return family === "normal" ? z : Math.log(z);
  };
}

interface BandAt {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** 95 % profile-likelihood interval of the curve, share by share, where the sample bounds it. */
function bandOf({ sample }: GroupReport, fit: Fit): BandAt[] {
  return CURVE_SHARES.flatMap((share) => {
    const [low, high] = profileInterval(sample, fit, { kind: "quantile", p: share }, 0.95);
    return low > 0 && Number.isFinite(high) ? [{ share, low, high }] : [];
  });
}

function loadAxis(loads: readonly number[], across: (load: number) => number, label: string): Axis {
  const [least, most] = [Math.min(...loads), Math.max(...loads)];
  const room = Math.max(0.12 * (most - least), 0.02 * most);
  const [from, to] = [Math.max(0.5 * least, least - room), most + room];
  const ticks = roundTicks(from / 1000, to / 1000, 8).filter((tick) => tick > 0);
  return {
    label,
    from: across(from),
    to: across(to),
    ticks: ticks.map((tick) => ({ at: across(tick * 1000), text: quantity.number(tick) })),
  };
}

function shareAxis(positions: readonly number[], up: (share: number) => number, label: string): Axis {
  const inside = positions.filter((share) => share > 0 && share < 1);
  const [from, to] = [Math.min(0.01, ...inside), Math.max(0.99, ...inside)];
  const ticks = TICK_SHARES.filter((share) => share >= from && share <= to);
  return {
    label,
    from: up(from * 0.8),
    to: up(1 - (1 - to) * 0.8),
    ticks: ticks.map((share) => ({ at: up(share), text: quantity.number(Number((100 * share).toPrecision(6))) })),
  };
}
