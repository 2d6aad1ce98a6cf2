/**
 * A checked rig in SI units (m, s, kg, N): what the rest of the program works with. The written document, with units in
 * its values, is in `document.ts`; nothing after the check looks back at it.
 * Positions along a webbing are in natural (unstretched) metres from anchor A's side.
 */
import type { Fact, Issue, Note } from "./fact.ts";
import type { RigFact } from "./rigFacts.ts";

/** Where a number comes from. Shown wherever the number is. */
export type BasisKind = "published" | "tested" | "common practice" | "from memory" | "assumed";
export interface Basis {
  readonly kind: BasisKind;
  /** Source, test log or reason. */
  readonly note: Note;
}

export type Fibre = "polyamide" | "polyester" | "hmpe" | "aramid";
export type KnotKind =
  | "figureEight"
  | "barrel"
  | "bowline"
  | "overhand"
  | "butterfly"
  | "doubleFisherman"
  | "waterKnot"
  | "unknown";

/** Rated strength of a part as new [N], with its basis. */
export interface Rated {
  readonly strength: number;
  readonly basis: Basis;
}

export type StockForm = "webbing" | "rope";

/** Mechanical make of a webbing or rope. */
export interface LineStock {
  readonly id: string;
  readonly name: string;
  readonly fibre: Fibre;
  /** Flat webbing or round rope: knots weaken them differently. Absent: nobody said, and the worse one counts. */
  readonly form?: StockForm;
  /** Mass per natural length [kg/m]. */
  readonly mass: number;
  /** Width (webbing) or diameter (rope) [m]. */
  readonly width: number;
  /** Slow-pull curve: strain [-], tension [N]; starts at (0, 0). */
  readonly curve: readonly (readonly [number, number])[];
  /** Maxwell branches: stiffness [N], relaxation time [s]. */
  readonly branches: readonly (readonly [number, number])[];
  readonly rated: Rated;
  /** Basis of curve and branches. */
  readonly basis: Basis;
}

/**
 * What its owner thinks of a part, beside what is known of its kind: a factor on its strength, and why. Without a factor it
 * is a doubt, and the cautious factor is taken.
 */
export interface OwnJudgement {
  /** Below 1 for a doubt; above 1 it raises the strength, and everything that rests on it says so [-]. */
  readonly factor?: number;
  readonly reason: Note;
}

/** Where a rig hangs, as far as the sun asks: below 30 degrees, from 30 to 50, above 50. */
export type Latitude = "low" | "middle" | "high";

/**
 * What has happened to a part; every entry takes strength away through a named factor. An absent entry is unknown, and counts
 * as the worst that it can be.
 */
export interface Condition {
  /** Months in the open [-]. */
  readonly monthsOutside?: number;
  /** Share of daylight that falls on it, 0 deep shade to 1 full sun [-]. */
  readonly sun?: number;
  /** Where it was outside; absent: nobody said, and the sunniest counts. Beside `monthsOutside` only. */
  readonly latitude?: Latitude;
  /** Sun taken, as months of full sun in an average month; from a wear record, and then used instead of months × sun [-]. */
  readonly sunMonths?: number;
  readonly ageYears?: number;
  /** Wet when loaded. */
  readonly wet?: boolean;
  /** What happened to it that no factor covers and nobody has judged since, in sentences; from a wear record. */
  readonly needsInspection?: readonly Fact[];
}

/**
 * A stretch of webbing with something that weakens it, in natural metres from the A end of the section it is in.
 * A clamp mark or stitching lies with its middle at `at`.
 */
export type Wear =
  | {
      readonly kind: "clampMark";
      readonly at: number;
      readonly length: number;
      readonly months: number;
      readonly load?: number;
    }
  | { readonly kind: "fallZone"; readonly from: number; readonly to: number; readonly falls: number }
  | { readonly kind: "stitching"; readonly at: number; readonly length: number }
  | { readonly kind: "abrasion"; readonly from: number; readonly to: number; readonly depth: number }
  | { readonly kind: "heat"; readonly from: number; readonly to: number; readonly depth: number }
  | { readonly kind: "cut"; readonly at: number; readonly depth: number };

export interface WebbingSection {
  readonly stock: LineStock;
  /** Natural length [m]; absent for the one section that takes up the rest of the line. */
  readonly length?: number;
  readonly condition: Condition;
  readonly wear: readonly Wear[];
  readonly own?: OwnJudgement;
}

/** How a line ends at an anchor. */
export interface LineEnd {
  readonly kind: "weblock" | "sewnLoop" | "knot";
  readonly knot?: KnotKind;
  readonly rated: Rated;
  /** Load above which a weblock lets webbing slip [N]. */
  readonly slipLoad?: number;
  /** Months the webbing has sat in this clamp. */
  readonly monthsClamped?: number;
  /** Diameter of what the webbing bends over, over its thickness; absent: nobody said, and the sharpest bend counts [-]. */
  readonly bend?: number;
  readonly condition?: Condition;
  /** Wear of the webbing behind the loaded span (in the weblock, in the loop, in the tail); places count from the span's end [m]. */
  readonly behind?: readonly Wear[];
  readonly own?: OwnJudgement;
}

export interface AnchorPart {
  readonly name: string;
  readonly kind: "bolt" | "sling" | "shackle" | "tree" | "other";
  readonly rated: Rated;
  /** How a sling is rigged when its rated strength is that of a straight pull; absent: nobody said, and it counts as choked. */
  readonly rigged?: "straight" | "choked" | "basket";
  /** Which line hangs on this part of the hardware; absent: both. */
  readonly carries?: "main" | "backup" | "both";
  /** Angle between the pull on a bolt and the bolt's axis [rad]: 0 straight out of the rock, π/2 across. */
  readonly pullAngle?: number;
  readonly condition: Condition;
  readonly own?: OwnJudgement;
}

export interface AnchorSide {
  /** Rock points (bolts, trees …) sharing the load through legs. */
  readonly points: readonly AnchorPart[];
  /** Sling, shackle and other parts in the load's way, each carrying the whole line load. */
  readonly hardware: readonly AnchorPart[];
  /** Angle between the outermost legs [rad]; 0 for one point. */
  readonly legAngle: number;
  /** Length of a leg [m]. */
  readonly legLength: number;
  /** Angle between the line at the anchor and the axes of its bolts [rad]; legs deviate from it by half of `legAngle` at most. */
  readonly axisAngle?: number;
  /** Stiffness of the whole anchor along the line [N/m]; absent: rigid. */
  readonly stiffness?: number;
}

export interface ConnectionPart {
  /** Fraction of natural length, 0 at A [-]. */
  readonly at: number;
  readonly kind: "connection" | "tape";
  readonly rated: Rated;
  readonly condition?: Condition;
  readonly own?: OwnJudgement;
}

export interface RigMain {
  readonly pretension: number;
  readonly sections: readonly WebbingSection[];
  readonly endA: LineEnd;
  readonly endB: LineEnd;
}
export interface RigBackup {
  /** Natural length over chord, minus 1 [-]. */
  readonly slack: number;
  readonly sections: readonly WebbingSection[];
  readonly endA: LineEnd;
  readonly endB: LineEnd;
  readonly connections: readonly ConnectionPart[];
}

export interface Rig {
  readonly version: 1;
  /** Short name by which wear records refer to this rig, whatever it is called. */
  readonly id?: string;
  readonly name: string;
  readonly notes: string;
  /** True for demo data: every number in it is made up. */
  readonly invented: boolean;
  readonly span: number;
  readonly rise: number;
  /** Where it hangs; the conditions of its parts have it too. Absent: nobody said. */
  readonly latitude?: Latitude;
  /** Paths, in the document, of values that nobody has confirmed; absent: there is none. */
  readonly unconfirmed?: readonly string[];
  /** Ground below the line, [x, z] from A to B, z relative to anchor A [m]. */
  readonly ground: readonly (readonly [number, number])[];
  readonly anchorA: AnchorSide;
  readonly anchorB: AnchorSide;
  readonly main: RigMain;
  readonly backup?: RigBackup;
  readonly rings: readonly {
    readonly name: string;
    readonly mass: number;
    readonly clearance: number;
    readonly friction: number;
    readonly rated: Rated;
    readonly condition?: Condition;
    readonly own?: OwnJudgement;
  }[];
  readonly leash: {
    readonly stock: LineStock;
    readonly length: number;
    /** Knots in the leash, from ring to harness. */
    readonly knots: readonly { readonly kind: KnotKind; readonly where: "ring" | "harness" | "middle" }[];
    readonly condition: Condition;
    /** Falls held so far [-]; absent: nobody knows. */
    readonly falls?: number;
    /** How far the sheath has slipped, over the leash's length [-]. */
    readonly sheathSlip?: number;
    /** Share of the section that heat has glazed [-]. */
    readonly glazed?: number;
    readonly own?: OwnJudgement;
  };
  readonly harness: { readonly rated: Rated; readonly condition?: Condition; readonly own?: OwnJudgement };
  readonly walker: {
    readonly mass: number;
    /** Of who comes to hang beside the walker in a rescue; absent: no rescue is asked about [kg]. */
    readonly rescuer?: number;
    /** Height of the tie-in above the line, standing [m]. */
    readonly tieIn: number;
    /** Sideways offset of the tie-in from the line, standing [m]. */
    readonly lateral: number;
    /** Where the walker stands first, as a fraction of the main line's natural length; absent: the middle [-]. */
    readonly at?: number;
  };
  /** Factor the user requires once something else has failed: the main line, or a leg [-]. */
  readonly requiredAfterFailure: number;
  /** How far the walker's feet must stay above the ground [m]. */
  readonly requiredClearance: number;
  /** Factor the user requires of every part in what is expected of a line in use: leash falls [-]. */
  readonly requiredFactor: { readonly value: number; readonly basis: Basis };
}

/** One fault in a document: path in the file, what was got, what was expected. */
export type RigIssue = Issue<RigFact>;
