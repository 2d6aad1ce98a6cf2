/** The samples of one webbing: every mark on it, stretches of every fall zone, and stretches with sun alone. */
import type { AnchorName, LineEnd, LineStock, WebbingSection } from "@secondline/rig";
import type { WrittenTest } from "../breakLog/readEntry.ts";
import { constant } from "../derating/constantValues.ts";
import { fallZones } from "../wear/fallZones.ts";
import { endPosition } from "../wear/placement.ts";
import type { WearMark, WebbingState } from "../wear/webbingState.ts";
import {
  alike,
  centimetres,
  FREE_LENGTH,
  formOf,
  GRIP_LENGTH,
  type NotToBeHad,
  type OtherWear,
  type Sample,
  type SampleKind,
  sampleLength,
  written,
  writtenFalls,
  writtenSun,
} from "./sample.ts";

/** A webbing that hangs in the rig, with its line and section. */
export interface HungWebbing {
  readonly state: WebbingState;
  readonly section: WebbingSection;
  /** How it ends, where it ends at an anchor. */
  readonly ends: Readonly<Partial<Record<AnchorName, LineEnd>>>;
  /** Sides at which another section is joined to it. */
  readonly joined: readonly AnchorName[];
}

export interface FoundSamples {
  readonly samples: readonly Sample[];
  readonly cannot: readonly NotToBeHad[];
}

/** A mark that has to lie between the grips. */
interface Spot {
  readonly kind: SampleKind;
  readonly from: number;
  readonly to: number;
  readonly months: number;
  /** Cut here instead, where one end needs no grip. */
  readonly window?: Extent;
  readonly end?: LineEnd;
}
interface Extent {
  readonly from: number;
  readonly to: number;
}

const overlap = (a: Extent, b: Extent): boolean => a.from < b.to - 1e-9 && b.from < a.to - 1e-9;
const inside = (a: Extent, b: Extent): boolean => a.from >= b.from - 1e-9 && a.to <= b.to + 1e-9;
const middleOf = ({ from, to }: Extent): number => (from + to) / 2;
/** The part of a piece between its grips. */
const freeOf = ({ from, to }: Extent): Extent => ({ from: from + GRIP_LENGTH, to: to - GRIP_LENGTH });

/** `taken`: stretches that joins have been given already. */
export function webbingSamples(hung: HungWebbing, taken: readonly Extent[] = []): FoundSamples {
  const spots = spotsOf(hung);
  const cannot: NotToBeHad[] = [];
  const samples: Sample[] = [];
  const used: Extent[] = [...taken];
  // A seam within a join's piece is the join.
  const shown = new Set(spots.filter((spot) => taken.some((one) => inside(spot, one))));
  for (const spot of spots) {
    if (shown.has(spot)) continue;
    const piece = spot.window ?? windowOf(spotsTogether(spot, spots), hung.state);
    const why = piece === undefined ? "nearEnd" : used.some((one) => overlap(one, piece)) ? "tooNear" : undefined;
    if (why !== undefined) {
      cannot.push({ ...placeOf(hung, spot.kind), from: spot.from, to: spot.to, why });
      continue;
    }
    used.push(piece!);
    const between = spot.window ?? freeOf(piece!);
    for (const other of spots) if (inside(other, between)) shown.add(other);
    samples.push(spotSample(hung, spot, piece!, spots));
  }
  const stretches = stretchSamples(hung, used, spots);
  return { samples: [...samples, ...stretches.samples], cannot: [...cannot, ...stretches.cannot] };
}

const placeOf = ({ state }: HungWebbing, kind: SampleKind) => ({
  kind,
  part: state.placement!.line,
  webbing: state.id,
});

/** Marks that must lie between the grips, each with the kind of its piece; a fall zone is a stretch. */
const SAMPLE_OF_MARK: Readonly<Record<WearMark["kind"], SampleKind | undefined>> = {
  clampMark: "clampMark",
  stitching: "sewnJoin",
  fallZone: undefined,
  abrasion: "damage",
  heat: "damage",
  cut: "damage",
};

/** The worst first: a piece goes to the longest clamped of two marks that are too near to each other. */
function spotsOf(hung: HungWebbing): Spot[] {
  const { state, ends } = hung;
  const marks = state.marks.flatMap((mark): Spot[] => {
    const kind = SAMPLE_OF_MARK[mark.kind];
    if (kind === undefined) return [];
    const extent = { from: Math.max(mark.from, state.from), to: Math.min(mark.to, state.to) };
    return [{ kind, ...extent, months: mark.kind === "clampMark" ? mark.months : state.monthsOutside }];
  });
  const atEnds = (["A", "B"] as const).flatMap((side) => {
    const end = ends[side];
    return end === undefined || end.kind === "weblock" ? [] : [endSpot(state, side, end)];
  });
  const rank = ({ kind }: Spot) => ["sewnLoop", "knot", "clampMark", "sewnJoin", "damage"].indexOf(kind);
  return [...atEnds, ...marks].sort((a, b) => rank(a) - rank(b) || b.months - a.months || a.from - b.from);
}

/** A loop or knot hangs on a pin by itself: one grip only, inside the span. */
function endSpot(state: WebbingState, side: AnchorName, end: LineEnd): Spot {
  const at = endPosition(state.placement!, side);
  const inwards = state.placement!.markedEnd === side ? 1 : -1;
  const behind = constant(end.kind === "knot" ? "place.knotBehind" : "place.loopBehind");
  const outer = Math.min(state.to, Math.max(state.from, at - inwards * behind));
  const seam = at + inwards * constant("place.knotInside");
  const inner = Math.min(state.to, Math.max(state.from, seam + inwards * (FREE_LENGTH + GRIP_LENGTH)));
  const extent = (a: number, b: number): Extent => ({ from: Math.min(a, b), to: Math.max(a, b) });
  return {
    kind: end.kind === "knot" ? "knot" : "sewnLoop",
    ...extent(outer, seam),
    months: state.monthsOutside,
    window: extent(outer, inner),
    end,
  };
}

/** A spot and those beside it that fit between the same grips, such as marks that re-tensioning has moved by a hand's width. */
function spotsTogether(spot: Spot, spots: readonly Spot[]): Extent {
  return spots
    .filter((one) => one.window === undefined)
    .sort((a, b) => Math.abs(middleOf(a) - middleOf(spot)) - Math.abs(middleOf(b) - middleOf(spot)))
    .reduce<Extent>(
      (hull, one) => {
        const wider = { from: Math.min(hull.from, one.from), to: Math.max(hull.to, one.to) };
        return wider.to - wider.from <= FREE_LENGTH + 1e-9 ? wider : hull;
      },
      { from: spot.from, to: spot.to },
    );
}

/** A piece about a spot, moved along where the webbing ends; undefined where no grip has room. */
function windowOf(spot: Extent, webbing: Extent): Extent | undefined {
  const length = sampleLength(spot.to - spot.from);
  const slack = (length - 2 * GRIP_LENGTH - (spot.to - spot.from)) / 2;
  const centred = middleOf(spot) - length / 2;
  const from = Math.max(webbing.from, Math.min(webbing.to - length, centred));
  if (Math.abs(from - centred) > slack + 1e-9 || from < webbing.from - 1e-9) return undefined;
  return { from, to: from + length };
}

function spotSample(hung: HungWebbing, spot: Spot, piece: Extent, spots: readonly Spot[]): Sample {
  const between = spot.window ?? freeOf(piece);
  const free = { from: Math.max(between.from, piece.from), to: Math.min(between.to, piece.to) };
  const near = spots.filter((one) => one !== spot && overlap(one, piece));
  const shown = [spot, ...near.filter((one) => overlap(one, free))];
  const falls = fallsIn(hung.state.marks, { from: spot.from, to: spot.to });
  const others = [...near.map(otherOf), ...partialFalls(hung.state.marks, piece, falls)];
  return makeSample(hung, { kind: spot.kind, piece, shown, falls, others, ...(spot.end ? { end: spot.end } : {}) });
}

const otherOf = ({ kind, from, to }: Spot): OtherWear => ({
  kind: kind === "clampMark" ? "clampMark" : kind === "damage" ? "damage" : "stitching",
  from,
  to,
});

/** Most falls at a place of a stretch. */
function fallsIn(marks: readonly WearMark[], stretch: Extent): number {
  return fallZones(marks).reduce((most, zone) => (overlap(zone, stretch) ? Math.max(most, zone.falls) : most), 0);
}

/** Fall zones that reach into a piece with more falls than it is to show. */
function partialFalls(marks: readonly WearMark[], piece: Extent, falls: number): OtherWear[] {
  return fallZones(marks)
    .filter((zone) => overlap(zone, piece) && zone.falls > falls + 1e-9)
    .map(({ from, to }) => ({ kind: "fallZone", from, to }));
}

interface Made {
  readonly kind: SampleKind;
  readonly piece: Extent;
  readonly shown: readonly Spot[];
  readonly falls: number;
  readonly others: readonly OtherWear[];
  readonly end?: LineEnd;
}

function makeSample(hung: HungWebbing, { kind, piece, shown, falls, others, end }: Made): Sample {
  const { state, section } = hung;
  const { stock } = section;
  const clamped = clampedMonths(shown);
  const sewn = kind === "sewnLoop" || shown.some((one) => one.kind === "sewnJoin");
  const damaged = shown.some((one) => one.kind === "damage");
  const words = [
    ...(kind === "sewnLoop" ? ["used"] : []),
    ...(kind === "knot" ? ["knotted end"] : []),
    ...(falls > 0 ? ["fall zone"] : []),
    ...(clamped > 0 ? ["clamp mark"] : []),
    ...(shown.some((one) => one.kind === "sewnJoin") ? ["sewn join"] : []),
    ...(damaged ? ["damaged place"] : []),
  ];
  const from = Math.max(state.from, centimetres(piece.from));
  const to = Math.min(state.to, centimetres(piece.to));
  const row: WrittenTest = {
    part: kind === "sewnLoop" ? "sewn loop" : formOf(stock),
    material: stock.id,
    batch: state.id,
    state: words.length === 0 ? "sun only" : words.join(", "),
    wet: "dry",
    taken_from: `${from} to ${to} m from the marked end`,
    months_outside: written(state.monthsOutside),
    sun_months: writtenSun(state),
    falls: writtenFalls(falls),
    clamped_months: clamped > 0 ? written(clamped) : "",
    sewn_months: sewn ? written(state.monthsOutside) : "",
    knot: kind === "knot" ? (end?.knot ?? "unknown") : "",
    unit: "kN",
  };
  return {
    kind,
    state: [
      stock.id,
      stock.name,
      kind,
      alike(state.sunMonths),
      alike(falls),
      alike(clamped),
      sewn,
      damaged,
      row.knot,
    ].join("|"),
    part: state.placement!.line,
    stock,
    cuts: [{ webbing: state.id, from, to }],
    length: centimetres(to - from),
    others,
    row,
  };
}

/** Longest time in a clamp at one place: where marks lie one over the other their months add. */
function clampedMonths(shown: readonly Spot[]): number {
  const clamps = shown.filter(({ kind }) => kind === "clampMark");
  const at = (place: number) =>
    clamps.reduce((sum, one) => (one.from < place && one.to > place ? sum + one.months : sum), 0);
  const borders = [...new Set(clamps.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return Math.max(0, ...borders.slice(1).map((to, i) => at((borders[i]! + to) / 2)));
}

/** A stretch of webbing with one number of falls and nothing else. */
interface Cell extends Extent {
  readonly falls: number;
  readonly loaded: boolean;
}

/** Pieces side by side in every stretch that is long enough, from the middle outwards; in loaded webbing where there is some. */
function stretchSamples(hung: HungWebbing, used: readonly Extent[], spots: readonly Spot[]): FoundSamples {
  const { state } = hung;
  const free = stretchesWithout([{ from: state.from, to: state.to }], [...used, ...spots]);
  const zones = fallZones(state.marks);
  const { from, to } = state.placement!;
  const borders = [...zones.flatMap((zone) => [zone.from, zone.to]), from, to];
  const samples: Sample[] = [];
  const cannot: NotToBeHad[] = [];
  // Stretches with the most falls come first: a short stretch takes length from its neighbours, and sun alone has the most
  // room.
  const numbers = [...new Set([0, ...zones.map((zone) => zone.falls)])].sort((a, b) => b - a);
  for (const falls of numbers) {
    const kind = falls > 0 ? "fallZone" : "sunOnly";
    const left = stretchesWithout(free, samplesAt(samples));
    const cells = left.flatMap((stretch) => cellsOf(stretch, borders, zones, { from, to }));
    const slots = slotsOf(cells.filter((cell) => cell.falls === falls));
    for (const piece of slots) samples.push(makeSample(hung, { kind, piece, shown: [], falls, others: [] }));
    if (slots.length > 0) continue;
    const mixed = falls > 0 ? mixedPiece(zones, falls, left) : undefined;
    if (mixed === undefined) cannot.push({ ...placeOf(hung, kind), ...zoneOf(zones, falls), why: "noRoom" });
    else {
      const others = zones
        .filter((zone) => zone.falls !== falls && overlap(zone, mixed))
        .map((zone): OtherWear => ({ kind: "fallZone", from: zone.from, to: zone.to }));
      samples.push(makeSample(hung, { kind, piece: mixed, shown: [], falls, others }));
    }
  }
  return { samples, cannot };
}

const samplesAt = (samples: readonly Sample[]): Extent[] => samples.flatMap(({ cuts }) => [...cuts]);

function zoneOf(zones: readonly (Extent & { readonly falls: number })[], falls: number): Partial<Extent> {
  const zone = zones.find((one) => one.falls === falls);
  return zone === undefined || falls === 0 ? {} : { from: zone.from, to: zone.to };
}

/** A piece whose free length lies in a zone that is too short for the grips as well. */
function mixedPiece(
  zones: readonly (Extent & { readonly falls: number })[],
  falls: number,
  free: readonly Extent[],
): Extent | undefined {
  for (const zone of zones.filter((one) => one.falls === falls)) {
    if (zone.to - zone.from < FREE_LENGTH) continue;
    const piece = { from: middleOf(zone) - sampleLength() / 2, to: middleOf(zone) + sampleLength() / 2 };
    if (free.some((one) => inside(piece, one))) return piece;
  }
  return undefined;
}

function cellsOf(
  stretch: Extent,
  borders: readonly number[],
  zones: readonly (Extent & { readonly falls: number })[],
  span: Extent,
): Cell[] {
  const points = [stretch.from, ...borders.filter((x) => x > stretch.from && x < stretch.to), stretch.to];
  const sorted = [...new Set(points)].sort((a, b) => a - b);
  return sorted.slice(1).map((to, i) => {
    const cell = { from: sorted[i]!, to };
    const falls = zones.find((zone) => overlap(zone, cell))?.falls ?? 0;
    return { ...cell, falls, loaded: inside(cell, span) };
  });
}

/** More pieces of one state than anybody pulls. */
const MOST_SLOTS = 12;

function slotsOf(cells: readonly Cell[]): Extent[] {
  const length = sampleLength();
  const fits = cells.filter((cell) => cell.to - cell.from >= length - 1e-9);
  const loaded = fits.filter((cell) => cell.loaded);
  return (loaded.length > 0 ? loaded : fits)
    .sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from)
    .flatMap((cell) => {
      const count = Math.min(MOST_SLOTS, Math.floor((cell.to - cell.from) / length + 1e-9));
      const first = middleOf(cell) - (count * length) / 2;
      const slots = Array.from({ length: count }, (_, i) => ({
        from: first + i * length,
        to: first + (i + 1) * length,
      }));
      return slots.sort((a, b) => Math.abs(middleOf(a) - middleOf(cell)) - Math.abs(middleOf(b) - middleOf(cell)));
    })
    .slice(0, MOST_SLOTS);
}

/** Stretches less the pieces that are taken out of them. */
function stretchesWithout(stretches: readonly Extent[], taken: readonly Extent[]): Extent[] {
  return taken.reduce<Extent[]>(
    (left, one) =>
      left.flatMap((stretch) => {
        if (!overlap(stretch, one)) return [stretch];
        return [
          { from: stretch.from, to: one.from },
          { from: one.to, to: stretch.to },
        ].filter(({ from, to }) => to - from > 1e-9);
      }),
    [...stretches],
  );
}

/** The row of every piece of new webbing or rope. */
export function newSample(stock: LineStock, part: string): Sample {
  return {
    kind: "new",
    state: [stock.id, stock.name, "new"].join("|"),
    part,
    stock,
    cuts: [],
    length: sampleLength(),
    others: [],
    row: {
      part: part === "leash" ? "leash" : formOf(stock),
      material: stock.id,
      state: "new",
      wet: "dry",
      taken_from: "reel",
      months_outside: "0",
      sun_months: "0",
      falls: "0",
      unit: "kN",
    },
  };
}
