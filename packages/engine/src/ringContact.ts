/**
 * The ring against one line. It touches the line's smooth curve (see `lineWeights.ts`) at a node coordinate ξ that follows
 * the nearest point; beyond the clearance a spring pushes back across the line, and Coulomb friction acts along it.
 *
 * Symbols: p point of the curve, n direction from p to the ring, t tangent, N normal force [N], J impulse [N·s].
 */
import { COLUMN } from "./lineLayout.ts";
import { makeWeights, weighLine } from "./lineWeights.ts";
import type { Line } from "./model.ts";

/** Slowest speed at which ξ may follow along the line, on top of the ring's own relative speed [m/s]. */
const FOLLOW = 2;
/** Least curvature of the squared distance that a Newton step for ξ counts on, as a share of a straight line's [-]. */
const STEADY = 0.5;
export class RingContact {
  readonly line: Line;
  /** Node coordinate of the ring on the line. */
  xi: number;
  /** Live stretch of nodes the ring is on. */
  low = 0;
  high: number;
  on = true;
  /** Normal force of the last step [N]. */
  force = 0;
  /** Energy in the contact spring at the last positions [J]. */
  stored = 0;
  /** What pushing apart took at the last positions, less what the spring holds: damping, and sliding along a bent line [J]. */
  get lostToContact(): number {
    return this.#normalNow - this.stored;
  }
  /** What friction took at the last positions, less what its spring holds [J]. */
  get lostToFriction(): number {
    return this.#tangentNow - this.storedInFriction;
  }
  /** Energy in the friction spring at the last positions [J]. */
  storedInFriction = 0;
  /** Work against the normal force and against friction: at the last positions, and at the end of the last step [J]. */
  #normalNow = 0;
  #tangentNow = 0;
  #normalWork = 0;
  #begun = false;
  #tangentWork = 0;
  /** What `push` owes the ring [N·s]. */
  readonly impulse = new Float64Array(3);
  readonly #tangent = new Float64Array(3);
  /** How far the ring is from where it last stuck, along the line [m]. */
  #stuck = 0;
  readonly #normal = new Float64Array(3);
  #sliding = 0;
  #rubbed = 0;
  #mobility = 1;
  /** Length of the step at hand; kept here so that no number need be passed about [s]. */
  #step = 0;
  readonly #m: Float64Array;
  readonly #weights = makeWeights();
  readonly #clearance: number;
  readonly #friction: number;
  readonly #stiffness: number;
  readonly #damping: number;
  readonly #ringMass: number;
  readonly #natural: number;

  constructor(
    line: Line,
    memory: Float64Array,
    ring: { mass: number; clearance: number; friction: number },
    stiffness: number,
    damping: number,
    xi: number,
  ) {
    this.line = line;
    this.#m = memory;
    this.xi = xi;
    this.high = line.nodes - 1;
    this.#clearance = ring.clearance;
    this.#friction = ring.friction;
    this.#stiffness = stiffness;
    this.#damping = damping;
    this.#ringMass = ring.mass;
    this.#natural = line.naturalLength / line.elements;
  }

  /**
   * Follows the ring, then pushes ring and line apart across the line for one step. To be called before anything else has
   * changed velocities in this step, so that the closing speed is the true one; `push` gives the line its impulse and leaves
   * the ring's in `impulse`, for the caller to add once both contacts have seen the ring's velocity.
   */
  push(ring: Float64Array, step: number): void {
    const m = this.#m;
    const { base, pitch } = this.line;
    const { w, d } = this.#weights;
    this.force = 0;
    this.stored = 0;
    this.impulse[0] = 0;
    this.impulse[1] = 0;
    this.impulse[2] = 0;
    this.storedInFriction = 0;
    this.#rubbed = 0;
    this.#normalNow = this.#normalWork;
    this.#tangentNow = this.#tangentWork;
    this.#step = step;
    this.#follow(ring);
    if (!this.on) return;
    weighLine(this.xi, this.low, this.high, this.#weights);
    const at = base + this.#weights.node;
    const w0 = w[0]!;
    const w1 = w[1]!;
    const w2 = w[2]!;
    const gx = ring[0]! - (w0 * m[at]! + w1 * m[at + 1]! + w2 * m[at + 2]!);
    const gy = ring[1]! - (w0 * m[at + pitch]! + w1 * m[at + pitch + 1]! + w2 * m[at + pitch + 2]!);
    const gz = ring[2]! - (w0 * m[at + 2 * pitch]! + w1 * m[at + 2 * pitch + 1]! + w2 * m[at + 2 * pitch + 2]!);
    const distance = Math.sqrt(gx * gx + gy * gy + gz * gz);
    const beyond = distance - this.#clearance;
    if (beyond <= 0) return;
    const V = at + COLUMN.VX * pitch;
    const IM = at + COLUMN.IM * pitch;
    const px = w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]!;
    const py = w0 * m[V + pitch]! + w1 * m[V + pitch + 1]! + w2 * m[V + pitch + 2]!;
    const pz = w0 * m[V + 2 * pitch]! + w1 * m[V + 2 * pitch + 1]! + w2 * m[V + 2 * pitch + 2]!;
    const nx = gx / distance;
    const ny = gy / distance;
    const nz = gz / distance;
    const opening = (ring[3]! - px) * nx + (ring[4]! - py) * ny + (ring[5]! - pz) * nz;
    const spring = this.#stiffness * beyond;
    this.#mobility = 1 / this.#ringMass + w0 * w0 * m[IM]! + w1 * w1 * m[IM + 1]! + w2 * w2 * m[IM + 2]!;
    // The damper is taken at the end of the step, which keeps it stable however strong it is.
    let N = spring + (this.#damping * opening) / (1 + this.#damping * step * this.#mobility);
    if (N < 0) N = 0;
    this.force = N;
    this.stored = 0.5 * spring * beyond;
    if (!this.#begun) this.#normalNow = this.stored;
    this.#begun = true;
    this.#normalNow += 0.5 * N * opening * step;
    this.#normal[0] = nx;
    this.#normal[1] = ny;
    this.#normal[2] = nz;
    const J = -N * step;
    // Tangent and the ring's speed along it, for friction.
    let tx = d[0]! * m[at]! + d[1]! * m[at + 1]! + d[2]! * m[at + 2]!;
    let ty = d[0]! * m[at + pitch]! + d[1]! * m[at + pitch + 1]! + d[2]! * m[at + pitch + 2]!;
    let tz = d[0]! * m[at + 2 * pitch]! + d[1]! * m[at + 2 * pitch + 1]! + d[2]! * m[at + 2 * pitch + 2]!;
    const length = Math.sqrt(tx * tx + ty * ty + tz * tz) + 1e-300;
    tx /= length;
    ty /= length;
    tz /= length;
    this.#tangent[0] = tx;
    this.#tangent[1] = ty;
    this.#tangent[2] = tz;
    this.#sliding = (ring[3]! - px) * tx + (ring[4]! - py) * ty + (ring[5]! - pz) * tz;
    this.#rub();
    this.#tangentNow -= 0.5 * this.#rubbed * this.#sliding;
    const K = this.#rubbed;
    this.impulse[0] = J * nx + K * tx;
    this.impulse[1] = J * ny + K * ty;
    this.impulse[2] = J * nz + K * tz;
    this.#pushLine(V, IM);
  }

  /**
   * Coulomb friction along the line, after `push`: a spring that sticks to the line's material and is dragged along once it
   * would pull harder than μ·N (Cundall & Strack, Géotechnique 29, 1979). A rule on speeds alone would creep under load.
   */
  #rub(): void {
    const step = this.#step;
    const most = this.#friction * this.force;
    const damper = (this.#damping * this.#sliding) / (1 + this.#damping * step * this.#mobility);
    let F = -this.#stiffness * this.#stuck - damper;
    if (F > most) F = most;
    else if (F < -most) F = -most;
    if (this.#stuck * this.#stiffness > most) this.#stuck = most / this.#stiffness;
    else if (this.#stuck * this.#stiffness < -most) this.#stuck = -most / this.#stiffness;
    this.#rubbed = F * step;
    this.storedInFriction = 0.5 * this.#stiffness * this.#stuck * this.#stuck;
  }

  /**
   * Books the step's work, once everything has its new velocity: in the leapfrog scheme a force works over the mean of the
   * velocities on either side of it.
   */
  book(ring: Float64Array, step: number): void {
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
    const rx = ring[3]! - (w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]!);
    const ry = ring[4]! - (w0 * m[V + pitch]! + w1 * m[V + pitch + 1]! + w2 * m[V + pitch + 2]!);
    const rz = ring[5]! - (w0 * m[V + 2 * pitch]! + w1 * m[V + 2 * pitch + 1]! + w2 * m[V + 2 * pitch + 2]!);
    const normal = this.#normal;
    const tangent = this.#tangent;
    const opening = rx * normal[0]! + ry * normal[1]! + rz * normal[2]!;
    const sliding = rx * tangent[0]! + ry * tangent[1]! + rz * tangent[2]!;
    this.#normalWork = this.#normalNow + 0.5 * this.force * opening * step;
    this.#tangentWork = this.#tangentNow - 0.5 * this.#rubbed * sliding;
    this.#stuck += sliding * step;
  }

  /** Gives the line the opposite of the ring's impulse, by the weights. */
  #pushLine(V: number, IM: number): void {
    const m = this.#m;
    const { pitch } = this.line;
    const { w } = this.#weights;
    const jx = this.impulse[0]!;
    const jy = this.impulse[1]!;
    const jz = this.impulse[2]!;
    for (let k = 0; k < 3; k++) {
      const s = w[k]! * m[IM + k]!;
      m[V + k] = m[V + k]! - s * jx;
      m[V + pitch + k] = m[V + pitch + k]! - s * jy;
      m[V + 2 * pitch + k] = m[V + 2 * pitch + k]! - s * jz;
    }
  }

  /**
   * Moves ξ to the nearest point by a Newton step, no faster than the ring can slide: on a crumpled, slack line the nearest
   * point can jump, and a jump would create energy. So would a Gauss–Newton step, which leads a ring that slides fast through
   * a bend and pushes it on. Off the end of a live stretch with a free end, the ring is
   * off the line for good.
   */
  #follow(ring: Float64Array): void {
    const m = this.#m;
    const { base, pitch } = this.line;
    if (this.high - this.low < 2) {
      this.on = false;
      this.force = 0;
      this.stored = 0;
      return;
    }
    weighLine(this.xi, this.low, this.high, this.#weights);
    const { w, d, bend } = this.#weights;
    const at = base + this.#weights.node;
    const w0 = w[0]!;
    const w1 = w[1]!;
    const w2 = w[2]!;
    const d0 = d[0]!;
    const d1 = d[1]!;
    const d2 = d[2]!;
    let along = 0;
    let square = 0;
    let speed = 0;
    let bent = 0;
    for (let c = 0, X = at; c < 3; c++, X += pitch) {
      const V = X + COLUMN.VX * pitch;
      const x0 = m[X]!;
      const x1 = m[X + 1]!;
      const x2 = m[X + 2]!;
      const tangent = d0 * x0 + d1 * x1 + d2 * x2;
      const relative = ring[3 + c]! - (w0 * m[V]! + w1 * m[V + 1]! + w2 * m[V + 2]!);
      const gap = ring[c]! - (w0 * x0 + w1 * x1 + w2 * x2);
      along += gap * tangent;
      bent += gap * bend * (x0 - 2 * x1 + x2);
      square += tangent * tangent;
      speed += relative * relative;
    }
    const most = ((1.5 * Math.sqrt(speed) + FOLLOW) * this.#step) / this.#natural;
    // Far from a sharp bend's inside the nearest point is no minimum; there the step is kept short.
    let move = along / (Math.max(square - bent, STEADY * square) + 1e-12);
    if (move > most) move = most;
    else if (move < -most) move = -most;
    this.xi += move;
    if (this.xi < this.low) this.#meetEnd(this.low);
    else if (this.xi > this.high) this.#meetEnd(this.high);
  }

  /** At an anchor the ring stops; at a free end it runs off. */
  #meetEnd(node: number): void {
    const last = this.line.nodes - 1;
    const held = (node === 0 && !this.freeA) || (node === last && !this.freeB);
    this.xi = node;
    if (held) return;
    this.on = false;
    this.force = 0;
    this.stored = 0;
  }

  /** Whether the line's own ends are free. */
  freeA = false;
  freeB = false;

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
    // A line that ends at the ring has run out of it.
    if ((freeLow && this.xi < low + 0.5) || (freeHigh && this.xi > high - 0.5)) this.on = false;
    this.xi = Math.min(Math.max(this.xi, low), high);
  }
}
