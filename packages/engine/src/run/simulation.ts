/**
 * One run: lines, ring, leash and walker stepped from rest to the end of the problem, in slices so that it can be watched and
 * cancelled. See THEORY.md for the model and for the order of work within a step.
 */

import { timeOf } from "../clock.ts";
import { GRAVITY } from "../constants.ts";
import type { LineKernel } from "../kernel/lineKernel.ts";
import { addDrag } from "../line/drag.ts";
import { lostNode, placeAtRest } from "../line/lineState.ts";
import { buildModel, type Model, type ModelOptions } from "../line/model.ts";
import { hypot } from "../portable/index.ts";
import type { Problem } from "../problem.ts";
import { type Audited, EnergyAudit, type Spent } from "../record/energyAudit.ts";
import { LedgerKeeper } from "../record/energyLedger.ts";
import { Recorder } from "../record/recorder.ts";
import type { RunEvent } from "../record/recording.ts";
import { Feet } from "../rigging/feet.ts";
import { groundHeight } from "../rigging/groundProfile.ts";
import type { Joints } from "../rigging/joints.ts";
import type { Leash } from "../rigging/leash.ts";
import type { LegAnchor } from "../rigging/legAnchor.ts";
import { restAtStart, type StartRest } from "../statics/start.ts";
import { carryStage } from "./carryStage.ts";
import { type Failing, Failures } from "./failures.ts";
import { layBed, makeStage, type Stage } from "./stage.ts";

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

/** On another mesh a part of the rig may hold so much more or less energy, as shares of the energy moved so far [-]. */
const MOST_MADE = 1e-3;
const MOST_LOST = 0.05;

export type Status = "running" | "done" | "diverged";

/** A run in progress. `simulate` and `startRun` make one and see it through. */
export class Simulation {
  readonly problem: Problem;
  readonly options: SimulationOptions;
  /** The mesh that the run began on, by which it is recorded. */
  readonly firstModel: Model;
  readonly rest: StartRest;
  readonly recorder: Recorder;
  readonly ledger: LedgerKeeper;
  readonly events: RunEvent[] = [];
  status: Status = "running";
  /** What went wrong, when diverged. */
  trouble = "";
  steps = 0;
  lowest = Number.POSITIVE_INFINITY;
  lowestTime = 0;
  readonly startHeight: number;
  /** How the lines lie in memory, and all that holds them, on the present mesh. */
  #stage: Stage;
  readonly #ring = new Float64Array(6);
  readonly #walker = new Float64Array(6);
  readonly #values: Float64Array;
  #audit: EnergyAudit;
  readonly #spent: Spent = { parted: 0, slipped: 0, dragged: 0, feet: 0, leash: 0, lines: [0, 0] };
  readonly #feet: Feet;
  #failures: Failures;
  #taut = false;
  /** Per line, whether it is on record that the ring ran off it. */
  readonly #ringOff = [false, false];

  constructor(problem: Problem, options: SimulationOptions = {}) {
    this.problem = problem;
    this.options = options;
    const bed = layBed(buildModel(problem, options), options.kernel);
    this.firstModel = bed.model;
    this.rest = restAtStart(bed.model);
    const { main, backup, step } = bed.model;
    placeAtRest(main, bed.kernel.memory, this.rest.main);
    if (backup) placeAtRest(backup, bed.kernel.memory, this.rest.backup);
    this.#ring.set(this.rest.ring);
    this.#walker.set(this.rest.walker);
    this.startHeight = this.#walker[2]!;
    this.ledger = new LedgerKeeper(problem.walker.mass * GRAVITY);
    const seat = { ...this.rest, xi: [this.rest.xiMain, this.rest.xiBackup] as const };
    this.#stage = makeStage(bed, seat, { step, firstStep: 0, firstTime: 0 });
    const { clock, lines, kernel, joints } = this.#stage;
    this.leash.relax(this.#leashSpan());
    const connections = joints.states.filter(({ joint }) => joint.kind === "connection").length;
    this.#values = new Float64Array(CHANNEL_COUNT + connections);
    this.recorder = new Recorder(lines, kernel, {
      free: bed.model.memory,
      duration: problem.duration,
      clock,
      channels: this.#values.length,
      shapes: options.shapes ?? true,
    });
    this.#feet = new Feet(problem, bed.model, kernel.memory, this.#walker);
    const parts = this.#parts();
    this.#failures = new Failures(parts, clock);
    this.#audit = new EnergyAudit(parts, this.#spent, this.ledger);
  }

  /** All that fails, and holds or takes energy, on the present mesh. */
  #parts(): Failing & Audited {
    const { kernel, ...stage } = this.#stage;
    return {
      ...stage,
      problem: this.problem,
      memory: kernel.memory,
      ring: this.#ring,
      walker: this.#walker,
      leashSpan: () => this.#leashSpan(),
      spent: this.#spent,
      events: this.events,
    };
  }

  /** On the present mesh. */
  get model(): Model {
    return this.#stage.model;
  }
  get joints(): Joints {
    return this.#stage.joints;
  }
  get leash(): Leash {
    return this.#stage.leash;
  }
  get legAnchors(): readonly LegAnchor[] {
    return this.#stage.legAnchors;
  }
  get time(): number {
    return timeOf(this.#stage.clock, this.steps);
  }
  /** Share of the problem's duration done, 0 to 1. */
  get progress(): number {
    return this.status === "running" ? Math.min(1, this.time / this.problem.duration) : 1;
  }
  /** Memory of the kernel, for reading element states. */
  get memory(): Float64Array {
    return this.#stage.kernel.memory;
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
    return this.#stage.kernel.name;
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

  /**
   * Goes on from here on a coarser mesh (see `ModelOptions`), if it serves; says whether it does. A rig whose webbing slips, or on which
   * somebody stands, or where something is still to fail, stays on its mesh.
   */
  goOn(coarser: number): boolean {
    if (this.status !== "running" || this.problem.main.slip) return false;
    if (this.#feet.pushing || !this.#failures.over) return false;
    const model = buildModel(this.problem, { ...this.options, coarser });
    if (model.step <= this.model.step) return false;
    const { time, steps, rest } = this;
    const moment = { time, steps, rest, ring: this.#ring, leashSpan: () => this.#leashSpan() };
    const carried = carryStage(this.#stage, model, this.options.kernel, moment);
    if (!carried) return false;
    const { stage, lost } = carried;
    const { moved, now } = this.ledger;
    const [least, most] = [Math.min(...lost.lines, lost.contact), Math.max(...lost.lines, lost.contact)];
    if (least < -MOST_MADE * moved || most > MOST_LOST * moved) return false;
    now.lossMain += lost.lines[0];
    now.lossBackup += lost.lines[1];
    now.lossContact += lost.contact;
    this.#stage = stage;
    this.recorder.goOn(stage.lines, stage.kernel, { free: model.memory, clock: stage.clock });
    const parts = this.#parts();
    this.#failures = new Failures(parts, stage.clock, true);
    this.#audit = new EnergyAudit(parts, this.#spent, this.ledger, time);
    return true;
  }

  #leashSpan(): number {
    const dx = this.#walker[0]! - this.#ring[0]!;
    const dy = this.#walker[1]! - this.#ring[1]!;
    const dz = this.#walker[2]! - this.#ring[2]!;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  #step(): void {
    const { clock, contacts, ends, joints, kernel, legAnchors, model, out } = this.#stage;
    const { step } = clock;
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
    if (this.#feet.pushing) this.#feet.begin();
    for (let k = 0; k < contacts.length; k++) contacts[k]!.push(this.#ring);
    for (let k = 0; k < contacts.length; k++) if (contacts[k]!.force > 0) this.#addImpulse(contacts[k]!.impulse);
    this.#pullLeash();
    kernel.step(model.main.head);
    for (let k = 0; k < contacts.length; k++) contacts[k]!.pushLine();
    const pushing = this.#feet.pushing;
    if (pushing) this.#pushFeet();
    if (this.problem.main.slip) out[0]![0] = out[0]![0]! + ends[0]!.missedWork() + ends[1]!.missedWork();
    for (let k = 0; k < ends.length; k++) if (ends[k]!.kind !== "fixed") ends[k]!.move();
    for (let k = 0; k < legAnchors.length; k++) {
      legAnchors[k]!.move(ends);
      this.#failures.checkLegs(legAnchors[k]!, this.steps);
    }
    joints.bind(this.steps);
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
    const { step } = this.#stage.clock;
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
    const fall = GRAVITY * this.#stage.clock.step;
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
    this.#spent.dragged += addDrag(this.#stage.lines, this.#stage.kernel.memory, this.problem, this.#walker, step);
  }

  #sample(): void {
    const v = this.#values;
    const { contacts, ends, joints, leash } = this.#stage;
    const { states } = joints;
    v[0] = leash.tension;
    v[1] = ends[0]!.load;
    v[2] = ends[1]!.load;
    v[3] = ends.length > 2 ? ends[2]!.load : 0;
    v[4] = ends.length > 2 ? ends[3]!.load : 0;
    v[5] = contacts[0]!.force;
    v[6] = contacts.length > 1 ? contacts[1]!.force : 0;
    // Connections come before tapes.
    for (let k = CHANNEL_COUNT; k < v.length; k++) v[k] = states[k - CHANNEL_COUNT]!.force;
    this.recorder.sample(v);
  }

  #checkEnd(): void {
    const walker = this.#walker;
    if (
      !Number.isFinite(walker[0]! + walker[1]! + walker[2]! + this.#ring[0]! + this.#ring[2]! + this.#stage.out[0]![0]!)
    ) {
      this.#diverge();
      return;
    }
    const { contacts } = this.#stage;
    for (let k = 0; k < contacts.length; k++) {
      const { on, line } = contacts[k]!;
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
    const lost = this.#stage.lines
      .map((line) => lostNode(line, this.#stage.kernel.memory))
      .find((where) => where !== undefined);
    this.trouble = `numbers stopped being finite at ${this.time.toFixed(4)} s: ${lost ?? "ring or walker"}`;
  }

  #ringFraction(k: number): number {
    const contact = this.#stage.contacts[k];
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
