/**
 * Nodes that move as one: connections and tapes between main line and backup, and the seam of a planned cut. No spring and no
 * extra stiffness: the nodes' momenta are shared after every step, and the impulse that this takes is the force in the joint.
 */
import { COLUMN } from "./lineLayout.ts";
import type { Joint, Line } from "./model.ts";

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

/** Nodes that share one motion: places of x in memory, pitch of their line, mass; the joint a backup node hangs on. */
interface Group {
  readonly at: number[];
  readonly pitch: number[];
  readonly mass: number[];
  /** Of all of them [kg]. */
  total: number;
  readonly joint: (JointState | undefined)[];
}

/** Takes all nodes of another group in. */
function merge(group: Group, { at, pitch, mass, joint }: Group): void {
  group.at.push(...at);
  group.pitch.push(...pitch);
  group.mass.push(...mass);
  group.joint.push(...joint);
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
    const groups = new Map<number, Group>();
    const main = this.#main;
    const seat = (node: number) => (this.#seamWhole && node === main.seam + 1 ? main.seam : node);
    const groupAt = (node: number): Group => {
      const found = groups.get(seat(node));
      if (found) return found;
      const members = this.#seamWhole && seat(node) === main.seam ? [main.seam, main.seam + 1] : [node];
      const group = {
        at: members.map((i) => main.base + i),
        pitch: members.map(() => main.pitch),
        mass: members.map((i) => main.masses[i]!),
        total: 0,
        joint: members.map(() => undefined as JointState | undefined),
      };
      groups.set(seat(node), group);
      return group;
    };
    if (this.#seamWhole) groupAt(main.seam);
    const held = new Map<number, Group>();
    for (const state of this.states) {
      const backup = this.#backup;
      if (!state.whole || !backup) continue;
      const group = groupAt(state.joint.main);
      const other = held.get(state.joint.backup);
      // A joint whose nodes move as one already, by another joint at the same nodes, carries nothing while that one holds.
      if (other === group) continue;
      if (other) {
        merge(other, group);
        for (const [node, one] of groups) if (one === group) groups.set(node, other);
        for (const [node, one] of held) if (one === group) held.set(node, other);
        continue;
      }
      held.set(state.joint.backup, group);
      group.at.push(backup.base + state.joint.backup);
      group.pitch.push(backup.pitch);
      group.mass.push(backup.masses[state.joint.backup]!);
      group.joint.push(state);
    }
    this.#groups = [...new Set(groups.values())];
    for (const group of this.#groups) group.total = group.mass.reduce((sum, mass) => sum + mass, 0);
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

  #share({ at, pitch, mass, total, joint }: Group, c: number): void {
    const m = this.#m;
    const step = this.#step;
    let momentum = 0;
    for (let k = 0; k < at.length; k++) momentum += mass[k]! * m[at[k]! + (COLUMN.VX + c) * pitch[k]!]!;
    const shared = momentum / total;
    for (let k = 0; k < at.length; k++) {
      const V = at[k]! + (COLUMN.VX + c) * pitch[k]!;
      const X = at[k]! + c * pitch[k]!;
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
