/**
 * Audits a run at intervals: what is held at x(t), read before the step, and the kinetic energy from the velocities on either
 * side of it, read after the step; then the entry is booked in the ledger.
 */
import { GRAVITY } from "../constants.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";
import type { EndSupport } from "../line/lineEnds.ts";
import { heightEnergy, kineticEnergy, stretchEnergy } from "../line/lineEnergy.ts";
import type { Problem } from "../problem.ts";
import type { Leash } from "../rigging/leash.ts";
import type { LegAnchor } from "../rigging/legAnchor.ts";
import type { RingContact } from "../rigging/ringContact.ts";
import type { LedgerKeeper } from "./energyLedger.ts";

/** Losses are running totals, so what the numbers make or lose in between is still missing at the next audit [s]. */
const AUDIT_INTERVAL = 8e-3;

/** Everything that holds or takes energy in a run. */
export interface Audited {
  readonly problem: Problem;
  readonly memory: Float64Array;
  readonly lines: readonly Line[];
  /** Per line: out[0] is the work that stretching it took [J]. */
  readonly out: readonly Float64Array[];
  readonly ends: readonly EndSupport[];
  readonly contacts: readonly RingContact[];
  readonly legAnchors: readonly LegAnchor[];
  readonly leash: Leash;
  /** Positions and velocities. */
  readonly ring: Float64Array;
  readonly walker: Float64Array;
  readonly leashSpan: () => number;
}

/** Running totals that the run itself keeps [J]. */
export interface Spent {
  parted: number;
  slipped: number;
  dragged: number;
  feet: number;
  /** What left the leash, and each line, other than by its branches. */
  leash: number;
  readonly lines: [main: number, backup: number];
}

export class EnergyAudit {
  readonly #parts: Audited;
  readonly #spent: Spent;
  readonly #ledger: LedgerKeeper;
  readonly #heldAtStart: readonly number[];
  readonly #leashAtStart: number;
  /** Per line: its velocities in memory, and a copy of its velocities from before the step [m/s]. */
  readonly #velocities: readonly Float64Array[];
  readonly #linesBefore: readonly Float64Array[];
  /** Per line and element: how much longer it is than its tension is of [m]. */
  readonly #ahead: readonly Float64Array[];
  readonly #particlesBefore = new Float64Array(24);
  #next: number;

  /** Losses before the first audit, by the present books of the ledger: none, or those of another mesh [J]. */
  readonly #before: Pick<LedgerKeeper["now"], "lossFriction" | "lossContact" | "lossLeash" | "lossMain" | "lossBackup">;
  readonly #spentBefore: Pick<Spent, "leash" | "lines">;

  constructor(parts: Audited, spent: Spent, ledger: LedgerKeeper, from = 0) {
    this.#parts = parts;
    this.#spent = spent;
    this.#ledger = ledger;
    this.#before = { ...ledger.now };
    this.#spentBefore = { leash: spent.leash, lines: [...spent.lines] };
    this.#next = from;
    this.#heldAtStart = parts.lines.map((line) => stretchEnergy(line, parts.memory));
    this.#leashAtStart = parts.leash.stored(parts.leashSpan());
    this.#ahead = parts.lines.map(({ elements }) => new Float64Array(elements));
    this.#velocities = parts.lines.map(({ base, pitch }) =>
      parts.memory.subarray(base + COLUMN.VX * pitch, base + (COLUMN.VX + 3) * pitch),
    );
    this.#linesBefore = this.#velocities.map((velocities) => new Float64Array(velocities.length));
  }

  due(t: number): boolean {
    return t >= this.#next;
  }

  /** Potential and stretch at x(t), and the velocities just before the step. */
  open(): void {
    const { now } = this.#ledger;
    const { problem, memory: m, lines, ends, legAnchors, leash, leashSpan, ring, walker } = this.#parts;
    now.potential = GRAVITY * (problem.ring.mass * ring[2]! + problem.walker.mass * walker[2]!);
    for (const line of lines) now.potential += heightEnergy(line, m);
    for (const anchor of legAnchors) now.potential += GRAVITY * anchor.mass * anchor.state[2]!;
    now.stretchMain = stretchEnergy(lines[0]!, m, this.#ahead[0]!);
    now.stretchBackup = lines[1] ? stretchEnergy(lines[1], m, this.#ahead[1]!) : 0;
    now.stretchLeash = leash.stored(leashSpan());
    now.stretchOther = 0;
    for (const end of ends) now.stretchOther += end.stored();
    for (const anchor of legAnchors) now.stretchOther += anchor.stored();
    now.lossDrag = this.#spent.dragged;
    now.lossParting = this.#spent.parted;
    now.lossSlip = this.#spent.slipped;
    now.feet = this.#spent.feet;
    this.#keepVelocities();
  }

  #keepVelocities(): void {
    const { lines, legAnchors, ring, walker } = this.#parts;
    for (let k = 0; k < lines.length; k++) this.#linesBefore[k]!.set(this.#velocities[k]!);
    this.#particlesBefore.set(ring, 0);
    this.#particlesBefore.set(walker, 6);
    for (let k = 0; k < legAnchors.length; k++) this.#particlesBefore.set(legAnchors[k]!.state, 12 + 6 * k);
  }

  /** Kinetic energy, the contact's energy at x(t), and what each mechanism has taken. */
  close(t: number): void {
    const { now } = this.#ledger;
    const { lines, ends, contacts, leash } = this.#parts;
    now.kinetic = this.#kinetic();
    now.lossFriction = this.#before.lossFriction;
    now.lossContact = this.#before.lossContact;
    for (const contact of contacts) {
      now.stretchOther += contact.stored + contact.storedInFriction;
      now.lossFriction += contact.lostToFriction;
      now.lossContact += contact.lostToContact;
    }
    for (const end of ends) now.lossContact += end.lost;
    const parted = this.#spent.leash - this.#spentBefore.leash;
    now.lossLeash = this.#before.lossLeash + leash.work - (now.stretchLeash - this.#leashAtStart) - parted;
    now.lossMain = this.#before.lossMain + this.#lineLoss(0, now.stretchMain);
    now.lossBackup = this.#before.lossBackup + (lines[1] ? this.#lineLoss(1, now.stretchBackup) : 0);
    this.#ledger.book(t);
    this.#next += AUDIT_INTERVAL;
  }

  #kinetic(): number {
    const { problem, memory, lines, legAnchors, ring, walker } = this.#parts;
    const before = this.#particlesBefore;
    const both = (mass: number, p: Float64Array, o: number) =>
      0.5 * mass * (p[3]! * before[o + 3]! + p[4]! * before[o + 4]! + p[5]! * before[o + 5]!);
    let energy = both(problem.ring.mass, ring, 0) + both(problem.walker.mass, walker, 6);
    for (let k = 0; k < legAnchors.length; k++) energy += both(legAnchors[k]!.mass, legAnchors[k]!.state, 12 + 6 * k);
    for (let k = 0; k < lines.length; k++) energy += kineticEnergy(lines[k]!, memory, this.#linesBefore[k]!);
    return energy;
  }

  /**
   * What stretching a line took, less what it still holds and what went when it parted or slipped [J]. The work is booked up to
   * the strains that the tensions are of, a little short of those at which the energy is read.
   */
  #lineLoss(k: number, held: number): number {
    const { memory: m, lines, out } = this.#parts;
    const { base, pitch } = lines[k]!;
    const T = base + COLUMN.T * pitch;
    const ahead = this.#ahead[k]!;
    let further = 0;
    for (let e = 0; e < ahead.length; e++) further += m[T + e]! * ahead[e]!;
    return (
      out[k]![0]! + further - (held - this.#heldAtStart[k]!) - (this.#spent.lines[k]! - this.#spentBefore.lines[k]!)
    );
  }
}
