/**
 * Rock on both sides of the section: the section itself, exact in the plane of the line, carried sideways with a
 * meander, ledges and roughness that grow with the distance from the line.
 */
import type { Gap } from "./gap.ts";
import { noise, roughness, smoothstep } from "./noise.ts";

export interface TriangleMesh {
  readonly position: Float32Array;
  readonly normal: Float32Array;
  readonly index: Uint32Array;
}
export interface Terrain extends TriangleMesh {
  /** 1: stone, 0: lost in the haze at the rim of the drawn terrain; one per vertex [-]. */
  readonly presence: Float32Array;
  readonly rows: number;
  readonly columns: number;
  /** The row that lies in the plane of the line. */
  readonly middleRow: number;
}

export function terrainMesh(gap: Gap): Terrain {
  const section = resample(gap);
  const { rows, middleRow } = sideways(gap.span);
  const columns = section.x.length;
  const position = new Float32Array(rows.length * columns * 3);
  const presence = new Float32Array(rows.length * columns);
  const far = rows[rows.length - 1]!;
  const near = rows[0]!;
  for (let j = 0; j < rows.length; j++) {
    const y = rows[j]!;
    const rim = y < 0 ? 1 - smoothstep(0.45, 1, y / near) : 1 - smoothstep(0.4, 1, y / far);
    for (let i = 0; i < columns; i++) {
      const at = j * columns + i;
      place(gap, section, i, y, position, 3 * at);
      const outside = Math.max(-section.x[i]!, section.x[i]! - gap.span, 0);
      presence[at] = rim * (1 - smoothstep(0.25, 0.95, outside / Math.max(40, gap.span)));
    }
  }
  const index = gridIndex(rows.length, columns);
  return {
    position,
    normal: gridNormals(position, rows.length, columns),
    index,
    presence,
    rows: rows.length,
    columns,
    middleRow,
  };
}

interface Section {
  readonly x: Float64Array;
  readonly z: Float64Array;
  /** Share of the slope that is upright, signed by the side it faces [-]. */
  readonly steep: Float64Array;
}

/** Section points at about a metre, keeping every given point. */
function resample(gap: Gap): Section {
  const x: number[] = [];
  const z: number[] = [];
  for (let i = 1; i < gap.x.length; i++) {
    const dx = gap.x[i]! - gap.x[i - 1]!;
    const dz = gap.z[i]! - gap.z[i - 1]!;
    const outside = gap.x[i]! < 0 || gap.x[i - 1]! > gap.span;
    const pieces = Math.max(1, Math.round(Math.hypot(dx, dz) / (outside ? 3 : Math.max(1, gap.span / 70))));
    for (let k = i === 1 ? 0 : 1; k <= pieces; k++) {
      x.push(gap.x[i - 1]! + (dx * k) / pieces);
      z.push(gap.z[i - 1]! + (dz * k) / pieces);
    }
  }
  const steep = Float64Array.from(x, (_, i) => {
    const a = Math.max(i - 1, 0);
    const b = Math.min(i + 1, x.length - 1);
    const dz = z[b]! - z[a]!;
    return -dz / (Math.hypot(x[b]! - x[a]!, dz) || 1);
  });
  return { x: Float64Array.from(x), z: Float64Array.from(z), steep };
}

/** Rows across the line, dense near it; the near side is short, so that one looks into the gap as into a section. */
function sideways(span: number): { readonly rows: readonly number[]; readonly middleRow: number } {
  const near = 16 + 0.3 * span;
  const far = 40 + 1.1 * span;
  const rows: number[] = [];
  const nearRows = 16;
  const farRows = 40;
  for (let j = nearRows; j > 0; j--) rows.push(-near * (j / nearRows) ** 1.5);
  for (let j = 0; j <= farRows; j++) rows.push(far * (j / farRows) ** 1.5);
  return { rows, middleRow: nearRows };
}

function place(gap: Gap, section: Section, i: number, y: number, out: Float32Array, at: number): void {
  const x0 = section.x[i]!;
  const z0 = section.z[i]!;
  const steep = section.steep[i]!;
  const span = gap.span;
  const away = Math.abs(y);
  const free = smoothstep(1.2, 9, away);
  const wide = smoothstep(2, 30, away);
  const meander = 0.16 * span * (roughness(y / (0.8 * span) + 5.2, 0.3) - roughness(5.2, 0.3)) * wide;
  const opening = 1 + wide * 0.35 * (noise(y / (0.5 * span) + 2.6, 9.1) - noise(2.6, 9.1));
  const ledge = ledges(z0, y) * Math.abs(steep) * free;
  const inward = Math.sign(steep);
  out[at] = span / 2 + (x0 - span / 2) * opening + meander + inward * ledge;
  out[at + 1] = y + free * 0.8 * roughness(x0 / 5 + 8, z0 / 5);
  const flat = 1 - Math.abs(steep);
  const bumps = free * (0.35 + 0.65 * flat) * 1.5 * roughness(x0 / 8, y / 8);
  // The near side falls away and the far side climbs a little, so that the eye looks in and not into a wall.
  const tilt = y < 0 ? -0.16 * away * free : 0.05 * away * free * roughness(x0 / 30, y / 40 + 3);
  out[at + 2] = z0 + bumps + tilt;
}

/** Beds of rock: every few metres of height the face steps out and back [m]. */
function ledges(z: number, y: number): number {
  const bed = noise(z / 3.1, y / 60) + 0.5 * noise(z / 1.1 + 7, y / 14);
  return 1.7 * (bed - 0.75) + 1.2 * roughness(y / 7 + 3, z / 11);
}

function gridIndex(rows: number, columns: number): Uint32Array {
  const index = new Uint32Array((rows - 1) * (columns - 1) * 6);
  let k = 0;
  // Far rows first: the half transparent rim of the near side is drawn over the rows behind it.
  for (let j = rows - 2; j >= 0; j--) {
    for (let i = 0; i + 1 < columns; i++) {
      const a = j * columns + i;
      index.set([a, a + 1, a + columns + 1, a, a + columns + 1, a + columns], k);
      k += 6;
    }
  }
  return index;
}

function gridNormals(position: Float32Array, rows: number, columns: number): Float32Array {
  const normal = new Float32Array(position.length);
  const step = (j: number, i: number, dj: number, di: number, axis: number): number => {
    const j1 = Math.min(Math.max(j + dj, 0), rows - 1);
    const i1 = Math.min(Math.max(i + di, 0), columns - 1);
    return position[3 * (j1 * columns + i1) + axis]!;
  };
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const ux = step(j, i, 0, 1, 0) - step(j, i, 0, -1, 0);
      const uy = step(j, i, 0, 1, 1) - step(j, i, 0, -1, 1);
      const uz = step(j, i, 0, 1, 2) - step(j, i, 0, -1, 2);
      const vx = step(j, i, 1, 0, 0) - step(j, i, -1, 0, 0);
      const vy = step(j, i, 1, 0, 1) - step(j, i, -1, 0, 1);
      const vz = step(j, i, 1, 0, 2) - step(j, i, -1, 0, 2);
      const nx = uy * vz - uz * vy;
      const ny = uz * vx - ux * vz;
      const nz = ux * vy - uy * vx;
      const length = Math.hypot(nx, ny, nz) || 1;
      const at = 3 * (j * columns + i);
      normal[at] = nx / length;
      normal[at + 1] = ny / length;
      normal[at + 2] = nz / length;
    }
  }
  return normal;
}

/** A tree this far below both edges hides nothing from a person at an edge, because the tallest tree is lower [m]. */
const HIDING_DEPTH = 8;

/** Small conifers on the floor and the plateaus: a thing of known size, by which height is felt. x, y, z, height each [m]. */
export function treePlaces(gap: Gap, terrain: Terrain): Float32Array {
  const out: number[] = [];
  for (let j = 0; j < terrain.rows; j++) {
    for (let i = 2; i + 2 < terrain.columns; i++) {
      const at = j * terrain.columns + i;
      const [x, y, z] = [terrain.position[3 * at]!, terrain.position[3 * at + 1]!, terrain.position[3 * at + 2]!];
      const flat = terrain.normal[3 * at + 2]! > 0.8;
      const onPlateau = x < -9 || x > gap.span + 9;
      // Woods stand in groups, never under the line, and never between the eye and the gap: on the near side only down in it.
      const wood = noise(x / 16 + 40, y / 16);
      const isDeep = z < Math.min(gap.edgeA, gap.edgeB) - HIDING_DEPTH;
      const clear = y > 9 || (!onPlateau && isDeep && Math.abs(y) > 6 && y > -14);
      if (!flat || !clear || terrain.presence[at]! < 0.3 || noise(i * 7.31 + 0.5, j * 5.77 + 0.5) < 0.62 || wood < 0.52)
        continue;
      out.push(x, y, z - 0.1, 2.2 + 3.6 * noise(i * 3.1, j * 2.3));
    }
  }
  return Float32Array.from(out);
}
