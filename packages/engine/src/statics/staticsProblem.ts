/** A rig at rest as a statics problem: points, and what pulls on them. */
import type { TensionCurve } from "../line/tensionCurve.ts";

/** A tension-only element between two points. */
export interface Strut {
  readonly p: number;
  readonly q: number;
  readonly length: number;
  readonly curve: TensionCurve;
}
/** Holds a point to where it is given, along one direction [N/m]. */
export interface Spring {
  readonly point: number;
  readonly at: readonly [number, number, number];
  readonly direction: readonly [number, number, number];
  readonly stiffness: number;
}
/** The ring against a line: no force within the clearance, a stiff spring beyond. */
export interface Contact {
  readonly ring: number;
  /** Point of each of the line's nodes. */
  readonly points: readonly number[];
  xi: number;
  readonly slides: boolean;
  readonly clearance: number;
  readonly stiffness: number;
}
/** Points in an order that keeps coupled ones close. A fixed point keeps the position it starts with. */
export interface StaticsProblem {
  readonly positions: Float64Array;
  readonly fixed: readonly boolean[];
  /** Weight of every point, downward [N]. */
  readonly loads: Float64Array;
  readonly struts: readonly Strut[];
  readonly springs: readonly Spring[];
  readonly contacts: readonly Contact[];
}
export interface StaticsResult {
  readonly ok: boolean;
  readonly iterations: number;
  /** Largest unbalanced force [N], and the point that has it. */
  readonly residual: number;
  readonly worst: number;
}
