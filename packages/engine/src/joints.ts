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
  readonly joint: (JointState | undefined)[];
}

export class Joints {
  readonly states: readonly JointState[];
  readonly #m: Float64Array;
  readonly #main: Line;
  readonly #backup: Line | undefined;
  #seamWhole: boolean;
  #groups: readonly Group[] = [];

  constructor(main: Line, backup: Line | undefined, joints: readonly Joint[], memory: Float64Array) {
    this.#m = memory;
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
        joint: members.map(() => undefined as JointState | undefined),
      };
      groups.set(seat(node), group);
      return group;
    };
    if (this.#seamWhole) groupAt(main.seam);
    for (const state of this.states) {
      const backup = this.#backup;
      if (!state.whole || !backup) continue;
      const group = groupAt(state.joint.main);
      group.at.push(backup.base + state.joint.backup);
      group.pitch.push(backup.pitch);
      group.mass.push(backup.masses[state.joint.backup]!);
      group.joint.push(state);
    }
    this.#groups = [...groups.values()];
  }

  /** Shares the momenta of joined nodes after both lines have moved. */
  bind(step: number, time: number): void {
    const m = this.#m;
    const blend = step / (step + LOAD_CELL);
    for (let g = 0; g < this.#groups.length; g++) {
      const { at, pitch, mass, joint } = this.#groups[g]!;
      let total = 0;
      for (let k = 0; k < at.length; k++) total += mass[k]!;
      for (let c = 0; c < 3; c++) {
        let momentum = 0;
        for (let k = 0; k < at.length; k++) momentum += mass[k]! * m[at[k]! + (COLUMN.VX + c) * pitch[k]!]!;
        const shared = momentum / total;
        for (let k = 0; k < at.length; k++) {
          const V = at[k]! + (COLUMN.VX + c) * pitch[k]!;
          const X = at[k]! + c * pitch[k]!;
          const change = shared - m[V]!;
          const load = joint[k]?.load;
          if (load) load[c] = load[c]! + blend * ((mass[k]! * change) / step - load[c]!);
          m[X] = m[X]! + step * change;
          m[V] = shared;
        }
      }
      for (let k = 1; k < at.length; k++) {
        const state = joint[k];
        if (!state) continue;
        const { load } = state;
        state.force = Math.sqrt(load[0]! * load[0]! + load[1]! * load[1]! + load[2]! * load[2]!);
        if (state.force > state.peak) {
          state.peak = state.force;
          state.peakTime = time;
        }
      }
    }
  }
}
