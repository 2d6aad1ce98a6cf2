/**
 * What fails in a run: the main line or an anchor's leg where the problem says so, weblocks that slip, and whatever is pulled
 * beyond its strength. One element per line and step parts, the one most over its strength; others only when the release wave
 * of the last break could have reached them.
 */

import { type Clock, timeOf } from "../clock.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";
import type { EndSupport } from "../line/lineEnds.ts";
import { isEmpty, killElement, nodePosition } from "../line/lineState.ts";
import type { Model } from "../line/model.ts";
import type { Spent } from "../record/energyAudit.ts";
import type { RunEvent } from "../record/recording.ts";
import type { JointState, Joints } from "../rigging/joints.ts";
import type { Leash } from "../rigging/leash.ts";
import type { LegAnchor } from "../rigging/legAnchor.ts";
import type { RingContact } from "../rigging/ringContact.ts";

/** After a break others of its line wait so long, and two steps for every element between: the release has reached them by then [s]. */
const RELEASE_WAIT = 1e-3;

/** Everything in a run that can fail, and the record of what failed. */
export interface Failing {
  readonly model: Model;
  readonly memory: Float64Array;
  readonly lines: readonly Line[];
  /** Per line: out[0] is the work that stretching it took [J], out[1] the largest excess over strength [N]. */
  readonly out: readonly Float64Array[];
  readonly ends: readonly EndSupport[];
  readonly contacts: readonly RingContact[];
  readonly legAnchors: readonly LegAnchor[];
  readonly leash: Leash;
  readonly joints: Joints;
  /** Position and velocity. */
  readonly ring: Float64Array;
  readonly leashSpan: () => number;
  readonly spent: Spent;
  readonly events: RunEvent[];
}

export class Failures {
  readonly #parts: Failing;
  readonly #m: Float64Array;
  readonly #clock: Clock;
  /** Pull at which leash or ring parts [N]. */
  readonly #leashStrength: number;
  readonly #lastBreak: { time: number; element: number }[];
  /** Steps at which the main line, and a leg, are to fail; infinite when they are not, or have. */
  #cutAt: number;
  #legAt: number;

  /** `over`: whether what the problem says is to fail has failed already. */
  constructor(parts: Failing, clock: Clock, over = false) {
    const { problem } = parts.model;
    this.#parts = parts;
    this.#m = parts.memory;
    this.#clock = clock;
    this.#leashStrength = Math.min(
      problem.leash.strength ?? Number.POSITIVE_INFINITY,
      problem.ring.strength ?? Number.POSITIVE_INFINITY,
    );
    this.#lastBreak = parts.lines.map(() => ({ time: Number.NEGATIVE_INFINITY, element: 0 }));
    this.#cutAt = problem.cut && !over ? problem.cut.time : Number.POSITIVE_INFINITY;
    this.#legAt = problem.legFailure && !over ? problem.legFailure.time : Number.POSITIVE_INFINITY;
  }

  /** What is to fail before the so-many-th step. */
  plan(steps: number): void {
    const t = timeOf(this.#clock, steps);
    if (t >= this.#cutAt) this.#cut(t);
    if (t >= this.#legAt) this.#failLeg(t);
    const { slip } = this.#parts.model.problem.main;
    if (slip) this.#slip(slip, t);
  }

  /** What the so-many-th step pulled beyond its strength parts. */
  check(steps: number): void {
    const { leash, joints, lines, out } = this.#parts;
    if (leash.tension > this.#leashStrength) this.#partLeash(timeOf(this.#clock, steps));
    const { states } = joints;
    for (let k = 0; k < states.length; k++) {
      if (states[k]!.force > states[k]!.joint.strength) this.#partJoint(states[k]!, timeOf(this.#clock, steps));
    }
    for (let k = 0; k < lines.length; k++) if (out[k]![1]! > 0) this.#partElement(k, timeOf(this.#clock, steps));
  }

  /** The legs of an anchor that the so-many-th step pulled beyond their strength part. */
  checkLegs(anchor: LegAnchor, steps: number): void {
    for (let k = 0; k < anchor.legs.length; k++) {
      const strength = anchor.legs[k]!.leg.strength ?? Number.POSITIVE_INFINITY;
      if (anchor.whole[k] && anchor.tensions[k]! > strength)
        this.#partLeg(anchor, k, timeOf(this.#clock, steps), "break");
    }
  }

  /** Whether all has failed that the problem says is to fail. */
  get over(): boolean {
    return Math.min(this.#cutAt, this.#legAt) === Number.POSITIVE_INFINITY;
  }

  #cut(t: number): void {
    this.#cutAt = Number.POSITIVE_INFINITY;
    const { model, joints } = this.#parts;
    const { main } = model;
    const { at } = model.problem.cut!;
    const node = at <= 0 || main.seam < 0 ? (at < 0.5 ? 0 : main.nodes - 1) : main.seam;
    if (node === main.seam) joints.cutSeam();
    else this.#release(node === 0 ? "A" : "B");
    this.#restretch(0);
    this.#note({ time: t, kind: "cut", part: "main", at, position: nodePosition(main, this.#m, node) });
    this.#lastBreak[0] = { time: t, element: Math.min(node, main.elements - 1) };
  }

  #release(end: "A" | "B"): void {
    const { ends, contacts, spent } = this.#parts;
    const which = ends.find((one) => one.line.name === "main" && one.end === end)!;
    // What the anchor's own spring holds goes with the line that held it.
    spent.parted += which.stored();
    which.release();
    if (end === "A") contacts[0]!.freeA = true;
    else contacts[0]!.freeB = true;
  }

  #restretch(k: number): void {
    const line = this.#parts.lines[k]!;
    const m = this.#m;
    const wholeSeam = line.seam < 0 || this.#cutAt < Number.POSITIVE_INFINITY;
    this.#parts.contacts[k]!.restretch((e) => isEmpty(line, m, e) && !(wholeSeam && e === line.seam));
  }

  #failLeg(t: number): void {
    this.#legAt = Number.POSITIVE_INFINITY;
    const { model, legAnchors } = this.#parts;
    const failure = model.problem.legFailure!;
    this.#partLeg(legAnchors.find(({ end }) => end === failure.anchor)!, failure.leg, t, "cut");
  }

  /** Weblocks let webbing through where this step would load them beyond their slip load. */
  #slip(slip: { readonly A?: number; readonly B?: number }, t: number): void {
    const { ends, spent, events } = this.#parts;
    for (let k = 0; k < 2; k++) {
      const end = ends[k]!;
      const load = slip[end.end];
      const lost = load === undefined ? 0 : end.slip(load);
      if (lost === 0) continue;
      spent.slipped += lost;
      spent.lines[0] += lost;
      const part = `weblock${end.end}`;
      if (!events.some((event) => event.part === part)) this.#note({ time: t, kind: "slip", part, value: load! });
    }
  }

  #partLeg(anchor: LegAnchor, k: number, t: number, kind: "break" | "cut"): void {
    this.#parts.spent.parted += anchor.legStored(k);
    anchor.whole[k] = false;
    this.#note({
      time: t,
      kind,
      part: anchor.end === "A" ? "anchorA" : "anchorB",
      at: k,
      value: anchor.tensions[k]!,
      position: [anchor.state[0]!, anchor.state[1]!, anchor.state[2]!],
    });
  }

  #partLeash(t: number): void {
    const { model, leash, leashSpan, spent, ring } = this.#parts;
    const pull = leash.tension;
    const part = pull > (model.problem.leash.strength ?? Number.POSITIVE_INFINITY) ? "leash" : "ring";
    spent.leash = leash.part(leashSpan());
    spent.parted += spent.leash;
    this.#note({ time: t, kind: "break", part, value: pull, position: [ring[0]!, ring[1]!, ring[2]!] });
  }

  #partJoint(state: JointState, t: number): void {
    const { kind, at, main: node } = state.joint;
    const position = nodePosition(this.#parts.model.main, this.#m, node);
    this.#note({ time: t, kind: "break", part: kind, at, value: state.force, position });
    this.#parts.joints.part(state);
  }

  /** Parts the element most over its strength, unless the line has just parted and the release is still on its way there. */
  #partElement(k: number, t: number): void {
    const { lines, out, spent } = this.#parts;
    const line = lines[k]!;
    const m = this.#m;
    const T = line.base + COLUMN.T * line.pitch;
    const S = line.base + COLUMN.S * line.pitch;
    const last = this.#lastBreak[k]!;
    let worst = -1;
    let excess = 0;
    for (let e = 0; e < line.elements; e++) {
      const over = m[T + e]! - m[S + e]!;
      const away = Math.abs(e - last.element);
      if (over <= excess || t - last.time < RELEASE_WAIT + 2 * away * this.#clock.step) continue;
      worst = e;
      excess = over;
    }
    if (worst < 0) return;
    const value = m[T + worst]!;
    const held = killElement(line, m, worst, out[k]!);
    spent.parted += held;
    spent.lines[k as 0 | 1] += held;
    this.#lastBreak[k] = { time: t, element: worst };
    this.#restretch(k);
    const at = 0.5 * (line.fractions[worst]! + line.fractions[worst + 1]!);
    this.#note({ time: t, kind: "break", part: line.name, at, value, position: nodePosition(line, m, worst) });
  }

  #note(event: RunEvent): void {
    this.#parts.events.push(event);
  }
}
