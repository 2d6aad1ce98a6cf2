/**
 * The problem file: what the engine is asked to solve. SI units throughout (m, s, kg, N).
 * x runs along the span from anchor A to anchor B, y sideways, z up. Fractions (`at`, `from`, `to`) are fractions of a
 * line's natural length, 0 at anchor A and 1 at anchor B.
 */

/** A point of the slow-pull curve: [strain [-], tension [N]]. */
export type CurvePoint = readonly [strain: number, tension: number];
/** A Maxwell branch: [stiffness E [N], relaxation time tau [s]]. */
export type Branch = readonly [stiffness: number, time: number];

/** The tension law of a line: slow-pull curve and Maxwell branches (Ferry 1980; Simo & Hughes 1998, ch. 10). */
export interface Material {
  /** Mass per natural length [kg/m]. */
  readonly mass: number;
  /** Slow-pull tension over engineering strain; starts at [0, 0]; two points make it linear. */
  readonly curve: readonly CurvePoint[];
  readonly branches: readonly Branch[];
}

/** A stretch of one material, up to the fraction `to` of the line's natural length. */
export interface Section {
  readonly to: number;
  readonly material: Material;
}

/** A stretch of a line that holds less than the rest of the line. */
export interface WeakZone {
  readonly from: number;
  readonly to: number;
  /** Tension above which an element in this zone parts [N]. */
  readonly strength: number;
}

/** What a line is made of: one material, or sections end to end (the last one ends at 1). */
export interface LineMake {
  readonly material?: Material;
  readonly sections?: readonly Section[];
  /** Tension above which an element parts [N]; absent: never parts. */
  readonly strength?: number;
  readonly weakZones?: readonly WeakZone[];
  /** Width seen by the wind, for drag [m]. */
  readonly width?: number;
  readonly dragCoefficient?: number;
}

/** The line that is walked on. */
export interface MainLine extends LineMake {
  /** Slow-pull tension of the straight, weightless line between the anchors [N]. */
  readonly pretension: number;
  /** Constant-force slip of the weblock at an end, above this load [N]. */
  readonly slip?: { readonly A?: number; readonly B?: number };
}

/** Pins the main line's material point to the backup's at the same fraction. */
export interface Connection {
  readonly at: number;
  /** Force above which it parts [N]; absent: never parts. */
  readonly strength?: number;
}

/** The slack line under the main line, which catches when that fails. */
export interface BackupLine extends LineMake {
  /** Natural length is chord × (1 + slack) [-]. */
  readonly slack: number;
  readonly connections?: readonly Connection[];
  /** Weak connections that carry the slack backup. */
  readonly tapes?: readonly Connection[];
}

/** One leg of an anchor: a tension-only strut from the rock point to the master point. */
export interface AnchorLeg {
  /** Rock point relative to the master point at rest [m, m, m]. */
  readonly rock: readonly [x: number, y: number, z: number];
  /** Stiffness of the leg, tension over elongation [N/m]. */
  readonly stiffness: number;
  /** Tension above which the leg parts [N]. */
  readonly strength?: number;
}

/** An anchor is fixed unless given a stiffness along the line's direction at rest, or legs. */
export interface Anchor {
  readonly stiffness?: number;
  readonly legs?: readonly AnchorLeg[];
  /** Mass of the master point, with legs only [kg]. */
  readonly mass?: number;
}

/** A whole rig and what happens to it: the input of a run. SI; `readProblem` checks one. */
export interface Problem {
  readonly name: string;
  readonly span: number;
  /** Height of B above A [m]. */
  readonly rise: number;
  readonly main: MainLine;
  readonly backup?: BackupLine;
  readonly leash: {
    readonly length: number;
    readonly material: Material;
    /** Tension above which the leash parts [N]. */
    readonly strength?: number;
  };
  readonly ring: {
    readonly mass: number;
    /** Largest distance of the ring from each line [m]. */
    readonly clearance: number;
    /** Coulomb friction along the line [-]. */
    readonly friction: number;
    /** Pull of the leash above which the ring parts [N]. */
    readonly strength?: number;
  };
  readonly walker: {
    readonly mass: number;
    readonly at: number;
    /** Height of the tie-in above the line's point, standing [m]. */
    readonly tieIn: number;
    /** Sideways offset of the tie-in, standing [m]. */
    readonly lateral: number;
    /** Drag area C_d·A [m²]. */
    readonly dragArea?: number;
  };
  readonly start: "standing" | "hanging";
  /** Time over which the foot force falls to zero, standing [s]. */
  readonly letGo?: number;
  /**
   * How much further down than they stand the feet reach [m]: a line that falls away from under them leaves them there, and they push
   * it no more. Absent: they push for all of `letGo`, however far the line has gone.
   */
  readonly feetReach?: number;
  /** The main line severed at a fraction, at a time. */
  readonly cut?: { readonly at: number; readonly time: number };
  /** Anchors of both lines at either end. */
  readonly anchors?: { readonly A?: Anchor; readonly B?: Anchor };
  /** A leg of an anchor that fails at a time. */
  readonly legFailure?: { readonly anchor: "A" | "B"; readonly leg: number; readonly time: number };
  /** Air density for drag [kg/m³]; absent: no drag. */
  readonly airDensity?: number;
  /** Ground profile below the line: [x, z] from A to B [m]; absent: no ground. */
  readonly ground?: readonly (readonly [x: number, z: number])[];
  readonly duration: number;
}
