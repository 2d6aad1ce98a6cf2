/** Gathers, over all what-ifs, what every part had to carry against what it holds. */
import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { type PartStrength, type StrengthZone, weakestFirst } from "@secondline/strength";
import { partLoads, webbingLoads } from "./loads.ts";
import type { PartOutcome, Verdict, WhatIfOutcome } from "./outcome.ts";
import type { RigStrengths } from "./rigStrengths.ts";

/** The worst that happened to a part so far. */
interface Worst {
  readonly load: number;
  readonly strength: number;
  readonly strength5: number;
  readonly whatIf: number;
  /** For webbing: where. */
  readonly at?: number;
  readonly zone?: StrengthZone;
}

/** First break of a what-if: that part caused what came after. */
interface Break {
  readonly whatIf: number;
  readonly time: number;
  readonly first: boolean;
}

export class Margins {
  readonly #rig: Rig;
  readonly #strengths: RigStrengths;
  readonly #worst = new Map<string, Worst>();
  /** Least 5 % strength over load at any place of a part [-]. */
  readonly #least5 = new Map<string, number>();
  readonly #broken = new Map<string, Break>();
  readonly #anchors = { A: 0, B: 0 };

  constructor(rig: Rig, strengths: RigStrengths) {
    this.#rig = rig;
    this.#strengths = strengths;
  }

  /** Takes in one run. */
  add(whatIf: number, outcome: WhatIfOutcome, recording: Recording): void {
    const loads = partLoads(this.#rig, recording);
    for (const end of ["A", "B"] as const) {
      this.#anchors[end] = Math.max(this.#anchors[end], loads.get(`anchor${end}`)!);
    }
    for (const part of this.#strengths.parts) {
      const load = loads.get(part.id);
      if (load !== undefined) this.#note(part.id, { load, strength: part.strength, strength5: part.strength5, whatIf });
      else if (part.zones) this.#addWebbing(part, whatIf, recording);
    }
    outcome.broke.forEach((one, i) => {
      const known = this.#broken.get(one.part);
      if (!known || (i === 0 && !known.first)) this.#broken.set(one.part, { whatIf, time: one.time, first: i === 0 });
    });
  }

  #addWebbing(part: PartStrength, whatIf: number, recording: Recording): void {
    const line = part.id === "backup" ? "backup" : "main";
    const length = line === "main" ? this.#strengths.mainLength : this.#strengths.backupLength;
    for (const { at, load, zone } of webbingLoads(recording.elementPeaks[line], part.zones!, length)) {
      this.#note(part.id, { load, strength: zone.strength, strength5: zone.strength5, whatIf, at, zone });
    }
  }

  #note(id: string, found: Worst): void {
    const known = this.#worst.get(id);
    if (!known || found.load * known.strength > known.load * found.strength) this.#worst.set(id, found);
    const least5 = found.strength5 / found.load;
    if (!(this.#least5.get(id)! <= least5)) this.#least5.set(id, least5);
  }

  /**
   * Every part but the tapes, which are made to part, in the order of the load's way. `allowance`: to hold, a part must hold
   * so many times more than otherwise, at least 1 [-]; `uncertainty`: ± of loads, when asked for [N].
   */
  parts(required: number, allowance: number, uncertainty?: ReadonlyMap<string, number>): readonly PartOutcome[] {
    const tapes = tapeIds(this.#rig);
    return this.#strengths.parts.flatMap((part) => {
      const worst = this.#worst.get(part.id);
      return worst && !tapes.has(part.id) ? [this.#estimated(part, worst, required, allowance, uncertainty)] : [];
    });
  }

  /** A part whose load has no ± though one was asked for is thin at best. */
  #estimated(
    part: PartStrength,
    worst: Worst,
    required: number,
    allowance: number,
    uncertainty?: ReadonlyMap<string, number>,
  ): PartOutcome {
    const outcome = this.#outcome(part, worst, required, allowance, uncertainty?.get(part.id));
    if (!uncertainty || uncertainty.has(part.id)) return outcome;
    return { ...outcome, uncertaintyUnknown: true, verdict: outcome.verdict === "holds" ? "thin" : outcome.verdict };
  }

  #outcome(
    part: PartStrength,
    worst: Worst,
    required: number,
    allowance: number,
    uncertainty: number | undefined,
  ): PartOutcome {
    const broken = this.#broken.get(part.id);
    const { zone } = worst;
    const factors = zone?.factors ?? part.factors;
    // What gave way has carried at least its strength; a filtered peak of it reads less.
    const load = broken ? Math.max(worst.load, worst.strength) : worst.load;
    const margin = worst.strength / load;
    // Where the central strength leaves least, a weak specimen need not: the least of all places is judged and shown.
    const margin5 = Math.min(worst.strength5 / load, this.#least5.get(part.id)!);
    const sure = load / (load + (uncertainty ?? 0));
    return {
      id: part.id,
      name: part.name,
      load,
      ...(uncertainty === undefined ? {} : { loadUncertainty: uncertainty }),
      whatIf: broken?.whatIf ?? worst.whatIf,
      rated: zone?.rated ?? part.rated,
      strength: worst.strength,
      strength5: worst.strength5,
      margin,
      margin5,
      // A load known to within ± is judged at its upper end.
      verdict: verdictOf(margin * sure, margin5 * sure, required, broken !== undefined, allowance),
      parts: broken !== undefined,
      factors: factors.map(({ name, value, spread, basis }) => ({ name, value, spread, basis })),
      bases: zone ? weakestFirst([zone.ratedBasis, ...factors.map((one) => one.basis)]) : part.bases,
      ...(zone && worst.at !== undefined ? { weakest: { at: worst.at, reason: zone.reason } } : {}),
      ...(!zone && part.weakest ? { weakest: part.weakest } : {}),
      ...(part.flags.length > 0 ? { flags: part.flags } : {}),
    };
  }

  /** Every part but the tapes with its largest load; of webbing, as it is where that governs. */
  governing(): readonly { readonly part: PartStrength; readonly load: number }[] {
    const tapes = tapeIds(this.#rig);
    return this.#strengths.parts.flatMap((part) => {
      const worst = this.#worst.get(part.id);
      if (!worst || tapes.has(part.id)) return [];
      const { zone } = worst;
      // As in `#outcome`: what gave way has carried its strength.
      const load = this.#broken.has(part.id) ? Math.max(worst.load, worst.strength) : worst.load;
      return [{ part: zone ? { ...part, factors: zone.factors, strength: zone.strength } : part, load }];
    });
  }

  /** Largest load of either anchor as a whole [N]. */
  get anchorLoads(): Readonly<Record<"A" | "B", number>> {
    return this.#anchors;
  }

  /** Whether a part gave way before any other in some run. */
  gaveWayFirst(id: string): boolean {
    return this.#broken.get(id)?.first === true;
  }
}

/** Tapes are made to part: they are no part of a verdict, and nobody asks how likely they fail. */
export const tapeIds = (rig: Rig): ReadonlySet<string> =>
  new Set((rig.backup?.connections ?? []).flatMap((one, i) => (one.kind === "tape" ? [`connection.${i}`] : [])));

/**
 * Fails: gave way, or holds less than the load. Thin: less than required, or a weak specimen would not hold. `allowance`: to
 * hold, both must hold so many times more, for what the margins leave open [-].
 */
export function verdictOf(margin: number, margin5: number, required: number, broken: boolean, allowance = 1): Verdict {
  if (broken || margin < 1) return "fails";
  return margin < allowance * required || margin5 < allowance ? "thin" : "holds";
}

/** The margin that the verdict is for: at the upper end of the load's ± [-]. */
export function judgedMargin({ margin, load, loadUncertainty = 0 }: PartOutcome): number {
  return margin * (load / (load + loadUncertainty));
}

/** The part with the least margin; among equals (all that gave way) one that gave way before the others. */
export function firstToFail(parts: readonly PartOutcome[], gaveWayFirst: (id: string) => boolean): PartOutcome {
  const rank = (part: PartOutcome) => (gaveWayFirst(part.id) ? 0 : 1);
  const [first] = [...parts].sort(
    (a, b) => judgedMargin(a) - judgedMargin(b) || rank(a) - rank(b) || a.whatIf - b.whatIf,
  );
  if (!first) throw new Error("A rig without parts has none that fails first.");
  return first;
}
