/**
 * Nodes that move as one: connections and tapes between main line and backup, and the seam of a planned cut. No spring and no
 * extra stiffness: the nodes' momenta are shared after every step, and the impulse that this takes is the force in the joint.
 */
import { COLUMN } from "./lineLayout.ts";
import type { Joint, Line } from "./model.ts";

export interface JointState {
  readonly joint: Joint;
  whole: boolean;
  peak: number;
  peakTime: number;
  force: number;
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
    this.states = joints.map((joint) => ({ joint, whole: true, peak: 0, peakTime: 0, force: 0 }));
    this.#regroup();
  }

  cutSeam(): void {
    this.#seamWhole = false;
    this.#regroup();
  }

  part(state: JointState): void {
    state.whole = false;
    state.force = 0;
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
    for (let g = 0; g < this.#groups.length; g++) {
      const { at, pitch, mass, joint } = this.#groups[g]!;
      let total = 0;
      for (let k = 0; k < at.length; k++) total += mass[k]!;
      for (let k = 1; k < at.length; k++) if (joint[k]) joint[k]!.force = 0;
      for (let c = 0; c < 3; c++) {
        let momentum = 0;
        for (let k = 0; k < at.length; k++) momentum += mass[k]! * m[at[k]! + (COLUMN.VX + c) * pitch[k]!]!;
        const shared = momentum / total;
        for (let k = 0; k < at.length; k++) {
          const V = at[k]! + (COLUMN.VX + c) * pitch[k]!;
          const X = at[k]! + c * pitch[k]!;
          const change = shared - m[V]!;
          if (joint[k]) joint[k]!.force += ((mass[k]! * change) / step) ** 2;
          m[X] = m[X]! + step * change;
          m[V] = shared;
        }
      }
      for (let k = 1; k < at.length; k++) {
        const state = joint[k];
        if (!state) continue;
        state.force = Math.sqrt(state.force);
        if (state.force > state.peak) {
          state.peak = state.force;
          state.peakTime = time;
        }
      }
    }
  }
}
