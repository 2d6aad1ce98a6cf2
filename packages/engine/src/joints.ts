/**
 * Nodes that move as one: connections and tapes between main line and backup, and the seam of a planned cut. No spring and no
 * extra stiffness: the nodes' momenta are shared after every step, and the impulse that this takes is the force in the joint.
 */

import type { Line } from "./line.ts";
import { COLUMN } from "./lineLayout.ts";
import type { Joint } from "./model.ts";

/**
 * Time constant of a first-order low-pass at 100 Hz, the corner of CFC 60 [s]. From step to step a joint's force holds the
 * inertia of whole elements on either side, which depends on the mesh and which no sewn loop or cord would feel as sharply.
 */
const LOAD_CELL = 1 / (2 * Math.PI * 100);

export interface JointState {
  readonly joint: Joint;
  whole: boolean;
  peak: number;
  peakTime: number;
  /** Size of `load` [N]. */
  force: number;
  /** Force on the backup's node, as a load cell would report it (see `LOAD_CELL`) [N]. */
  readonly load: Float64Array;
}

/** A node that shares its motion with others: its number and line, and the joint a backup node hangs on. */
interface Member {
  readonly line: Line;
  readonly node: number;
  readonly joint: JointState | undefined;
}

/** Nodes that share one motion, made ready for the steps: per axis and node the places of velocity and position in memory. */
interface Group {
  readonly places: readonly { readonly velocity: Int32Array; readonly position: Int32Array }[];
  readonly mass: Float64Array;
  /** Of all of them [kg]. */
  readonly total: number;
  readonly joint: readonly (JointState | undefined)[];
}

function makeGroup(members: readonly Member[]): Group {
  const places = (column: number) =>
    Int32Array.from(members, ({ line, node }) => line.base + column * line.pitch + node);
  const mass = Float64Array.from(members, ({ line, node }) => line.masses[node]!);
  return {
    places: [0, 1, 2].map((c) => ({ velocity: places(COLUMN.VX + c), position: places(c) })),
    mass,
    total: mass.reduce((sum, one) => sum + one, 0),
    joint: members.map(({ joint }) => joint),
  };
}

export class Joints {
  readonly states: readonly JointState[];
  readonly #m: Float64Array;
  readonly #step: number;
  /** Share of a new reading in the low-pass [-]. */
  readonly #blend: number;
  readonly #main: Line;
  readonly #backup: Line | undefined;
  #seamWhole: boolean;
  #groups: readonly Group[] = [];

  constructor(main: Line, backup: Line | undefined, joints: readonly Joint[], memory: Float64Array, step: number) {
    this.#m = memory;
    this.#step = step;
    this.#blend = step / (step + LOAD_CELL);
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
    for (let g = 0; g < this.#groups.length; g++) {
      const group = this.#groups[g]!;
      for (let c = 0; c < 3; c++) this.#share(group, c);
      for (let k = 1; k < group.joint.length; k++) {
        const state = group.joint[k];
        if (state) this.#read(state, steps);
      }
    }
  }

  #share({ places, mass, total, joint }: Group, c: number): void {
    const m = this.#m;
    const step = this.#step;
    const { velocity, position } = places[c]!;
    let momentum = 0;
    for (let k = 0; k < mass.length; k++) momentum += mass[k]! * m[velocity[k]!]!;
    const shared = momentum / total;
    for (let k = 0; k < mass.length; k++) {
      const V = velocity[k]!;
      const X = position[k]!;
      const change = shared - m[V]!;
      const load = joint[k]?.load;
      if (load) load[c] = load[c]! + this.#blend * ((mass[k]! * change) / step - load[c]!);
      m[X] = m[X]! + step * change;
      m[V] = shared;
    }
  }

  #read(state: JointState, steps: number): void {
    const { load } = state;
    state.force = Math.sqrt(load[0]! * load[0]! + load[1]! * load[1]! + load[2]! * load[2]!);
    if (state.force > state.peak) {
      state.peak = state.force;
      state.peakTime = steps * this.#step;
    }
  }
}
