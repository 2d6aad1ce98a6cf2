/** What a fitted sweep says between its points: where limits are met, where the last limit is kept, and the curve itself. */
import type { KnobAxis } from "./basis.ts";
import { keptStretches, limitFound, rawLimit, stateOf } from "./crossings.ts";
import type { Envelope } from "./envelope.ts";
import { isApart } from "./knob.ts";
import type { SweepOptions } from "./sweep.ts";
import type { Region, SweepLimit, SweepWhat, Swept } from "./sweepOutcome.ts";
import type { SweepPoint } from "./sweepPoints.ts";
import { toldLevel } from "./tracks.ts";

/** The limits of what is asked, the one that is required last. A load's is the user's. */
export function limitsOf(
  points: readonly SweepPoint[],
  { what, limit }: Pick<SweepOptions, "what" | "limit">,
): readonly SweepLimit[] {
  const own: SweepLimit[] = limit === undefined ? [] : [{ kind: "own", value: limit }];
  switch (what.kind) {
    case "margin":
      return [{ kind: "required", value: 1 }, ...own];
    case "height": {
      const required = points[0]!.assessed.rig.requiredClearance;
      const all: SweepLimit[] = [
        { kind: "ground", value: 0 },
        ...(required > 0 ? [{ kind: "clearance", value: required } as const] : []),
      ];
      return [...all, ...own];
    }
    case "drop":
    case "load":
      return own;
  }
}

/** How finely an outline is drawn along the second knob [-]. */
const OUTLINE_STEPS = 24;

function regionOf(
  what: SweepWhat,
  limit: SweepLimit,
  [first, second]: readonly KnobAxis[],
  points: readonly SweepPoint[],
  envelope: Envelope,
): Region {
  const raw = rawLimit(what, limit);
  const { values, knob } = second!;
  const [from, to] = [values[0]!, values.at(-1)!];
  const rows = isApart(knob)
    ? values
    : Array.from({ length: OUTLINE_STEPS + 1 }, (_, i) => from + ((to - from) * i) / OUTLINE_STEPS);
  return {
    limit,
    states: points.map(({ values: here }) => {
      const level = envelope.at(here);
      return level && stateOf(level, raw);
    }),
    outline: rows.map((at) => ({
      at,
      kept: keptStretches(
        {
          what,
          limit,
          knob: first!.knob,
          values: first!.values,
          curve: (value) => envelope.at([value, at]),
        },
        "high",
      ),
    })),
  };
}

/** How finely a curve is told for drawing [-]. */
const CURVE_STEPS = 60;

/** For one knob: where the limits are met, where the last limit is kept, and the curve between the points. */
export function alongOne(
  what: SweepWhat,
  limits: readonly SweepLimit[],
  axis: KnobAxis,
  envelope: Envelope,
): Pick<Swept, "limits" | "kept" | "line"> {
  const { knob, values } = axis;
  const [from, to] = [values[0]!, values.at(-1)!];
  const last = limits.at(-1);
  const even = Array.from({ length: CURVE_STEPS + 1 }, (_, i) => from + ((to - from) * i) / CURVE_STEPS);
  const line = [...new Set([...even, ...values])]
    .sort((a, b) => a - b)
    .flatMap((at) => {
      const level = envelope.at([at]);
      return level ? [{ at, ...toldLevel(what, level) }] : [];
    });
  return {
    limits: limits.map((limit) => limitFound({ what, limit, ...along(axis, envelope) })),
    ...(last ? { kept: keptStretches({ what, limit: last, ...along(axis, envelope) }) } : {}),
    ...(isApart(knob) ? {} : { line }),
  };
}

export function regionIn(
  what: SweepWhat,
  limits: readonly SweepLimit[],
  axes: readonly KnobAxis[],
  points: readonly SweepPoint[],
  envelope: Envelope,
): Pick<Swept, "region"> {
  const last = limits.at(-1);
  return last ? { region: regionOf(what, last, axes, points, envelope) } : {};
}

const along = ({ knob, values }: KnobAxis, envelope: Envelope) => ({
  knob,
  values,
  curve: (value: number) => envelope.at([value]),
});
