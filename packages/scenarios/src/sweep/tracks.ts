/** What a sweep follows: numbers of a run that are the worse the larger they are, of every part that may govern. */
import { isTape, type PartId } from "@secondline/rig";
import { EVENT_CLASSES, type EventClass } from "../events/eventKind.ts";
import { classOf, takenAway, type WhatIf } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import { requiredFactors } from "../rule/margins.ts";
import { judgedParts, lengthOf, utilisation } from "../rule/utilisation.ts";
import type { SweepWhat, Told } from "./sweepOutcome.ts";
import type { SweepPoint } from "./sweepPoints.ts";

export interface Track {
  readonly part?: PartId;
  readonly class?: EventClass;
  /** Undefined if the event, or the rig of the point, does not have this quantity. */
  readonly of: (run: GoodRun, event: WhatIf, point: SweepPoint) => number | undefined;
}

const LEAST_DROP = 0.1;

export function tracksOf(what: SweepWhat, points: readonly SweepPoint[]): readonly Track[] {
  switch (what.kind) {
    case "drop":
      return [{ of: ({ drop }) => Math.max(LEAST_DROP, drop) }];
    case "height":
      return [{ of: ({ feetClearance }) => (feetClearance === undefined ? undefined : -feetClearance) }];
    case "load":
      return [{ part: what.part, of: (run, event, point) => loadOf(what.part, run, event, point)?.load }];
    case "margin": {
      const parts = new Set(
        points.flatMap(({ assessed: { rig }, strengths }) => judgedParts(rig, strengths).map(({ id }) => id as PartId)),
      );
      return [...parts].flatMap((part) =>
        EVENT_CLASSES.map(
          (name): Track => ({
            part,
            class: name,
            of(run, event, point) {
              if (classOf(event) !== name) return undefined;
              const found = loadOf(part, run, event, point);
              return found && found.share * requiredFactors(point.assessed.rig)[name];
            },
          }),
        ),
      );
    }
  }
}

/** One id may name a connection at one point and a tape at another. A tape has no verdict. */
function loadOf(id: PartId, run: GoodRun, event: WhatIf, { assessed: { rig }, strengths }: SweepPoint) {
  if (takenAway(event).includes(id) || isTape(rig, id)) return undefined;
  const part = strengths.parts.find((one) => one.id === id);
  return part && (utilisation(part, run, lengthOf(strengths, part)) ?? { share: 0, load: 0 });
}

/** Turns a number that is the worse the larger it is into the value that is told, and back. */
export function toldOf({ kind }: SweepWhat, raw: number): number {
  switch (kind) {
    case "margin":
      return 1 / raw;
    case "height":
      return -raw;
    case "drop":
    case "load":
      return raw;
  }
}

/** Margins and heights go down where what is asked for goes up. */
export const isTurned = ({ kind }: Pick<SweepWhat, "kind">): boolean => kind === "margin" || kind === "height";

export function toldLevel(what: SweepWhat, { value, low, high }: Told): Told {
  const [a, b] = isTurned(what) ? [high, low] : [low, high];
  return { value: toldOf(what, value), low: toldOf(what, a), high: toldOf(what, b) };
}
