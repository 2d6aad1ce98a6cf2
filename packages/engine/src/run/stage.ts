/** A stretch of a run on one mesh: the lines in a kernel's memory, and all that holds them and hangs on them. */

import type { Clock } from "../clock.ts";
import type { LineKernel } from "../kernel/lineKernel.ts";
import { fastestKernel } from "../kernel/lineKernelWasm.ts";
import { HEAD } from "../kernel/lineLayout.ts";
import { type Line, loadLine } from "../line/line.ts";
import { EndSupport } from "../line/lineEnds.ts";
import { anchorOf, MASTER_MASS, type Model } from "../line/model.ts";
import { recorderMemory } from "../record/recorder.ts";
import { Joints } from "../rigging/joints.ts";
import { Leash } from "../rigging/leash.ts";
import { LegAnchor } from "../rigging/legAnchor.ts";
import { RingContact } from "../rigging/ringContact.ts";
import type { StartRest } from "../statics/start.ts";

/** The lines of a model in the memory of a kernel, which has room for their records too. */
export interface Bed {
  readonly model: Model;
  readonly kernel: LineKernel;
  readonly lines: readonly Line[];
  /** Per line, in the kernel's memory: out[0] is the work that stretching took [J], out[1] the largest excess over strength [N]. */
  readonly out: readonly Float64Array[];
}

export function layBed(model: Model, makeKernel: ((size: number) => LineKernel) | undefined): Bed {
  const { main, backup, step } = model;
  const lines = backup ? [main, backup] : [main];
  const kernel = (makeKernel ?? fastestKernel)(model.memory + recorderMemory(lines, step));
  for (const line of lines) loadLine(line, kernel, step);
  if (backup) kernel.memory[main.head + HEAD.next] = backup.head;
  const out = lines.map(({ head }) => kernel.memory.subarray(head + HEAD.work, head + HEAD.excess + 1));
  return { model, kernel, lines, out };
}

/** Where the ring is on the lines, what pushes it off them, and the legs of anchors. */
export type Seat = Pick<StartRest, "legs" | "masters" | "contact"> & { readonly xi: readonly [number, number] };

export interface Stage extends Bed {
  readonly clock: Clock;
  readonly ends: readonly EndSupport[];
  readonly contacts: readonly RingContact[];
  readonly leash: Leash;
  readonly legAnchors: readonly LegAnchor[];
  readonly joints: Joints;
}

/** What holds the lines and hangs on them, made when they lie in place. */
export function makeStage(bed: Bed, { legs, masters, contact, xi }: Seat, clock: Clock): Stage {
  const { model, kernel, lines } = bed;
  const { problem, main, backup, step } = model;
  const { memory } = kernel;
  const stiffness = [contact.main, contact.backup] as const;
  return {
    ...bed,
    clock,
    contacts: lines.map(
      (line, k) =>
        new RingContact(line, memory, problem.ring, { stiffness: stiffness[k as 0 | 1], xi: xi[k as 0 | 1], step }),
    ),
    leash: new Leash(problem.leash, model.leash.curve, { ring: problem.ring.mass, walker: problem.walker.mass }, step),
    legAnchors: (["A", "B"] as const).flatMap((end) =>
      legs[end].length > 0
        ? [new LegAnchor(end, legs[end], masters[end], { mass: anchorOf(problem, end).mass ?? MASTER_MASS, step })]
        : [],
    ),
    ends: lines.flatMap((line) =>
      (["A", "B"] as const).map((end) => new EndSupport(line, end, problem, memory, step, legs[end].length > 0)),
    ),
    joints: new Joints(main, backup, model.joints, memory, clock),
  };
}
