/**
 * The ring against one line. It touches the line's smooth curve (see `lineWeights.ts`) at a node coordinate ξ that follows
 * the nearest point; beyond the clearance a spring pushes back across the line, and Coulomb friction acts along it.
 *
 * Symbols: p point of the curve, n direction from p to the ring, t tangent, N normal force [N], J impulse [N·s].
 */

import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";
import { coordinateAt, makeWeights, placeOf, WEIGHTED_NODES, weighLine } from "../line/lineWeights.ts";
import { hypot } from "../portable/index.ts";

/** Slowest speed at which ξ may follow along the line, on top of the ring's own relative speed [m/s]. */
const LEAST_FOLLOW_SPEED = 2;
/** Least curvature of the squared distance that a Newton step for ξ counts on, as a share of a straight line's [-]. */
const LEAST_CURVATURE_SHARE = 0.5;
/** The curves of two meshes may be so far apart at the ring [m]: where it pushes, what shows little in the drop; where the line is loose, more. */
const LARGEST_SHIFT_PUSHED = 0.15;
const LARGEST_SHIFT_LOOSE = 0.5;

/** What a contact is made of besides its line and the ring. */
export interface ContactMake {
  /** [N/m] */
  readonly stiffness: number;
  /** Node coordinate of the ring at rest. */
  readonly xi: number;
  /** [s] */
  readonly step: number;
}

export class RingContact {
  readonly line: Line;
  /** Node coordinate of the ring on the line. */
  xi: number;
  /** Live stretch of nodes the ring is on. */
  low = 0;
  high: number;
  on = true;
  /** Whether the line's own ends are free. */
  freeA = false;
  freeB = false;
  /** Normal force of the last step [N]. */
  force = 0;
  /** Energy in the contact spring at the last positions [J]. */
  stored = 0;
  /** Energy in the friction spring at the last positions [J]. */
  storedInFriction = 0;
  /** What `push` owes the ring, and takes from the line [N·s]. */
  readonly impulse = new Float64Array(3);
  /** Work against the normal force and against friction: at the last positions, and at the end of the last step [J]. */
  #normalNow = 0;
  #tangentNow = 0;
  #normalWork = 0;
  #tangentWork = 0;
  #begun = false;
  /** How far the ring is from where it last stuck, along the line [m]. */
  #stuck = 0;
  #sliding = 0;
  #rubbed = 0;
  readonly #normal = new Float64Array(3);
  readonly #tangent = new Float64Array(3);
  readonly #m: Float64Array;
  readonly #weights = makeWeights();
  /** Whether the weights are those of ξ. */
  #weighed = false;
  readonly #step: number;
  readonly #ownClearance: number;
  /** The ring's own, but for what two meshes differed. */
  #clearance: number;
  readonly #friction: number;
  readonly #stiffness: number;
  /** Mass of the line per length [kg/m]. */
  readonly #linearMass: number;
  /** Damping of this step, acting at the end of the step [N·s/m]. */
  #damping = 0;
  readonly #ringMass: number;

  constructor(
    line: Line,
    memory: Float64Array,
    ring: { mass: number; clearance: number; friction: number },
    make: ContactMake,
  ) {
    this.line = line;
    this.#m = memory;
    this.xi = make.xi;
    this.high = line.nodes - 1;
    this.#step = make.step;
    this.#ownClearance = ring.clearance;
    this.#clearance = ring.clearance;
    this.#friction = ring.friction;
    this.#stiffness = make.stiffness;
    this.#linearMass = line.masses.reduce((sum, mass) => sum + mass, 0) / line.naturalLength;
    this.#ringMass = ring.mass;
  }

  /** Energy in the springs of contact and friction, as far as the last step has brought it [J]. */
  get springEnergy(): number {
    return this.stored + 0.5 * this.#stiffness * this.#stuck * this.#stuck;
  }
  /** What pushing apart took at the last positions, less what the spring holds: damping, and sliding along a bent line [J]. */
  get lostToContact(): number {
    return this.#normalNow - this.stored;
  }
  /** What friction took at the last positions, less what its spring holds [J]. */
  get lostToFriction(): number {
    return this.#tangentNow - this.storedInFriction;
  }

  /**
   * Follows the ring, then finds what pushes ring and line apart across the line for one step. To be called before anything
   * has changed velocities in this step, so that the closing speed is the true one; `impulse` is for the caller to give the
   * ring once both contacts have seen its velocity, and `pushLine` gives the line its share.
   */
  push(ring: Float64Array): void {
    this.force = 0;
    this.stored = 0;
    this.storedInFriction = 0;
    this.#rubbed = 0;
    this.#normalNow = this.#normalWork;
    this.#tangentNow = this.#tangentWork;
    if (!this.on) return;
    this.#follow(ring);
    if (!this.on) return;
    const m = this.#m;
    const { pitch } = this.line;
    const { w } = this.#weights;
    const at = this.line.base + this.#weights.node;
    const w0 = w[0]!;
    const w1 = w[1]!;
    const w2 = w[2]!;
    const w3 = w[3]!;
    const w4 = w[4]!;
    const w5 = w[5]!;
    const gx =
      ring[0]! -
      (w0 * m[at]! + w1 * m[at + 1]! + w2 * m[at + 2]! + w3 * m[at + 3]! + w4 * m[at + 4]! + w5 * m[at + 5]!);
    const gy =
      ring[1]! -
      (w0 * m[at + pitch]! +
        w1 * m[at + pitch + 1]! +
        w2 * m[at + pitch + 2]! +
        w3 * m[at + pitch + 3]! +
        w4 * m[at + pitch + 4]! +
        w5 * m[at + pitch + 5]!);
    const gz =
      ring[2]! -
      (w0 * m[at + 2 * pitch]! +
        w1 * m[at + 2 * pitch + 1]! +
        w2 * m[at + 2 * pitch + 2]! +
        w3 * m[at + 2 * pitch + 3]! +
        w4 * m[at + 2 * pitch + 4]! +
        w5 * m[at + 2 * pitch + 5]!);
    const square = gx * gx + gy * gy + gz * gz;
    if (square <= this.#clearance * this.#clearance) {
      if (this.#clearance !== this.#ownClearance) this.#heal(Math.sqrt(square));
      return;
    }
    const distance = Math.sqrt(square);
    const V = at + COLUMN.VX * pitch;
    const IM = at + COLUMN.IM * pitch;
    const rx =
      ring[3]! - (w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]! + w3 * m[V + 3]! + w4 * m[V + 4]! + w5 * m[V + 5]!);
    const ry =
      ring[4]! -
      (w0 * m[V + pitch]! +
        w1 * m[V + pitch + 1]! +
        w2 * m[V + pitch + 2]! +
        w3 * m[V + pitch + 3]! +
        w4 * m[V + pitch + 4]! +
        w5 * m[V + pitch + 5]!);
    const rz =
      ring[5]! -
      (w0 * m[V + 2 * pitch]! +
        w1 * m[V + 2 * pitch + 1]! +
        w2 * m[V + 2 * pitch + 2]! +
        w3 * m[V + 2 * pitch + 3]! +
        w4 * m[V + 2 * pitch + 4]! +
        w5 * m[V + 2 * pitch + 5]!);
    const normal = this.#normal;
    const nx = gx / distance;
    const ny = gy / distance;
    const nz = gz / distance;
    normal[0] = nx;
    normal[1] = ny;
    normal[2] = nz;
    const step = this.#step;
    const opening = rx * nx + ry * ny + rz * nz;
    const beyond = distance - this.#clearance;
    const spring = this.#stiffness * beyond;
    const mobility =
      1 / this.#ringMass +
      w0 * w0 * m[IM]! +
      w1 * w1 * m[IM + 1]! +
      w2 * w2 * m[IM + 2]! +
      w3 * w3 * m[IM + 3]! +
      w4 * w4 * m[IM + 4]! +
      w5 * w5 * m[IM + 5]!;
    // A point that is moved across a string sends waves both ways, which resists with 2·√(T·μ). What is shorter than an element
    // the chain cannot send, and the ring would rattle on its spring: a damper of √(T·μ) takes that, at the tension that there is, for a
    // slack line sends nothing. It is taken at the end of the step, which keeps it stable however strong it is.
    const T = this.line.base + COLUMN.T * pitch + this.#element();
    const pull = 0.5 * (Math.max(m[T]!, 0) + Math.max(m[T + 1]!, 0));
    const damping = Math.sqrt(pull * this.#linearMass);
    this.#damping = damping / (1 + damping * step * mobility);
    let N = spring + this.#damping * opening;
    if (N < 0) N = 0;
    this.force = N;
    this.stored = 0.5 * spring * beyond;
    if (!this.#begun) this.#normalNow = this.stored;
    this.#begun = true;
    this.#normalNow += 0.5 * N * opening * step;
    // Tangent and the ring's speed along it, for friction.
    const { d } = this.#weights;
    const d0 = d[0]!;
    const d1 = d[1]!;
    const d2 = d[2]!;
    const d3 = d[3]!;
    const d4 = d[4]!;
    const d5 = d[5]!;
    const tx = d0 * m[at]! + d1 * m[at + 1]! + d2 * m[at + 2]! + d3 * m[at + 3]! + d4 * m[at + 4]! + d5 * m[at + 5]!;
    const ty =
      d0 * m[at + pitch]! +
      d1 * m[at + pitch + 1]! +
      d2 * m[at + pitch + 2]! +
      d3 * m[at + pitch + 3]! +
      d4 * m[at + pitch + 4]! +
      d5 * m[at + pitch + 5]!;
    const tz =
      d0 * m[at + 2 * pitch]! +
      d1 * m[at + 2 * pitch + 1]! +
      d2 * m[at + 2 * pitch + 2]! +
      d3 * m[at + 2 * pitch + 3]! +
      d4 * m[at + 2 * pitch + 4]! +
      d5 * m[at + 2 * pitch + 5]!;
    const length = Math.sqrt(tx * tx + ty * ty + tz * tz) + 1e-300;
    const tangent = this.#tangent;
    tangent[0] = tx / length;
    tangent[1] = ty / length;
    tangent[2] = tz / length;
    this.#sliding = (rx * tx + ry * ty + rz * tz) / length;
    this.#rub();
    this.#tangentNow -= 0.5 * this.#rubbed * this.#sliding;
    const J = -N * step;
    const K = this.#rubbed / length;
    this.impulse[0] = J * nx + K * tx;
    this.impulse[1] = J * ny + K * ty;
    this.impulse[2] = J * nz + K * tz;
  }

  /**
   * Coulomb friction along the line: a spring that sticks to the line's material and is dragged along once it
   * would pull harder than μ·N (Cundall & Strack, Géotechnique 29, 1979). A rule on speeds alone would creep under load.
   */
  #rub(): void {
    const most = this.#friction * this.force;
    let F = -this.#stiffness * this.#stuck - this.#damping * this.#sliding;
    if (F > most) F = most;
    else if (F < -most) F = -most;
    if (this.#stuck * this.#stiffness > most) this.#stuck = most / this.#stiffness;
    else if (this.#stuck * this.#stiffness < -most) this.#stuck = -most / this.#stiffness;
    this.#rubbed = F * this.#step;
    this.storedInFriction = 0.5 * this.#stiffness * this.#stuck * this.#stuck;
  }

  /**
   * Gives the line the opposite of the ring's impulse, by the weights, after the kernel has moved it: the kernel takes
   * velocities for those of the motion. End nodes are moved later, by whoever moves them.
   */
  pushLine(): void {
    if (this.force === 0) return;
    const m = this.#m;
    const { base, pitch, nodes } = this.line;
    const { w, node } = this.#weights;
    const step = this.#step;
    for (let k = 0; k < WEIGHTED_NODES; k++) {
      if (w[k] === 0) continue;
      const X = base + node + k;
      const V = X + COLUMN.VX * pitch;
      const share = w[k]! * m[X + COLUMN.IM * pitch]!;
      const shift = node + k > 0 && node + k < nodes - 1 ? step : 0;
      for (let c = 0; c < 3; c++) {
        const change = share * this.impulse[c]!;
        m[V + c * pitch] = m[V + c * pitch]! - change;
        m[X + c * pitch] = m[X + c * pitch]! - shift * change;
      }
    }
  }

  /**
   * Books the step's work, once everything has its new velocity: in the leapfrog scheme a force works over the mean of the
   * velocities on either side of it.
   */
  book(ring: Float64Array): void {
    if (this.force === 0) {
      this.#stuck = 0;
      return;
    }
    const m = this.#m;
    const { pitch } = this.line;
    const { w } = this.#weights;
    const V = this.line.base + this.#weights.node + COLUMN.VX * pitch;
    const w0 = w[0]!;
    const w1 = w[1]!;
    const w2 = w[2]!;
    const w3 = w[3]!;
    const w4 = w[4]!;
    const w5 = w[5]!;
    const rx =
      ring[3]! - (w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]! + w3 * m[V + 3]! + w4 * m[V + 4]! + w5 * m[V + 5]!);
    const ry =
      ring[4]! -
      (w0 * m[V + pitch]! +
        w1 * m[V + pitch + 1]! +
        w2 * m[V + pitch + 2]! +
        w3 * m[V + pitch + 3]! +
        w4 * m[V + pitch + 4]! +
        w5 * m[V + pitch + 5]!);
    const rz =
      ring[5]! -
      (w0 * m[V + 2 * pitch]! +
        w1 * m[V + 2 * pitch + 1]! +
        w2 * m[V + 2 * pitch + 2]! +
        w3 * m[V + 2 * pitch + 3]! +
        w4 * m[V + 2 * pitch + 4]! +
        w5 * m[V + 2 * pitch + 5]!);
    const normal = this.#normal;
    const tangent = this.#tangent;
    const opening = rx * normal[0]! + ry * normal[1]! + rz * normal[2]!;
    const sliding = rx * tangent[0]! + ry * tangent[1]! + rz * tangent[2]!;
    this.#normalWork = this.#normalNow + 0.5 * this.force * opening * this.#step;
    this.#tangentWork = this.#tangentNow - 0.5 * this.#rubbed * sliding;
    this.#stuck += sliding * this.#step;
  }

  /**
   * Moves ξ to the nearest point by a Newton step, no faster than the ring can slide: on a crumpled, slack line the nearest
   * point can jump, and a jump would create energy. So would a Gauss–Newton step, which leads a ring that slides fast through
   * a bend and pushes it on. Off the end of a live stretch with a free end, the ring is off the line for good. Leaves the
   * weights of the new ξ behind.
   */
  #follow(ring: Float64Array): void {
    if (this.high - this.low < 2) {
      this.on = false;
      return;
    }
    const weights = this.#weights;
    if (!this.#weighed) this.#weigh();
    this.#weighed = true;
    const m = this.#m;
    const { pitch } = this.line;
    const { w, d, b } = weights;
    const w0 = w[0]!;
    const w1 = w[1]!;
    const w2 = w[2]!;
    const w3 = w[3]!;
    const w4 = w[4]!;
    const w5 = w[5]!;
    const d0 = d[0]!;
    const d1 = d[1]!;
    const d2 = d[2]!;
    const d3 = d[3]!;
    const d4 = d[4]!;
    const d5 = d[5]!;
    let along = 0;
    let square = 0;
    let speed = 0;
    let bent = 0;
    for (let c = 0, X = this.line.base + weights.node; c < 3; c++, X += pitch) {
      const V = X + COLUMN.VX * pitch;
      const x0 = m[X]!;
      const x1 = m[X + 1]!;
      const x2 = m[X + 2]!;
      const x3 = m[X + 3]!;
      const x4 = m[X + 4]!;
      const x5 = m[X + 5]!;
      const tangent = d0 * x0 + d1 * x1 + d2 * x2 + d3 * x3 + d4 * x4 + d5 * x5;
      const relative =
        ring[3 + c]! -
        (w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]! + w3 * m[V + 3]! + w4 * m[V + 4]! + w5 * m[V + 5]!);
      const gap = ring[c]! - (w0 * x0 + w1 * x1 + w2 * x2 + w3 * x3 + w4 * x4 + w5 * x5);
      along += gap * tangent;
      bent += gap * (b[0]! * x0 + b[1]! * x1 + b[2]! * x2 + b[3]! * x3 + b[4]! * x4 + b[5]! * x5);
      square += tangent * tangent;
      speed += relative * relative;
    }
    const { lengths } = this.line;
    const e = this.#element();
    const natural = 0.5 * (lengths[e]! + lengths[e + 1]!);
    const most = ((1.5 * Math.sqrt(speed) + LEAST_FOLLOW_SPEED) * this.#step) / natural;
    // Far from a sharp bend's inside the nearest point is no minimum; there the step is kept short.
    let move = along / (Math.max(square - bent, LEAST_CURVATURE_SHARE * square) + 1e-12);
    if (move > most) move = most;
    else if (move < -most) move = -most;
    this.xi += move;
    if (this.xi < this.low) this.#meetEnd(this.low);
    else if (this.xi > this.high) this.#meetEnd(this.high);
    if (this.on) this.#weigh();
  }

  /** First of the two elements at the node nearest to the ring, or at the one beside the end. */
  #element(): number {
    return Math.min(Math.max(Math.round(this.xi), 1), this.line.nodes - 2) - 1;
  }

  #weigh(): void {
    this.#weights.xi = this.xi;
    weighLine(this.#weights, this.low, this.high);
  }

  /** At an anchor the ring stops; at a free end it runs off. */
  #meetEnd(node: number): void {
    const last = this.line.nodes - 1;
    const held = (node === 0 && !this.freeA) || (node === last && !this.freeB);
    this.xi = node;
    if (!held) this.on = false;
  }

  /**
   * Goes on from the contact on another mesh of the same line, with the push that it had. The curves of two meshes are not quite the same:
   * by what they differ at the ring, the clearance is another one until ring and line part. False where they differ by too much.
   */
  takeOver(from: RingContact, ring: Float64Array, parted: (element: number) => boolean): boolean {
    this.on = from.on;
    this.freeA = from.freeA;
    this.freeB = from.freeB;
    this.#clearance = from.#clearance;
    this.force = from.force;
    this.stored = (from.stored * from.#stiffness) / this.#stiffness;
    this.#stuck = (from.#stuck * from.#stiffness) / this.#stiffness;
    this.#tangentWork = 0.5 * this.#stiffness * this.#stuck * this.#stuck;
    if (!this.on) return true;
    const { fractions } = this.line;
    const place = placeOf(from.line.fractions, from.xi, from.low, from.high);
    this.xi = coordinateAt(fractions, place);
    this.restretch(parted);
    if (!this.on) return false;
    this.xi = coordinateAt(fractions, place, this.low, this.high);
    this.#weigh();
    this.#weighed = true;
    const distance = hypot(ring[0]! - this.#at(0), ring[1]! - this.#at(1), ring[2]! - this.#at(2));
    const spring = Math.sqrt(2 * from.#stiffness * from.stored);
    const pushes = spring > 0;
    // Where nothing pushes, nothing may begin to.
    const wanted = pushes ? distance - spring / this.#stiffness : Math.max(distance, this.#clearance);
    this.#clearance = wanted;
    const most = pushes ? LARGEST_SHIFT_PUSHED : LARGEST_SHIFT_LOOSE;
    return wanted >= 0 && Math.abs(wanted - this.#ownClearance) <= most;
  }

  /** Comes back to the ring's own clearance, as far as nothing begins to push by it. */
  #heal(distance: number): void {
    this.#clearance = Math.max(this.#ownClearance, Math.min(this.#clearance, distance));
  }

  /** Coordinate of the point that the ring touches, on an axis [m]. */
  #at(axis: number): number {
    const { w, node } = this.#weights;
    const X = this.line.base + axis * this.line.pitch + node;
    let at = 0;
    for (let k = 0; k < WEIGHTED_NODES; k++) if (w[k] !== 0) at += w[k]! * this.#m[X + k]!;
    return at;
  }

  /** The live stretch around ξ after elements have parted: `parted(e)` says whether element e has. */
  restretch(parted: (element: number) => boolean): void {
    if (!this.on) return;
    const { elements, nodes } = this.line;
    const here = Math.min(Math.max(Math.floor(this.xi), 0), elements - 1);
    // On a parted element the ring is on the nearer piece.
    const seed = Math.min(Math.max(Math.round(this.xi), 0), nodes - 1);
    let low = parted(here) ? seed : here;
    let high = parted(here) ? seed : here + 1;
    while (low > 0 && !parted(low - 1)) low--;
    while (high < nodes - 1 && !parted(high)) high++;
    this.low = low;
    this.high = high;
    const freeLow = low > 0 || this.freeA;
    const freeHigh = high < nodes - 1 || this.freeB;
    // A line that ends at the ring has run out of the ring.
    if ((freeLow && this.xi < low + 0.5) || (freeHigh && this.xi > high - 0.5)) this.on = false;
    this.xi = Math.min(Math.max(this.xi, low), high);
    this.#weighed = false;
  }
}
