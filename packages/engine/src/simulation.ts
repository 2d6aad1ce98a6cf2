/**
 * One run: lines, ring, leash and walker stepped from rest to the end of the problem, in slices so that it can be watched and
 * cancelled. See THEORY.md for the model and for the order of work within a step.
 */
import { GRAVITY } from "./constants.ts";
import { addDrag } from "./drag.ts";
import { EnergyAudit, type Spent } from "./energyAudit.ts";
import { LedgerKeeper } from "./energyLedger.ts";
import { groundHeight } from "./groundProfile.ts";
import { type JointState, Joints } from "./joints.ts";
import { Leash } from "./leash.ts";
import { LegAnchor, LineEnd, MASTER_MASS } from "./lineEnds.ts";
import type { LineKernel } from "./lineKernel.ts";
import { fastestKernel } from "./lineKernelWasm.ts";
import { COLUMN, HEAD } from "./lineLayout.ts";
import { killElement, lostNode, nodePosition, placeAtRest } from "./lineState.ts";
import { anchorOf, buildModel, type Line, loadLine, type Model, type ModelOptions } from "./model.ts";
import type { Problem } from "./problem.ts";
import { Recorder, recorderMemory } from "./recorder.ts";
import type { RunEvent } from "./recording.ts";
import { RingContact } from "./ringContact.ts";
import { contactDamping, restAtStart, type StartRest } from "./statics/start.ts";

export interface SimulationOptions extends ModelOptions {
  /** Makes the kernel on memory of so many numbers; the fastest available by default. */
  readonly kernel?: (size: number) => LineKernel;
}

/** Channels of the recorder, in order: the signals of `SIGNALS`, then the walker's height. */
export const CHANNELS = 8;
/** Channel of the walker's height. */
const HEIGHT = 7;
/** Speed of the release wave when a line has just parted, as a share of the true one: others wait for it before they may part. */
const RELEASE_WAIT = 1e-3;

export type Status = "running" | "done" | "diverged";

export class Simulation {
  readonly problem: Problem;
  readonly model: Model;
  readonly options: SimulationOptions;
  readonly rest: StartRest;
  readonly recorder: Recorder;
  readonly ledger = new LedgerKeeper();
  readonly events: RunEvent[] = [];
  readonly joints: Joints;
  readonly leash: Leash;
  readonly legAnchors: readonly LegAnchor[];
  status: Status = "running";
  /** What went wrong, when diverged. */
  trouble = "";
  steps = 0;
  lowest = Number.POSITIVE_INFINITY;
  lowestTime = 0;
  readonly startHeight: number;
  readonly #kernel: LineKernel;
  readonly #lines: readonly Line[];
  readonly #ends: readonly LineEnd[];
  readonly #contacts: readonly RingContact[];
  readonly #ring = new Float64Array(6);
  readonly #walker = new Float64Array(6);
  /** Per line, in the kernel's memory: out[0] is the work that stretching took [J], out[1] the largest excess over strength [N]. */
  readonly #out: readonly Float64Array[];
  readonly #values: Float64Array;
  readonly #force = new Float64Array(3);
  readonly #lastBreak: { time: number; element: number }[];
  readonly #audit: EnergyAudit;
  readonly #spent: Spent = { parted: 0, slipped: 0, dragged: 0, feet: 0, leash: 0, lines: [0, 0] };
  #feetPending = 0;
  #feetSpeed = 0;
  /** Pull at which leash or ring parts [N]. */
  readonly #leashStrength: number;
  #cutDone: boolean;
  #legDone: boolean;
  #taut = false;
  /** Per line, whether it is on record that the ring ran off it. */
  readonly #ringOff = [false, false];
  #footForce: number;

  constructor(problem: Problem, options: SimulationOptions = {}) {
    this.problem = problem;
    this.options = options;
    this.model = buildModel(problem, options);
    const { main, backup, step } = this.model;
    this.#lines = backup ? [main, backup] : [main];
    this.#kernel = (options.kernel ?? fastestKernel)(this.model.memory + recorderMemory(this.#lines, step));
    for (const line of this.#lines) loadLine(line, this.#kernel, step);
    if (backup) this.#kernel.memory[main.head + HEAD.next] = backup.head;
    this.rest = restAtStart(this.model);
    const m = this.#kernel.memory;
    placeAtRest(main, m, this.rest.main);
    if (backup) placeAtRest(backup, m, this.rest.backup);
    this.#ring.set(this.rest.ring);
    this.#walker.set(this.rest.walker);
    this.startHeight = this.#walker[2]!;
    this.#contacts = this.#lines.map(
      (line, k) =>
        new RingContact(line, m, problem.ring, {
          stiffness: k === 0 ? this.rest.contact.main : this.rest.contact.backup,
          damping: contactDamping(this.model, line),
          xi: k === 0 ? this.rest.xiMain : this.rest.xiBackup,
          step,
        }),
    );
    this.leash = new Leash(
      problem.leash,
      this.model.leash.curve,
      { ring: problem.ring.mass, walker: problem.walker.mass },
      step,
    );
    this.leash.relax(this.#leashSpan());
    this.#leashStrength = Math.min(
      problem.leash.strength ?? Number.POSITIVE_INFINITY,
      problem.ring.strength ?? Number.POSITIVE_INFINITY,
    );
    const { legs } = this.rest;
    this.legAnchors = (["A", "B"] as const).flatMap((end) =>
      legs[end].length > 0
        ? [new LegAnchor(end, legs[end], this.rest.masters[end], anchorOf(problem, end).mass ?? MASTER_MASS)]
        : [],
    );
    this.#ends = this.#lines.flatMap((line) =>
      (["A", "B"] as const).map((end) => new LineEnd(line, end, problem, m, step, legs[end].length > 0)),
    );
    this.joints = new Joints(main, backup, this.model.joints, m, step);
    const connections = this.joints.states.filter(({ joint }) => joint.kind === "connection").length;
    this.#values = new Float64Array(CHANNELS + connections);
    this.recorder = new Recorder(this.#lines, this.#kernel, {
      free: this.model.memory,
      duration: problem.duration,
      step,
      channels: this.#values.length,
    });
    this.#out = this.#lines.map(({ head }) => m.subarray(head + HEAD.work, head + HEAD.excess + 1));
    this.#lastBreak = this.#lines.map(() => ({ time: Number.NEGATIVE_INFINITY, element: 0 }));
    this.#cutDone = problem.cut === undefined;
    this.#legDone = problem.legFailure === undefined;
    this.#footForce = problem.start === "standing" ? problem.walker.mass * GRAVITY : 0;
    this.#audit = this.#makeAudit();
  }

  #makeAudit(): EnergyAudit {
    const parts = {
      problem: this.problem,
      memory: this.#kernel.memory,
      lines: this.#lines,
      out: this.#out,
      ends: this.#ends,
      contacts: this.#contacts,
      legAnchors: this.legAnchors,
      leash: this.leash,
      ring: this.#ring,
      walker: this.#walker,
      leashSpan: () => this.#leashSpan(),
    };
    return new EnergyAudit(parts, this.#spent, this.ledger);
  }

  get time(): number {
    return this.steps * this.model.step;
  }
  /** Share of the problem's duration done, 0 to 1. */
  get progress(): number {
    return this.status === "running" ? Math.min(1, this.time / this.problem.duration) : 1;
  }
  /** Memory of the kernel, for reading element states. */
  get memory(): Float64Array {
    return this.#kernel.memory;
  }
  get kernelName(): string {
    return this.#kernel.name;
  }

  /** Runs up to so many steps; stops early when done or when numbers are no longer finite. */
  advance(mostSteps: number): Status {
    for (let k = 0; k < mostSteps && this.status === "running"; k++) this.#step();
    return this.status;
  }

  #leashSpan(): number {
    const dx = this.#walker[0]! - this.#ring[0]!;
    const dy = this.#walker[1]! - this.#ring[1]!;
    const dz = this.#walker[2]! - this.#ring[2]!;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  #step(): void {
    const { step } = this.model;
    const t = this.time;
    if (!this.#cutDone && t >= this.problem.cut!.time) this.#cut(t);
    if (!this.#legDone && t >= this.problem.legFailure!.time) this.#failLeg(t);
    const { slip } = this.problem.main;
    if (slip) this.#slip(slip, t);
    const auditing = this.#audit.due(t);
    if (auditing) this.#audit.open();
    if (t >= this.recorder.nextFrame) {
      this.recorder.frame(this.#ring, this.#walker, this.#ringFraction(0), this.#ringFraction(1));
    }
    const height = this.#walker[2]!;
    if (height < this.lowest) {
      this.lowest = height;
      this.lowestTime = t;
    }
    const contacts = this.#contacts;
    if (this.#footForce > 0) this.#feetSpeed = this.#feetParting();
    for (let k = 0; k < contacts.length; k++) contacts[k]!.push(this.#ring);
    for (let k = 0; k < contacts.length; k++) if (contacts[k]!.force > 0) this.#addImpulse(contacts[k]!.impulse);
    this.#pullLeash();
    this.#kernel.step(this.model.main.head);
    for (let k = 0; k < contacts.length; k++) contacts[k]!.pushLine();
    if (this.#footForce > 0) this.#letGo(step, t);
    if (slip) this.#out[0]![0] = this.#out[0]![0]! + this.#ends[0]!.missedWork() + this.#ends[1]!.missedWork();
    for (let k = 0; k < this.#ends.length; k++) if (this.#ends[k]!.kind !== "fixed") this.#ends[k]!.move();
    for (let k = 0; k < this.legAnchors.length; k++) this.#moveAnchor(this.legAnchors[k]!, step, t);
    this.joints.bind(this.steps);
    if (this.#feetPending > 0) this.#bookFeet();
    for (let k = 0; k < contacts.length; k++) contacts[k]!.book(this.#ring);
    this.#moveParticles();
    if (this.steps === this.recorder.nextRow) this.recorder.row();
    this.#values[HEIGHT] = height;
    this.#sample();
    if (auditing) this.#audit.close(t);
    // Between two steps, where velocities are those of the motion: within one, the contact has kicked its nodes already.
    if (this.problem.airDensity !== undefined) this.#drag(step);
    this.#checkBreaks();
    this.steps++;
    this.#checkEnd();
  }

  #addImpulse(impulse: Float64Array): void {
    const ring = this.#ring;
    const { mass } = this.problem.ring;
    ring[3] = ring[3]! + impulse[0]! / mass;
    ring[4] = ring[4]! + impulse[1]! / mass;
    ring[5] = ring[5]! + impulse[2]! / mass;
  }

  #moveParticles(): void {
    const { step } = this.model;
    const ring = this.#ring;
    const walker = this.#walker;
    ring[0] = ring[0]! + step * ring[3]!;
    ring[1] = ring[1]! + step * ring[4]!;
    ring[2] = ring[2]! + step * ring[5]!;
    walker[0] = walker[0]! + step * walker[3]!;
    walker[1] = walker[1]! + step * walker[4]!;
    walker[2] = walker[2]! + step * walker[5]!;
  }

  /** Leash and weight on ring and walker. */
  #pullLeash(): void {
    const fall = GRAVITY * this.model.step;
    const ring = this.#ring;
    const walker = this.#walker;
    this.leash.pull(ring, walker);
    ring[5] = ring[5]! - fall;
    walker[5] = walker[5]! - fall;
    if (!this.#taut && this.leash.tension > 0) {
      this.#taut = true;
      if (this.steps > 0) this.#note({ time: this.time, kind: "leashTaut", part: "leash", position: this.#at(ring) });
    }
  }

  /** The feet: up on the walker, down on the line's point, falling to nothing over `letGo`. */
  #letGo(step: number, t: number): void {
    if (this.#footForce === 0) return;
    const letGo = this.problem.letGo ?? 0;
    const force = t < letGo ? this.problem.walker.mass * GRAVITY * (1 - t / letGo) : 0;
    this.#footForce = force;
    if (force === 0) {
      this.#note({ time: t, kind: "letGo", part: "walker", position: this.#at(this.#walker) });
      return;
    }
    const { main, start } = this.model;
    const m = this.#kernel.memory;
    const Z = main.base + COLUMN.Z * main.pitch + start;
    const VZ = main.base + COLUMN.VZ * main.pitch + start;
    // The kernel has moved the node. Where the line will be cut under the feet, the seam's two nodes share the impulse.
    const change = force * step * m[main.base + COLUMN.IM * main.pitch + start]!;
    m[VZ] = m[VZ]! - change;
    m[Z] = m[Z]! - step * change;
    this.#walker[5] = this.#walker[5]! + (force * step) / this.problem.walker.mass;
    this.#feetPending = force;
  }

  #drag(step: number): void {
    this.#spent.dragged += addDrag(this.#lines, this.#kernel.memory, this.problem, this.#walker, step);
  }

  #moveAnchor(anchor: LegAnchor, step: number, t: number): void {
    const { state } = anchor;
    const force = this.#force;
    force.fill(0);
    anchor.pull(force);
    let mass = anchor.mass;
    for (const end of this.#ends) {
      if (end.end !== anchor.end || end.kind !== "legs") continue;
      end.addForce(force);
      mass += end.line.masses[end.node]!;
    }
    for (let c = 0; c < 3; c++) {
      state[3 + c] = state[3 + c]! + step * (force[c]! / mass - (c === 2 ? GRAVITY : 0));
      state[c] = state[c]! + step * state[3 + c]!;
    }
    const m = this.#kernel.memory;
    for (const { line, node, end, kind } of this.#ends) {
      if (end !== anchor.end || kind !== "legs") continue;
      for (let c = 0; c < 6; c++) m[line.base + c * line.pitch + node] = state[c]!;
    }
    for (let k = 0; k < anchor.legs.length; k++) {
      const strength = anchor.legs[k]!.leg.strength ?? Number.POSITIVE_INFINITY;
      if (anchor.whole[k] && anchor.tensions[k]! > strength) this.#partLeg(anchor, k, t, "break");
    }
  }

  #partLeg(anchor: LegAnchor, k: number, t: number, kind: "break" | "cut"): void {
    this.#spent.parted += anchor.legStored(k);
    anchor.whole[k] = false;
    this.#note({
      time: t,
      kind,
      part: anchor.end === "A" ? "anchorA" : "anchorB",
      at: k,
      value: anchor.tensions[k]!,
      position: this.#at(anchor.state),
    });
  }

  #failLeg(t: number): void {
    this.#legDone = true;
    const failure = this.problem.legFailure!;
    const anchor = this.legAnchors.find(({ end }) => end === failure.anchor)!;
    this.#partLeg(anchor, failure.leg, t, "cut");
  }

  #sample(): void {
    const v = this.#values;
    v[0] = this.leash.tension;
    v[1] = this.#ends[0]!.load;
    v[2] = this.#ends[1]!.load;
    v[3] = this.#ends.length > 2 ? this.#ends[2]!.load : 0;
    v[4] = this.#ends.length > 2 ? this.#ends[3]!.load : 0;
    v[5] = this.#contacts[0]!.force;
    v[6] = this.#contacts.length > 1 ? this.#contacts[1]!.force : 0;
    const { states } = this.joints;
    // Connections come before tapes.
    for (let k = CHANNELS; k < v.length; k++) v[k] = states[k - CHANNELS]!.force;
    this.recorder.sample(v);
  }

  #cut(t: number): void {
    this.#cutDone = true;
    const { main } = this.model;
    const at = this.problem.cut!.at;
    const node = at <= 0 || main.seam < 0 ? (at < 0.5 ? 0 : main.nodes - 1) : main.seam;
    if (node === main.seam) this.joints.cutSeam();
    else this.#release(node === 0 ? "A" : "B");
    this.#restretch(0);
    const position = nodePosition(main, this.#kernel.memory, node);
    this.#note({ time: t, kind: "cut", part: "main", at, position });
    this.#lastBreak[0] = { time: t, element: Math.min(node, main.elements - 1) };
  }

  #release(end: "A" | "B"): void {
    const which = this.#ends.find((one) => one.line.name === "main" && one.end === end)!;
    // What the anchor's own spring holds goes with the line that held it.
    this.#spent.parted += which.stored();
    which.release();
    if (end === "A") this.#contacts[0]!.freeA = true;
    else this.#contacts[0]!.freeB = true;
  }

  #restretch(k: number): void {
    const line = this.#lines[k]!;
    const m = this.#kernel.memory;
    const wholeSeam = !this.#cutDone || line.seam < 0;
    this.#contacts[k]!.restretch(
      (e) => m[line.base + COLUMN.IL * line.pitch + e] === 0 && !(wholeSeam && e === line.seam),
    );
  }

  /** Weblocks let webbing through where this step would load them beyond their slip load. */
  #slip(slip: { readonly A?: number; readonly B?: number }, t: number): void {
    for (let k = 0; k < 2; k++) {
      const end = this.#ends[k]!;
      const load = slip[end.end];
      const lost = load === undefined ? 0 : end.slip(load);
      if (lost === 0) continue;
      this.#spent.slipped += lost;
      this.#spent.lines[0] += lost;
      const part = `weblock${end.end}`;
      if (!this.events.some((event) => event.part === part)) this.#note({ time: t, kind: "slip", part, value: load! });
    }
  }

  #checkBreaks(): void {
    const pull = this.leash.tension;
    if (pull > this.#leashStrength) this.#partLeash(this.time, pull);
    const { states } = this.joints;
    for (let k = 0; k < states.length; k++) {
      if (states[k]!.force > states[k]!.joint.strength) this.#partJoint(states[k]!);
    }
    for (let k = 0; k < this.#lines.length; k++) if (this.#out[k]![1]! > 0) this.#partElement(k, this.time);
  }

  #partLeash(time: number, pull: number): void {
    const part = pull > (this.problem.leash.strength ?? Number.POSITIVE_INFINITY) ? "leash" : "ring";
    this.#spent.leash = this.leash.part(this.#leashSpan());
    this.#spent.parted += this.#spent.leash;
    this.#note({ time, kind: "break", part, value: pull, position: this.#at(this.#ring) });
  }

  #partJoint(state: JointState): void {
    const { kind, at, main: node } = state.joint;
    const position = nodePosition(this.model.main, this.#kernel.memory, node);
    this.#note({ time: this.time, kind: "break", part: kind, at, value: state.force, position });
    this.joints.part(state);
  }

  /** Parts the element most over its strength, unless the line has just parted and the release is still on its way there. */
  #partElement(k: number, t: number): void {
    const line = this.#lines[k]!;
    const m = this.#kernel.memory;
    const T = line.base + COLUMN.T * line.pitch;
    const S = line.base + COLUMN.S * line.pitch;
    const last = this.#lastBreak[k]!;
    let worst = -1;
    let excess = 0;
    for (let e = 0; e < line.elements; e++) {
      const over = m[T + e]! - m[S + e]!;
      const away = Math.abs(e - last.element);
      if (over <= excess || t - last.time < RELEASE_WAIT + 2 * away * this.model.step) continue;
      worst = e;
      excess = over;
    }
    if (worst < 0) return;
    const value = m[T + worst]!;
    const held = killElement(line, m, worst, this.#out[k]!);
    this.#spent.parted += held;
    this.#spent.lines[k as 0 | 1] += held;
    this.#lastBreak[k] = { time: t, element: worst };
    this.#restretch(k);
    const at = 0.5 * (line.fractions[worst]! + line.fractions[worst + 1]!);
    this.#note({ time: t, kind: "break", part: line.name, at, value, position: nodePosition(line, m, worst) });
  }

  #checkEnd(): void {
    const walker = this.#walker;
    if (!Number.isFinite(walker[0]! + walker[1]! + walker[2]! + this.#ring[0]! + this.#ring[2]! + this.#out[0]![0]!)) {
      this.#diverge();
      return;
    }
    for (let k = 0; k < this.#contacts.length; k++) {
      const { on, line } = this.#contacts[k]!;
      if (on || this.#ringOff[k]) continue;
      this.#ringOff[k] = true;
      this.#note({ time: this.time, kind: "ringOff", part: line.name, position: this.#at(this.#ring) });
    }
    if (this.problem.ground && walker[2]! <= groundHeight(this.problem.ground, walker[0]!)) {
      const speed = Math.hypot(walker[3]!, walker[4]!, walker[5]!);
      this.lowest = Math.min(this.lowest, walker[2]!);
      this.lowestTime = this.time;
      this.#note({ time: this.time, kind: "ground", part: "walker", value: speed, position: this.#at(walker) });
      this.status = "done";
    } else if (this.time > this.problem.duration) this.status = "done";
    if (this.status === "done" && this.lowest < this.startHeight) {
      this.#note({ time: this.lowestTime, kind: "lowest", part: "walker", value: this.lowest });
    }
  }

  #diverge(): void {
    this.status = "diverged";
    const lost = this.#lines.map((line) => lostNode(line, this.#kernel.memory)).find((where) => where !== undefined);
    this.trouble = `numbers stopped being finite at ${this.time.toFixed(4)} s: ${lost ?? "ring or walker"}`;
  }

  #ringFraction(k: number): number {
    const contact = this.#contacts[k];
    if (!contact?.on) return -1;
    const { fractions } = contact.line;
    const e = Math.min(Math.floor(contact.xi), fractions.length - 2);
    return fractions[e]! + (contact.xi - e) * (fractions[e + 1]! - fractions[e]!);
  }

  #at(p: Float64Array): readonly [number, number, number] {
    return [p[0]!, p[1]!, p[2]!];
  }
  #note(event: RunEvent): void {
    this.events.push(event);
  }

  /** Speed at which walker and line's point part, upward on the walker [m/s]. */
  #feetParting(): number {
    const { main, start } = this.model;
    return this.#walker[5]! - this.#kernel.memory[main.base + COLUMN.VZ * main.pitch + start]!;
  }

  /** Work of the feet over the step, at the mean of the speeds before and after it. */
  #bookFeet(): void {
    if (this.#feetPending === 0) return;
    const half = 0.5 * this.#feetPending * this.model.step;
    // An audit of this step sees the work up to x(t): half of the step's.
    this.ledger.now.feet = this.#spent.feet + half * this.#feetSpeed;
    this.#spent.feet = this.ledger.now.feet + half * this.#feetParting();
    this.#feetPending = 0;
  }
}
