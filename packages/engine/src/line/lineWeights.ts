/**
 * A smooth curve through a line's nodes: the ring acts on the line through weights on six nodes around a continuous node
 * coordinate ξ, so that it glides instead of cogging from node to node. Cubic B-spline weights on the nearest four, sharpened: less
 * KINK times their second difference. Near an end of the live stretch [low, high] the node beyond it is mirrored, which makes the
 * curve end in the end node.
 *
 * Why sharpened: a load spread over weights w bends a string under tension T less than a point load does, by the compliance
 * Σwᵢwⱼ|i − j|·h/2T (its Green's function is −|s|/2T). Averaged over ξ that sum is 2868/5040 for the B-spline alone; for w − κ·δ²w
 * it is (2868 − 9664·κ − 4900·κ²)/5040, which vanishes at KINK: at any tension the line has the bend that a point would give it. What
 * is left of it between nodes, and would make the ring cog, is 0.04; sharpened weights of the quadratic B-spline have twice that.
 */
export interface LineWeights {
  /** The coordinate that they are to be of. Kept here, for a number that is passed to a function ends up on the heap. */
  xi: number;
  /** First of the nodes; weights beyond the stretch are zero, and may lie beyond the line. */
  node: number;
  /** Weights of the nodes [-]. */
  readonly w: Float64Array;
  /** Their first and second derivatives by ξ [-]. */
  readonly d: Float64Array;
  readonly b: Float64Array;
}

/** Nodes with a weight. */
export const WEIGHTED_NODES = 6;
/** (√149605696 − 9664)/9800, see above [-]. */
const KINK = 0.26197354;

export const makeWeights = (): LineWeights => ({
  xi: 0,
  node: 0,
  w: new Float64Array(WEIGHTED_NODES),
  d: new Float64Array(WEIGHTED_NODES),
  b: new Float64Array(WEIGHTED_NODES),
});

/** Fills `out` for its coordinate ξ in [low, high]; high − low must be at least 2. */
export function weighLine(out: LineWeights, low: number, high: number): void {
  const { xi, w, d, b } = out;
  let before = Math.floor(xi);
  if (before < low) before = low;
  else if (before > high - 1) before = high - 1;
  const u = xi - before;
  const v = 1 - u;
  out.node = before > 1 ? before - 2 : 0;
  // The cubic B-spline's weights on the node before the last one, the last one, the next one and the one after it.
  let w1 = 2 / 3 - u * u + 0.5 * u * u * u;
  let w2 = 2 / 3 - v * v + 0.5 * v * v * v;
  let w0 = (v * v * v) / 6;
  let w3 = (u * u * u) / 6;
  let d1 = -2 * u + 1.5 * u * u;
  let d2 = 2 * v - 1.5 * v * v;
  let d0 = -0.5 * v * v;
  let d3 = 0.5 * u * u;
  let b1 = 3 * u - 2;
  let b2 = 3 * v - 2;
  let b0 = v;
  let b3 = u;
  if (before > low + 1 && before < high - 2) {
    spread(w, w0, w1, w2, w3);
    spread(d, d0, d1, d2, d3);
    spread(b, b0, b1, b2, b3);
    return;
  }
  w.fill(0);
  d.fill(0);
  b.fill(0);
  if (before === low) {
    // The node before the end is 2·end − next.
    w1 += 2 * w0;
    w2 -= w0;
    w0 = 0;
    d1 += 2 * d0;
    d2 -= d0;
    d0 = 0;
    b1 += 2 * b0;
    b2 -= b0;
    b0 = 0;
  }
  if (before === high - 1) {
    w2 += 2 * w3;
    w1 -= w3;
    w3 = 0;
    d2 += 2 * d3;
    d1 -= d3;
    d3 = 0;
    b2 += 2 * b3;
    b1 -= b3;
    b3 = 0;
  }
  if (before > low) add(out, before - 1, w0, d0, b0, before - 1 > low);
  add(out, before, w1, d1, b1, before > low);
  add(out, before + 1, w2, d2, b2, before + 1 < high);
  if (before + 1 < high) add(out, before + 2, w3, d3, b3, before + 2 < high);
}

/** Weights away from the ends: those of four nodes, each less KINK times the second difference there, in the order of `add`. */
function spread(out: Float64Array, a: number, b: number, c: number, d: number): void {
  const own = 1 + 2 * KINK;
  out[0] = 0 - KINK * a;
  out[1] = own * a - KINK * b;
  out[2] = own * b - KINK * a - KINK * c;
  out[3] = own * c - KINK * b - KINK * d;
  out[4] = own * d - KINK * c;
  out[5] = 0 - KINK * d;
}

/** Adds a node's weight and its derivatives, less KINK times the second difference there, unless it is an end. */
function add(
  { node: first, w, d, b }: LineWeights,
  node: number,
  weight: number,
  slope: number,
  bend: number,
  inner: boolean,
): void {
  const k = node - first;
  const own = inner ? 1 + 2 * KINK : 1;
  w[k] = w[k]! + own * weight;
  d[k] = d[k]! + own * slope;
  b[k] = b[k]! + own * bend;
  if (!inner) return;
  w[k - 1] = w[k - 1]! - KINK * weight;
  d[k - 1] = d[k - 1]! - KINK * slope;
  b[k - 1] = b[k - 1]! - KINK * bend;
  w[k + 1] = w[k + 1]! - KINK * weight;
  d[k + 1] = d[k + 1]! - KINK * slope;
  b[k + 1] = b[k + 1]! - KINK * bend;
}

/** Fraction of a line's natural length at which the weighted place of a node coordinate lies, on the stretch [low, high]. */
export function placeOf(fractions: Float64Array, xi: number, low: number, high: number): number {
  const weights = makeWeights();
  weights.xi = xi;
  return placeBy(weights, fractions, low, high);
}

function placeBy(weights: LineWeights, fractions: Float64Array, low: number, high: number): number {
  weighLine(weights, low, high);
  let place = 0;
  for (let k = 0; k < WEIGHTED_NODES; k++) {
    if (weights.w[k] !== 0) place += weights.w[k]! * fractions[weights.node + k]!;
  }
  return place;
}

/**
 * Node coordinate whose weighted place is this fraction of the line's natural length, on the stretch [first, last]; by default the whole
 * line. Beside an element of another length it is not the coordinate between the two nodes around the place: the curve's weights reach
 * over three.
 */
export function coordinateAt(
  fractions: Float64Array,
  fraction: number,
  first = 0,
  last = fractions.length - 1,
): number {
  const weights = makeWeights();
  let low = first;
  let high = last;
  for (let i = 0; i < 60; i++) {
    weights.xi = 0.5 * (low + high);
    if (placeBy(weights, fractions, first, last) < fraction) low = weights.xi;
    else high = weights.xi;
  }
  return 0.5 * (low + high);
}
