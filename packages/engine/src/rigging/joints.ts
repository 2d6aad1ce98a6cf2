/**
 * Nodes that move as one: connections and tapes between main line and backup, and the seam of a planned cut. No spring and no
 * extra stiffness: the nodes' momenta are shared after every step, and the impulse that this takes is the force in the joint.
 */

import { type Clock, timeOf } from "../clock.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";
import type { Joint } from "../line/model.ts";

/**
 * Time constant of a first-order low-pass at 100 Hz, the corner of CFC 60 [s]. From step to step a joint's force holds the
 * inertia of whole elements on either side, which depends on the mesh and which no sewn loop or cord would feel as sharply.
 */
const LOAD_CELL_TIME = 1 / (2 * Math.PI * 100);

export interface JointState {
  readonly joint: Joint;
  whole: boolean;
  peak: number;
  peakTime: number;
  /** Size of `load` [N]. */
  force: number;
  /** Force on the backup's node, as a load cell would report it (see `LOAD_CELL_TIME`) [N]. */
  readonly load: Float64Array;
}

/** A node that shares its motion with others: its number and line, and the joint a backup node hangs on. */
interface Member {
  readonly line: Line;
  readonly node: number;
  readonly joint: JointState | undefined;
}

/** Nodes that share one motion, made ready for the steps: of every node where its velocity lies, from there on axis by axis. */
interface Group {
  readonly velocity: Int32Array;
  readonly pitch: Int32Array;
  /** [kg] */
  readonly mass: Float64Array;
  /** Mass of all joined nodes together [kg]. */
  readonly total: number;
  readonly joint: readonly (JointState | undefined)[];
}

function makeGroup(members: readonly Member[]): Group {
  const mass = Float64Array.from(members, ({ line, node }) => line.masses[node]!);
  return {
    velocity: Int32Array.from(members, ({ line, node }) => line.base + COLUMN.VX * line.pitch + node),
    pitch: Int32Array.from(members, ({ line }) => line.pitch),
    mass,
    total: mass.reduce((sum, one) => sum + one, 0),
    joint: members.map(({ joint }) => joint),
  };
}

export class Joints {
  readonly states: readonly JointState[];
  readonly #m: Float64Array;
  readonly #clock: Clock;
  readonly #step: number;
  /** Share of a new reading in the low-pass [-]. */
  readonly #blend: number;
  readonly #main: Line;
  readonly #backup: Line | undefined;
  #seamWhole: boolean;
  #groups: readonly Group[] = [];

  constructor(main: Line, backup: Line | undefined, joints: readonly Joint[], memory: Float64Array, clock: Clock) {
    const { step } = clock;
    this.#m = memory;
    this.#clock = clock;
    this.#step = step;
    this.#blend = step / (step + LOAD_CELL_TIME);
    this.#main = main;
    this.#backup = backup;
    this.#seamWhole = main.seam >= 0;
    this.states = joints.map((joint) => ({
      joint,
      whole: true,
      peak: 0,
      peakTime: 0,
      force: 0,
      load: new Float64Array(3),
    }));
    this.#regroup();
  }

  /** Goes on from the joints of another mesh; nodes that are to move as one do so at once. */
  takeOver(from: Joints): void {
    this.#seamWhole = from.#seamWhole;
    for (const [k, state] of this.states.entries()) {
      const old = from.states[k]!;
      state.whole = old.whole;
      state.peak = old.peak;
      state.peakTime = old.peakTime;
      state.force = old.force;
      state.load.set(old.load);
    }
    this.#regroup();
    const m = this.#m;
    for (const { velocity, pitch, mass, total } of this.#groups) {
      for (let c = 0; c < 3; c++) {
        const at = (k: number) => velocity[k]! + c * pitch[k]!;
        const shared = mass.reduce((sum, one, k) => sum + one * m[at(k)]!, 0) / total;
        for (let k = 0; k < mass.length; k++) m[at(k)] = shared;
      }
    }
  }

  cutSeam(): void {
    this.#seamWhole = false;
    this.#regroup();
  }

  part(state: JointState): void {
    state.whole = false;
    state.force = 0;
    state.load.fill(0);
    this.#regroup();
  }

  #regroup(): void {
    const groups = new Map<number, Member[]>();
    const main = this.#main;
    const seat = (node: number) => (this.#seamWhole && node === main.seam + 1 ? main.seam : node);
    const groupAt = (node: number): Member[] => {
      const found = groups.get(seat(node));
      if (found) return found;
      const nodes = this.#seamWhole && seat(node) === main.seam ? [main.seam, main.seam + 1] : [node];
      const group = nodes.map((one): Member => ({ line: main, node: one, joint: undefined }));
      groups.set(seat(node), group);
      return group;
    };
    if (this.#seamWhole) groupAt(main.seam);
    const held = new Map<number, Member[]>();
    for (const state of this.states) {
      const backup = this.#backup;
      if (!state.whole || !backup) continue;
      const group = groupAt(state.joint.main);
      const other = held.get(state.joint.backup);
      // A joint whose nodes move as one already, by another joint at the same nodes, carries nothing while that one holds.
      if (other === group) continue;
      if (other) {
        other.push(...group);
        for (const [node, one] of groups) if (one === group) groups.set(node, other);
        for (const [node, one] of held) if (one === group) held.set(node, other);
        continue;
      }
      held.set(state.joint.backup, group);
      group.push({ line: backup, node: state.joint.backup, joint: state });
    }
    this.#groups = [...new Set(groups.values())].map(makeGroup);
  }

  /** Shares the momenta of joined nodes after both lines have moved in this step, the so-many-th. */
  bind(steps: number): void {
    for (let g = 0; g < this.#groups.length; g++) this.#share(this.#groups[g]!, steps);
  }

  #share({ velocity, pitch, mass, total, joint }: Group, steps: number): void {
    const m = this.#m;
    const step = this.#step;
    let px = 0;
    let py = 0;
    let pz = 0;
    for (let k = 0; k < mass.length; k++) {
      const V = velocity[k]!;
      const next = pitch[k]!;
      px += mass[k]! * m[V]!;
      py += mass[k]! * m[V + next]!;
      pz += mass[k]! * m[V + 2 * next]!;
    }
    const sx = px / total;
    const sy = py / total;
    const sz = pz / total;
    for (let k = 0; k < mass.length; k++) {
      const VX = velocity[k]!;
      const next = pitch[k]!;
      const VY = VX + next;
      const VZ = VY + next;
      const X = VX - COLUMN.VX * next;
      const dx = sx - m[VX]!;
      const dy = sy - m[VY]!;
      const dz = sz - m[VZ]!;
      m[VX] = sx;
      m[VY] = sy;
      m[VZ] = sz;
      m[X] = m[X]! + step * dx;
      m[X + next] = m[X + next]! + step * dy;
      m[X + 2 * next] = m[X + 2 * next]! + step * dz;
      const state = joint[k];
      if (state === undefined) continue;
      const { load } = state;
      const blend = this.#blend;
      load[0] = load[0]! + blend * ((mass[k]! * dx) / step - load[0]!);
      load[1] = load[1]! + blend * ((mass[k]! * dy) / step - load[1]!);
      load[2] = load[2]! + blend * ((mass[k]! * dz) / step - load[2]!);
      this.#read(state, steps);
    }
  }

  #read(state: JointState, steps: number): void {
    const { load } = state;
    state.force = Math.sqrt(load[0]! * load[0]! + load[1]! * load[1]! + load[2]! * load[2]!);
    if (state.force > state.peak) {
      state.peak = state.force;
      state.peakTime = timeOf(this.#clock, steps);
    }
  }
}
