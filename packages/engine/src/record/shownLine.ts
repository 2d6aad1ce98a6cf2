/** A line for the eye: the nodes and elements of the mesh that a run began on, wherever the present mesh has them. */
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";

/** Where the nodes and elements of the first mesh lie on a later one. */
interface Places {
  /** Per node of the first mesh: the node of the later one before it, and how far it lies on the way to the next one [-]. */
  readonly node: Int32Array;
  readonly share: Float64Array;
  /** Per element of the first mesh: the element of the later one in which its middle lies. */
  readonly element: Int32Array;
}

export class ShownLine {
  readonly first: Line;
  #line: Line;
  #m: Float64Array;
  #places: Places | undefined;

  constructor(line: Line, memory: Float64Array) {
    this.first = line;
    this.#line = line;
    this.#m = memory;
  }

  /** Goes on with the same line on another mesh. */
  goOn(line: Line, memory: Float64Array): void {
    this.#line = line;
    this.#m = memory;
    this.#places = placesOn(this.first, line);
  }

  /** Writes the nodes' positions, xyz each, from place `o` on; returns the place after them. */
  positions(out: Float32Array, o: number): number {
    const m = this.#m;
    const { base, pitch, nodes } = this.#line;
    const Y = (base + pitch) | 0;
    const Z = (Y + pitch) | 0;
    let at = o | 0;
    if (this.#places) return this.#between(this.#places, out, at);
    for (let i = 0; i < nodes; i++, at = (at + 3) | 0) {
      out[at] = m[(base + i) | 0]!;
      out[(at + 1) | 0] = m[(Y + i) | 0]!;
      out[(at + 2) | 0] = m[(Z + i) | 0]!;
    }
    return at;
  }

  #between({ node, share }: Places, out: Float32Array, o: number): number {
    const m = this.#m;
    const { base, pitch } = this.#line;
    let at = o;
    for (let j = 0; j < node.length; j++) {
      const n = node[j]!;
      // What has parted has nothing between its ends.
      const whole = m[base + COLUMN.IL * pitch + n] !== 0;
      const way = whole ? share[j]! : Math.round(share[j]!);
      for (let X = base + n, c = 0; c < 3; c++, X += pitch) {
        out[at++] = way === 0 ? m[X]! : m[X]! + way * (m[X + 1]! - m[X]!);
      }
    }
    return at;
  }

  /** Writes the elements' tensions from place `o` on, NaN where one has parted; returns the place after them. */
  tensions(out: Float32Array, o: number): number {
    const m = this.#m;
    const { base, pitch, elements } = this.#line;
    const T = base + COLUMN.T * pitch;
    const IL = base + COLUMN.IL * pitch;
    const element = this.#places?.element;
    const count = element?.length ?? elements;
    for (let k = 0; k < count; k++) {
      const e = element ? element[k]! : k;
      out[(o + k) | 0] = m[(IL + e) | 0] === 0 ? Number.NaN : Math.max(0, m[(T + e) | 0]!);
    }
    return o + count;
  }
}

function placesOn(first: Line, later: Line): Places {
  const node = new Int32Array(first.nodes);
  const share = new Float64Array(first.nodes);
  const { fractions } = later;
  for (let n = 0, j = 0; j < first.nodes; j++) {
    const at = first.fractions[j]!;
    // Both nodes of the seam are at one place: what comes before it on the first mesh stays before it.
    const last = first.seam >= 0 && j <= first.seam ? later.seam : later.nodes - 1;
    if (first.seam >= 0 && j === first.seam + 1) n = later.seam + 1;
    while (n + 1 < last && fractions[n + 1]! <= at) n++;
    node[j] = n;
    share[j] = Math.min(Math.max((at - fractions[n]!) / (fractions[n + 1]! - fractions[n]!), 0), 1);
  }
  const element = new Int32Array(first.elements);
  for (let n = 0, e = 0; e < first.elements; e++) {
    const middle = 0.5 * (first.fractions[e]! + first.fractions[e + 1]!);
    while (n + 2 < later.nodes && fractions[n + 1]! <= middle) n++;
    element[e] = e === first.seam ? later.seam : n;
  }
  return { node, share, element };
}
