/**
 * One run: lines, ring, leash and walker stepped from rest to the end of the problem, in slices so that it can be watched and
 * cancelled. See THEORY.md for the model and for the order of work within a step.
 */
import { GRAVITY } from "../constants.ts";
import type { LineKernel } from "../kernel/lineKernel.ts";
import { fastestKernel } from "../kernel/lineKernelWasm.ts";
import { HEAD } from "../kernel/lineLayout.ts";
import { addDrag } from "../line/drag.ts";
import { type Line, loadLine } from "../line/line.ts";
import { EndSupport } from "../line/lineEnds.ts";
import { lostNode, placeAtRest } from "../line/lineState.ts";
import { anchorOf, buildModel, MASTER_MASS, type Model, type ModelOptions } from "../line/model.ts";
import { hypot } from "../portable/index.ts";
import type { Problem } from "../problem.ts";
import { EnergyAudit, type Spent } from "../record/energyAudit.ts";
import { LedgerKeeper } from "../record/energyLedger.ts";
import { Recorder, recorderMemory } from "../record/recorder.ts";
import type { RunEvent } from "../record/recording.ts";
import { Feet } from "../rigging/feet.ts";
import { groundHeight } from "../rigging/groundProfile.ts";
import { Joints } from "../rigging/joints.ts";
import { Leash } from "../rigging/leash.ts";
import { LegAnchor } from "../rigging/legAnchor.ts";
import { RingContact } from "../rigging/ringContact.ts";
import { restAtStart, type StartRest } from "../statics/start.ts";
import { Failures } from "./failures.ts";

/** How a run is made. */
export interface SimulationOptions extends ModelOptions {
  /** Makes the kernel on memory of so many numbers; the fastest available by default. */
  readonly kernel?: (size: number) => LineKernel;
  /** Whether the recording shows the lines' shapes and tensions, for the eye; it does by default. */
  readonly shapes?: boolean;
}

/** Channels of the recorder, in order: the signals of `SIGNALS`, then the walker's height. */
export const CHANNEL_COUNT = 8;
/** Channel of the walker's height. */
const HEIGHT_CHANNEL = 7;

export type Status = "running" | "done" | "diverged";

/** A run in progress. `simulate` and `startRun` make one and see it through. */
export class Simulation {
  readonly problem: Problem;
  readonly model: Model;
  readonly options: SimulationOptions;
  readonly rest: StartRest;
  readonly recorder: Recorder;
  readonly ledger: LedgerKeeper;
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
  readonly #ends: readonly EndSupport[];
  readonly #contacts: readonly RingContact[];
  readonly #ring = new Float64Array(6);
  readonly #walker = new Float64Array(6);
  /** Per line, in the kernel's memory: out[0] is the work that stretching took [J], out[1] the largest excess over strength [N]. */
  readonly #out: readonly Float64Array[];
  readonly #values: Float64Array;
  readonly #audit: EnergyAudit;
  readonly #spent: Spent = { parted: 0, slipped: 0, dragged: 0, feet: 0, leash: 0, lines: [0, 0] };
  readonly #feet: Feet;
  readonly #failures: Failures;
  #taut = false;
  /** Per line, whether it is on record that the ring ran off it. */
  readonly #ringOff = [false, false];

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
    this.ledger = new LedgerKeeper(problem.walker.mass * GRAVITY);
    this.#contacts = this.#lines.map(
      (line, k) =>
        new RingContact(line, m, problem.ring, {
          stiffness: k === 0 ? this.rest.contact.main : this.rest.contact.backup,
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
    const { legs } = this.rest;
    this.legAnchors = (["A", "B"] as const).flatMap((end) =>
      legs[end].length > 0
        ? [
            new LegAnchor(end, legs[end], this.rest.masters[end], {
              mass: anchorOf(problem, end).mass ?? MASTER_MASS,
              step,
            }),
          ]
        : [],
    );
    this.#ends = this.#lines.flatMap((line) =>
      (["A", "B"] as const).map((end) => new EndSupport(line, end, problem, m, step, legs[end].length > 0)),
    );
    this.joints = new Joints(main, backup, this.model.joints, m, step);
    const connections = this.joints.states.filter(({ joint }) => joint.kind === "connection").length;
    this.#values = new Float64Array(CHANNEL_COUNT + connections);
    this.recorder = new Recorder(this.#lines, this.#kernel, {
      free: this.model.memory,
      duration: problem.duration,
      step,
      channels: this.#values.length,
      shapes: options.shapes ?? true,
    });
    this.#out = this.#lines.map(({ head }) => m.subarray(head + HEAD.work, head + HEAD.excess + 1));
    this.#feet = new Feet(problem, this.model, m, this.#walker);
    const parts = {
      problem,
      model: this.model,
      memory: m,
      lines: this.#lines,
      out: this.#out,
      ends: this.#ends,
      contacts: this.#contacts,
      legAnchors: this.legAnchors,
      leash: this.leash,
      joints: this.joints,
      ring: this.#ring,
      walker: this.#walker,
      leashSpan: () => this.#leashSpan(),
      spent: this.#spent,
      events: this.events,
    };
    this.#failures = new Failures(parts);
    this.#audit = new EnergyAudit(parts, this.#spent, this.ledger);
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
  /** Height of the walker's tie-in [m]. */
  get walkerHeight(): number {
    return this.#walker[2]!;
  }
  /** Where the ring is on main line and backup, as fractions of their natural lengths [-]; -1: off the line, or no such line. */
  get ringAt(): readonly [main: number, backup: number] {
    return [this.#ringFraction(0), this.#ringFraction(1)];
  }
  get kernelName(): string {
    return this.#kernel.name;
  }

  /** Runs up to so many steps; stops early when done or when numbers are no longer finite. */
  advance(mostSteps: number): Status {
    for (let k = 0; k < mostSteps && this.status === "running"; k++) this.#step();
    return this.status;
  }

  /** Ends the run here, as if its time were up. */
  finish(): void {
    if (this.status !== "running") return;
    this.status = "done";
    this.#noteLowest();
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
    this.#failures.plan(this.steps);
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
    if (this.#feet.pushing) this.#feet.begin();
    for (let k = 0; k < contacts.length; k++) contacts[k]!.push(this.#ring);
    for (let k = 0; k < contacts.length; k++) if (contacts[k]!.force > 0) this.#addImpulse(contacts[k]!.impulse);
    this.#pullLeash();
    this.#kernel.step(this.model.main.head);
    for (let k = 0; k < contacts.length; k++) contacts[k]!.pushLine();
    const pushing = this.#feet.pushing;
    if (pushing) this.#pushFeet();
    if (this.problem.main.slip)
      this.#out[0]![0] = this.#out[0]![0]! + this.#ends[0]!.missedWork() + this.#ends[1]!.missedWork();
    for (let k = 0; k < this.#ends.length; k++) if (this.#ends[k]!.kind !== "fixed") this.#ends[k]!.move();
    for (let k = 0; k < this.legAnchors.length; k++) {
      this.legAnchors[k]!.move(this.#ends);
      this.#failures.checkLegs(this.legAnchors[k]!, this.steps);
    }
    this.joints.bind(this.steps);
    if (pushing) this.#bookFeet();
    for (let k = 0; k < contacts.length; k++) contacts[k]!.book(this.#ring);
    this.#moveParticles();
    if (this.steps === this.recorder.nextRow) this.recorder.row();
    this.#values[HEIGHT_CHANNEL] = height;
    this.#sample();
    if (auditing) this.#audit.close(t);
    // Between two steps, where velocities are those of the motion: within one, the contact has kicked its nodes already.
    if (this.problem.airDensity !== undefined) this.#drag(step);
    this.#failures.check(this.steps);
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

  #pushFeet(): void {
    this.#feet.push(this.steps);
    if (this.#feet.pushing) return;
    this.#note({ time: this.time, kind: "letGo", part: "walker", position: this.#at(this.#walker) });
  }

  #bookFeet(): void {
    this.#feet.book();
    this.ledger.now.feet = this.#feet.workNow;
    this.#spent.feet = this.#feet.work;
  }

  #drag(step: number): void {
    this.#spent.dragged += addDrag(this.#lines, this.#kernel.memory, this.problem, this.#walker, step);
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
    for (let k = CHANNEL_COUNT; k < v.length; k++) v[k] = states[k - CHANNEL_COUNT]!.force;
    this.recorder.sample(v);
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
      const speed = hypot(walker[3]!, walker[4]!, walker[5]!);
      this.lowest = Math.min(this.lowest, walker[2]!);
      this.lowestTime = this.time;
      this.#note({ time: this.time, kind: "ground", part: "walker", value: speed, position: this.#at(walker) });
      this.status = "done";
    } else if (this.time > this.problem.duration) this.status = "done";
    if (this.status === "done") this.#noteLowest();
  }

  #noteLowest(): void {
    if (this.lowest >= this.startHeight) return;
    this.#note({ time: this.lowestTime, kind: "lowest", part: "walker", value: this.lowest });
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
}
