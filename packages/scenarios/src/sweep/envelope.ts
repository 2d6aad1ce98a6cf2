/**
 * From the draws of all points to the curve of what governs: of every part and event a curve of its own, lifted to what the draws of its
 * points say where these say worse, and at each place the worst.
 */
import { type WhatIf, whatIfKey } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import { INPUT_IDS } from "../scatter/inputs.ts";
import { type EventDraws, levelOf, scatterOf } from "../scatter/levels.ts";
import { basisOver, type KnobAxis } from "./basis.ts";
import { type CurveLevel, type FitRow, type Fitted, fitCurve } from "./fit.ts";
import { lifted } from "./lift.ts";
import type { Governing, SweepWhat } from "./sweepOutcome.ts";
import type { SweepPoint } from "./sweepPoints.ts";
import type { Track } from "./tracks.ts";

export interface DrawnRun {
  readonly run: GoodRun;
  /** Which draw it is, and its deviates. */
  readonly draw: string;
  readonly deviates: readonly number[];
}

/** The runs of one event at one point. */
export interface PointRuns {
  /** Index of the point. */
  readonly point: number;
  readonly event: WhatIf;
  readonly runs: readonly DrawnRun[];
}

export interface EnvelopeQuestion {
  readonly what: SweepWhat;
  readonly axes: readonly KnobAxis[];
  readonly points: readonly SweepPoint[];
  readonly tracks: readonly Track[];
  readonly runs: readonly PointRuns[];
}

/** A number that is the worse the larger it is, with what governs. */
export interface Worst extends CurveLevel {
  readonly governing: Governing;
}

export interface Envelope {
  /** At any place of the range. */
  readonly at: (values: readonly number[]) => Worst | undefined;
  /** The worst by a point's own runs, with the hardest draw. */
  readonly own: readonly ((Worst & { readonly draw: string }) | undefined)[];
  /** The largest misfit of the curves that govern at some point. */
  readonly misfit: number;
}

/** A curve that stays so far below the worst one everywhere is not followed [-]. */
const LEAST_FOLLOWED_SHARE = 0.5;
/** Heights and drops differ by a scale of their own: the mean drop, this at least [m]. */
const LEAST_SCALE = 0.1;

interface Series {
  readonly track: Track;
  readonly event: WhatIf;
  readonly rows: readonly FitRow[];
  readonly draws: ReadonlyMap<number, EventDraws>;
  readonly hardest: ReadonlyMap<number, { readonly draw: string; readonly value: number }>;
}

export function envelopeOf(question: EnvelopeQuestion): Envelope {
  const all = seriesOf(question);
  const worst = new Map<number, number>();
  for (const one of all)
    for (const { point, value } of one.rows) worst.set(point, Math.max(worst.get(point) ?? -Infinity, value));
  const linear = question.what.kind === "height";
  const series = linear
    ? all
    : all.filter(({ rows }) =>
        rows.some(({ point, value }) => value > 0 && value >= LEAST_FOLLOWED_SHARE * worst.get(point)!),
      );
  const owns = series.map(ownLevels);
  const curves = series.map((one, s) => {
    const curve = curveOf(question, one);
    return { ...curve, at: lifted({ ...question, own: owns[s]!, curve: curve.at }) };
  });
  const at = (values: readonly number[]) =>
    worstOf(
      curves.flatMap(({ one, misfit, at: levelAt }) => {
        const level = levelAt(values);
        return level ? [{ ...level, misfit, governing: governingOf(one) }] : [];
      }),
    );
  return {
    misfit: Math.max(1, ...question.points.map(({ values }) => at(values)?.misfit ?? 1)),
    own: question.points.map((_, p) =>
      worstOf(
        series.flatMap((one, s) => {
          const own = owns[s]!.get(p);
          return own ? [{ ...own, governing: governingOf(one), draw: one.hardest.get(p)!.draw }] : [];
        }),
      ),
    ),
    at,
  };
}

const governingOf = ({ track, event }: Series): Governing => ({
  event,
  key: whatIfKey(event),
  ...(track.part === undefined ? {} : { part: track.part }),
  ...(track.class === undefined ? {} : { class: track.class }),
});

/** The worst of all. Its band has the worst low end and the worst high end, since any one may be the worst. */
function worstOf<T extends Worst>(all: readonly T[]): T | undefined {
  if (all.length === 0) return undefined;
  const worst = all.reduce((a, b) => (b.value > a.value ? b : a));
  return { ...worst, low: Math.max(...all.map(({ low }) => low)), high: Math.max(...all.map(({ high }) => high)) };
}

function seriesOf({ tracks, runs, points, axes, what }: EnvelopeQuestion): readonly Series[] {
  const basis = basisOver(axes.filter(({ knob }) => knob.kind !== "months"));
  const events = new Map<string, PointRuns[]>();
  for (const one of runs) events.set(whatIfKey(one.event), [...(events.get(whatIfKey(one.event)) ?? []), one]);
  return [...events.values()].flatMap((ones) =>
    tracks.flatMap((track): Series[] => {
      const rows: FitRow[] = [];
      const draws = new Map<number, EventDraws>();
      const hardest = new Map<number, { draw: string; value: number }>();
      for (const { point, event, runs: made } of ones) {
        const here = points[point]!;
        const phi = basis(here.values.filter((_, k) => axes[k]!.knob.kind !== "months"));
        const told = made.map(({ run }) => track.of(run, event, here));
        if (told.length === 0 || told.every((value) => value === undefined)) continue;
        const values = told.map((value) => value ?? 0);
        const scale = what.kind === "height" ? { scale: meanDrop(made) } : {};
        draws.set(point, { values, deviates: made.map(({ deviates }) => deviates), ...scale });
        made.forEach(({ deviates, draw }, i) => {
          const value = values[i]!;
          rows.push({ point, basis: phi, value, deviates });
          const known = hardest.get(point);
          if (!known || value > known.value) hardest.set(point, { draw, value });
        });
      }
      return rows.length === 0 ? [] : [{ track, event: ones[0]!.event, rows, draws, hardest }];
    }),
  );
}

const meanDrop = (runs: readonly DrawnRun[]): number =>
  Math.max(LEAST_SCALE, runs.reduce((sum, { run }) => sum + run.drop, 0) / runs.length);

function curveOf(question: EnvelopeQuestion, one: Series) {
  const { axes, points, what } = question;
  const month = axes.findIndex(({ knob }) => knob.kind === "months");
  const others = axes.filter((_, k) => k !== month);
  const basis = basisOver(others);
  const scale = what.kind === "height" ? meanScale(one) : undefined;
  if (month < 0) {
    const fitted = fitCurve(one.rows, scale);
    return {
      one,
      misfit: fitted.misfit,
      at: (values: readonly number[]) => inside(one, axes, points, values, () => fitted.at(basis(values))),
    };
  }
  // On another day the runs are the same ones: between days nothing is learnt, and levels are joined by straight lines.
  const days = [...new Set(points.map(({ values }) => values[month]!))].sort((a, b) => a - b);
  const fits = days.map((day): Fitted | undefined => {
    const rows = one.rows.filter(({ point }) => points[point]!.values[month] === day);
    return rows.length === 0 ? undefined : fitCurve(rows, scale);
  });
  return {
    one,
    misfit: Math.max(1, ...fits.map((fit) => fit?.misfit ?? 1)),
    at(values: readonly number[]): CurveLevel | undefined {
      const phi = basis(values.filter((_, k) => k !== month));
      const x = values[month]!;
      const after = Math.max(
        1,
        days.findIndex((day) => day >= x),
      );
      const [a, b] = [fits[after - 1]?.at(phi), fits[after]?.at(phi)];
      if (!a || !b) return a ?? b;
      const share = (x - days[after - 1]!) / (days[after]! - days[after - 1]!);
      const mixed = (of: (level: CurveLevel) => number) => of(a) + share * (of(b) - of(a));
      return { value: mixed((l) => l.value), low: mixed((l) => l.low), high: mixed((l) => l.high) };
    },
  };
}

/** A curve says nothing about values at which it has no run, as for a part that only a rig with more connections has. */
function inside(
  { rows }: Series,
  axes: readonly KnobAxis[],
  points: readonly SweepPoint[],
  values: readonly number[],
  of: () => CurveLevel,
): CurveLevel | undefined {
  const there = axes.every((axis, k) => {
    const known = rows.map(({ point }) => points[point]!.values[k]!);
    if (axis.knob.kind === "connections") return known.includes(values[k]!);
    return values[k]! >= Math.min(...known) && values[k]! <= Math.max(...known);
  });
  return there ? of() : undefined;
}

const meanScale = ({ draws }: Series): number => {
  const all = [...draws.values()].map(({ scale }) => scale!);
  return all.reduce((sum, one) => sum + one, 0) / all.length;
};

/** Every point by its own draws; how an event scatters is learnt from all points. */
function ownLevels({ draws }: Series): ReadonlyMap<number, CurveLevel> {
  const scatter = scatterOf([...draws.values()], INPUT_IDS.length);
  return new Map(
    [...draws].map(([point, each]) => {
      const { value, low, high } = levelOf(each, scatter);
      return [point, { value, low, high }];
    }),
  );
}
