/**
 * A line as a flat ribbon: four vertices per element, so that a parted element can vanish and leave two ends. The width
 * is given in the vertex shader; here are the middle, the direction and the tension.
 */
export interface Ribbon {
  readonly elements: number;
  /** Middle of the ribbon at every vertex [m]. */
  readonly position: Float32Array;
  /** Direction along the line at every vertex, unit. */
  readonly tangent: Float32Array;
  /** Tension; below zero: parted [N]. */
  readonly tension: Float32Array;
  /** Side (−1, 1) and natural length from the A end [m]; fixed. */
  readonly place: Float32Array;
  readonly index: Uint32Array;
}

/** A ribbon for a line of `nodes` nodes; `fractions` are the nodes' places from `offset` on. */
export function createRibbon(nodes: number, fractions: Float32Array, offset: number, naturalLength: number): Ribbon {
  const elements = Math.max(nodes - 1, 0);
  const place = new Float32Array(elements * 8);
  const index = new Uint32Array(elements * 6);
  for (let e = 0; e < elements; e++) {
    const from = (fractions[offset + e] ?? 0) * naturalLength;
    const to = (fractions[offset + e + 1] ?? 0) * naturalLength;
    place.set([-1, from, 1, from, -1, to, 1, to], 8 * e);
    const v = 4 * e;
    index.set([v, v + 1, v + 3, v, v + 3, v + 2], 6 * e);
  }
  return {
    elements,
    position: new Float32Array(elements * 12),
    tangent: new Float32Array(elements * 12),
    tension: new Float32Array(elements * 4),
    place,
    index,
  };
}

/** Fills the ribbon from node positions (from `node` on, xyz) and element tensions (from `element` on). */
export function fillRibbon(
  ribbon: Ribbon,
  nodes: Float32Array,
  node: number,
  tensions: Float32Array,
  element: number,
): void {
  const { elements } = ribbon;
  for (let e = 0; e < elements; e++) {
    const here = tensions[element + e]!;
    const parted = Number.isNaN(here);
    const joinsBefore = e > 0 && !Number.isNaN(tensions[element + e - 1]!);
    const joinsAfter = e + 1 < elements && !Number.isNaN(tensions[element + e + 1]!);
    const a = node + e;
    writeEnd(ribbon, 4 * e, nodes, a, joinsBefore ? a - 1 : a, a + 1);
    writeEnd(ribbon, 4 * e + 2, nodes, parted ? a : a + 1, a, joinsAfter ? a + 2 : a + 1);
    const before = joinsBefore ? tensions[element + e - 1]! : here;
    const after = joinsAfter ? tensions[element + e + 1]! : here;
    const v = 4 * e;
    ribbon.tension[v] = parted ? -1 : 0.5 * (before + here);
    ribbon.tension[v + 1] = ribbon.tension[v]!;
    ribbon.tension[v + 2] = parted ? -1 : 0.5 * (after + here);
    ribbon.tension[v + 3] = ribbon.tension[v + 2]!;
  }
}

function writeEnd(ribbon: Ribbon, vertex: number, nodes: Float32Array, at: number, from: number, to: number): void {
  let tx = nodes[3 * to]! - nodes[3 * from]!;
  let ty = nodes[3 * to + 1]! - nodes[3 * from + 1]!;
  let tz = nodes[3 * to + 2]! - nodes[3 * from + 2]!;
  const length = Math.sqrt(tx * tx + ty * ty + tz * tz);
  if (length > 1e-9) {
    tx /= length;
    ty /= length;
    tz /= length;
  } else {
    tx = 1;
    ty = 0;
    tz = 0;
  }
  for (let k = 0; k < 2; k++) {
    const o = 3 * (vertex + k);
    ribbon.position[o] = nodes[3 * at]!;
    ribbon.position[o + 1] = nodes[3 * at + 1]!;
    ribbon.position[o + 2] = nodes[3 * at + 2]!;
    ribbon.tangent[o] = tx;
    ribbon.tangent[o + 1] = ty;
    ribbon.tangent[o + 2] = tz;
  }
}
