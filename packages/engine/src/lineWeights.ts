/**
 * A smooth curve through a line's nodes: quadratic B-spline weights on the three nodes nearest to a continuous node
 * coordinate ξ. The ring acts on the line through them, so that it glides instead of cogging from node to node.
 * Near an end of the live stretch [low, high] the missing node is mirrored, which makes the curve end in the end node.
 */
export interface LineWeights {
  /** The coordinate that they are to be of. Kept here, for a number that is passed to a function ends up on the heap. */
  xi: number;
  /** First of three nodes; weights beyond the stretch are zero. */
  node: number;
  /** Weights of the three nodes [-]. */
  readonly w: Float64Array;
  /** Their derivatives by ξ [-]. */
  readonly d: Float64Array;
  /** Their second derivatives by ξ are this times 1, −2, 1 [-]. */
  bend: number;
}

export const makeWeights = (): LineWeights => ({
  xi: 0,
  node: 0,
  w: new Float64Array(3),
  d: new Float64Array(3),
  bend: 0,
});

/** Fills `out` for its coordinate ξ in [low, high]; high − low must be at least 2. */
export function weighLine(out: LineWeights, low: number, high: number): void {
  const { xi } = out;
  let centre = Math.round(xi);
  if (centre < low) centre = low;
  else if (centre > high) centre = high;
  const u = xi - centre;
  let w0 = 0.5 * (0.5 - u) * (0.5 - u);
  let w1 = 0.75 - u * u;
  let w2 = 0.5 * (0.5 + u) * (0.5 + u);
  let d0 = u - 0.5;
  let d1 = -2 * u;
  let d2 = u + 0.5;
  out.bend = centre === low || centre === high ? 0 : 1;
  if (centre === low) {
    // The node before the end is 2·end − next.
    const [w, d] = [w0, d0];
    w0 = w1 + 2 * w;
    w1 = w2 - w;
    w2 = 0;
    d0 = d1 + 2 * d;
    d1 = d2 - d;
    d2 = 0;
    out.node = centre;
  } else if (centre === high) {
    const [w, d] = [w2, d2];
    w2 = w1 + 2 * w;
    w1 = w0 - w;
    w0 = 0;
    d2 = d1 + 2 * d;
    d1 = d0 - d;
    d0 = 0;
    out.node = centre - 2;
  } else out.node = centre - 1;
  out.w[0] = w0;
  out.w[1] = w1;
  out.w[2] = w2;
  out.d[0] = d0;
  out.d[1] = d1;
  out.d[2] = d2;
}

/**
 * Node coordinate whose weighted place is this fraction of the line's natural length. Beside an element of another length it is not
 * the coordinate between the two nodes around the place: the curve's weights reach over three.
 */
export function coordinateAt(fractions: Float64Array, fraction: number): number {
  const weights = makeWeights();
  let low = 0;
  let high = fractions.length - 1;
  for (let i = 0; i < 60; i++) {
    weights.xi = 0.5 * (low + high);
    weighLine(weights, 0, fractions.length - 1);
    let place = 0;
    for (let k = 0; k < 3; k++) place += weights.w[k]! * fractions[weights.node + k]!;
    if (place < fraction) low = weights.xi;
    else high = weights.xi;
  }
  return 0.5 * (low + high);
}
