/** Lays a run onto another mesh of the same problem, between two steps. */
import type { LineKernel } from "../kernel/lineKernel.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import { carryLine, isSamePlace } from "../line/carryLine.ts";
import { heightEnergy, kineticEnergy, stretchEnergy } from "../line/lineEnergy.ts";
import { isEmpty } from "../line/lineState.ts";
import type { Model } from "../line/model.ts";
import { contactStiffness, type StartRest } from "../statics/start.ts";
import { type Bed, layBed, makeStage, type Stage } from "./stage.ts";

/** The present moment of a run. */
export interface Moment {
  readonly time: number;
  readonly steps: number;
  /** Position and velocity. */
  readonly ring: Float64Array;
  readonly leashSpan: () => number;
  readonly rest: Pick<StartRest, "legs" | "masters">;
}

export interface Carried {
  readonly stage: Stage;
  /** What the old mesh held and the new one does not: of every line, and in the springs of the ring's contacts [J]. */
  readonly lost: { readonly lines: readonly [main: number, backup: number]; readonly contact: number };
}

/**
 * Undefined where the new mesh does not serve: where something has parted that it does not have, where it has a joint at another place,
 * or where a line's curve is elsewhere at the ring. The old stage stays as it is.
 */
export function carryStage(
  from: Stage,
  model: Model,
  makeKernel: ((size: number) => LineKernel) | undefined,
  moment: Moment,
): Carried | undefined {
  if (!sameJoints(from.model, model)) return undefined;
  const bed = layBed(model, makeKernel);
  const { memory } = from.kernel;
  for (const [k, line] of bed.lines.entries()) {
    const to = { line, memory: bed.kernel.memory };
    if (!carryLine({ line: from.lines[k]!, memory }, to)) return undefined;
  }
  const seat = { ...moment.rest, contact: contactStiffness(model), xi: [0, 0] as const };
  const stage = makeStage(bed, seat, { step: model.step, firstStep: moment.steps, firstTime: moment.time });
  for (const [k, end] of stage.ends.entries()) if (from.ends[k]!.kind === "free") end.release();
  for (const [k, anchor] of stage.legAnchors.entries()) anchor.takeOver(from.legAnchors[k]!);
  stage.joints.takeOver(from.joints);
  stage.leash.takeOver(from.leash, moment.leashSpan());
  for (const [k, contact] of stage.contacts.entries()) {
    // The seam has parted as well: it is cut before anything is carried.
    const parted = (e: number) => isEmpty(contact.line, bed.kernel.memory, e);
    if (!contact.takeOver(from.contacts[k]!, moment.ring, parted)) return undefined;
  }
  const lost = (k: number) => lineEnergy(from, k) - lineEnergy(stage, k);
  const lines = [lost(0), model.backup ? lost(1) : 0] as const;
  return { stage, lost: { lines, contact: springEnergy(from) - springEnergy(stage) } };
}

function sameJoints(from: Model, to: Model): boolean {
  return from.joints.every(({ main, backup }, k) => {
    const other = to.joints[k]!;
    return (
      isSamePlace(from.main.fractions[main]!, to.main.fractions[other.main]!) &&
      isSamePlace(from.backup!.fractions[backup]!, to.backup!.fractions[other.backup]!)
    );
  });
}

function lineEnergy({ lines, kernel }: Bed, k: number): number {
  const line = lines[k]!;
  const { memory } = kernel;
  const V = line.base + COLUMN.VX * line.pitch;
  const speeds = memory.subarray(V, V + 3 * line.pitch);
  return stretchEnergy(line, memory) + heightEnergy(line, memory) + kineticEnergy(line, memory, speeds);
}

const springEnergy = ({ contacts }: Stage): number => contacts.reduce((sum, one) => sum + one.springEnergy, 0);
