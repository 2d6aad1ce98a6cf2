/** All samples that a rig which comes down can give the machine. */
import { type Condition, isTape, type LineName, type PartId, type Rig } from "@secondline/rig";
import type { WrittenTest } from "../breakLog/readEntry.ts";
import { conditionSunMonths } from "../derating/sun.ts";
import type { WebbingState } from "../wear/webbingState.ts";
import {
  alike,
  centimetres,
  FREE_LENGTH,
  formOf,
  GRIP_LENGTH,
  type NotToBeHad,
  type Sample,
  sampleLength,
  written,
  writtenFalls,
  writtenSun,
} from "./sample.ts";
import { type FoundSamples, type HungWebbing, newSample, webbingSamples } from "./webbingSamples.ts";

/** Rope that a knot and its loop take up on the pin, beside the grip at the other end [m]. */
const KNOT_PIECE_LENGTH = 0.3 + FREE_LENGTH + GRIP_LENGTH;
/** New pieces of one make that are offered at most. */
const MOST_NEW_PIECES = 8;

/** `rig`: as it is on the day; `hanging`: the webbings in it. */
export function allSamples(rig: Rig, hanging: readonly WebbingState[]): FoundSamples {
  const samples: Sample[] = [];
  const cannot: NotToBeHad[] = [];
  for (const line of ["main", "backup"] as const) {
    const hung = hungIn(rig, line, hanging);
    const joins = joinSamples(hung, rig[line]?.sections.length ?? 0);
    samples.push(...joins.samples);
    cannot.push(...joins.cannot);
    for (const one of hung) {
      const taken = joins.samples.flatMap(({ cuts }) => cuts.filter(({ webbing }) => webbing === one.state.id));
      const found = webbingSamples(one, taken);
      samples.push(...found.samples);
      cannot.push(...found.cannot);
    }
  }
  const leash = leashSamples(rig);
  samples.push(...newPieces(rig, samples), ...leash.samples, ...metalSamples(rig));
  return { samples, cannot: [...cannot, ...leash.cannot] };
}

/** Webbings of a line in the order of its sections. */
export function hungIn(rig: Rig, line: LineName, hanging: readonly WebbingState[]): HungWebbing[] {
  const made = rig[line];
  if (made === undefined) return [];
  const last = made.sections.length - 1;
  return hanging
    .filter((state) => state.placement!.line === line && made.sections[state.placement!.section] !== undefined)
    .sort((a, b) => a.placement!.section - b.placement!.section)
    .map((state): HungWebbing => {
      const i = state.placement!.section;
      return {
        state,
        section: made.sections[i]!,
        ends: { ...(i === 0 ? { A: made.endA } : {}), ...(i === last ? { B: made.endB } : {}) },
        joined: [...(i > 0 ? (["A"] as const) : []), ...(i < last ? (["B"] as const) : [])],
      };
    });
}

/** Joins between sections: the end of one webbing and the beginning of the next, together. */
function joinSamples(hung: readonly HungWebbing[], sections: number): FoundSamples {
  const samples: Sample[] = [];
  const cannot: NotToBeHad[] = [];
  for (let i = 0; i + 1 < sections; i++) {
    const [a, b] = [i, i + 1].map((n) => hung.find(({ state }) => state.placement!.section === n));
    const known = a ?? b;
    if (known === undefined) continue;
    const at = { kind: "join" as const, part: known.state.placement!.line, webbing: known.state.id };
    if (a === undefined || b === undefined) {
      cannot.push({ ...at, why: "otherWebbingUnknown" });
      continue;
    }
    const cuts = [halfAt(a.state, "B"), halfAt(b.state, "A")];
    if (cuts.some(({ from, to }) => to - from < sampleLength() / 2 - 1e-9)) {
      cannot.push({ ...at, why: "nearEnd" });
      continue;
    }
    const weaker = a.section.stock.rated.strength <= b.section.stock.rated.strength ? a : b;
    const { stock } = weaker.section;
    const { monthsOutside, sunMonths } = weaker.state;
    const row: WrittenTest = {
      part: formOf(stock),
      material: stock.id,
      batch: weaker.state.id,
      state: "sewn join",
      wet: "dry",
      taken_from: cuts.map(({ from, to }) => `${from} to ${to} m from the marked end`).join(" and "),
      months_outside: written(monthsOutside),
      sun_months: writtenSun(weaker.state),
      falls: "0",
      sewn_months: written(monthsOutside),
      unit: "kN",
    };
    samples.push({
      kind: "join",
      state: [stock.id, stock.name, "join", alike(sunMonths)].join("|"),
      part: at.part,
      stock,
      cuts,
      length: sampleLength(),
      others: [],
      row,
    });
  }
  return { samples, cannot };
}

/** Half of a piece, inwards from where a webbing's span ends. */
function halfAt({ id, placement, from, to }: WebbingState, side: "A" | "B") {
  const half = sampleLength() / 2;
  const { markedEnd } = placement!;
  const cut =
    markedEnd === side
      ? { from: placement!.from, to: Math.min(to, placement!.from + half) }
      : { from: Math.max(from, placement!.to - half), to: placement!.to };
  return { webbing: id, from: centimetres(cut.from), to: centimetres(cut.to) };
}

/** New pieces of every webbing that is cut, and of the leash's rope: bare, and in the leash's knot. */
function newPieces({ leash }: Rig, used: readonly Sample[]): Sample[] {
  const stocks = new Map(used.flatMap(({ stock, part }) => (stock === undefined ? [] : [[stock, part] as const])));
  const makes = [...stocks, [leash.stock, "leash"] as const];
  const bare = makes.flatMap(([stock, part]) => Array.from({ length: MOST_NEW_PIECES }, () => newSample(stock, part)));
  const [knot] = leash.knots;
  if (knot === undefined) return bare;
  const plain = newSample(leash.stock, "leash");
  const knotted: Sample = {
    ...plain,
    kind: "newKnot",
    state: `${plain.state}|${knot.kind}`,
    length: centimetres(2 * KNOT_PIECE_LENGTH),
    row: { ...plain.row, state: "new", knot: knot.kind },
  };
  return [...bare, ...Array.from({ length: MOST_NEW_PIECES }, () => knotted)];
}

/** The leash in its knots, and plain if it is long enough for both. */
function leashSamples({ leash }: Rig): FoundSamples {
  const { stock, condition, knots, falls, length } = leash;
  const knot = knots[0]?.kind;
  const sun = knownSun(condition);
  const row: WrittenTest = {
    part: "leash",
    material: stock.id,
    state: "used",
    wet: "dry",
    taken_from: "leash",
    ...(condition.monthsOutside === undefined ? {} : { months_outside: written(condition.monthsOutside) }),
    ...(sun === undefined ? {} : { sun_months: written(sun) }),
    ...(falls === undefined ? {} : { falls: writtenFalls(falls) }),
    unit: "kN",
  };
  const state = [stock.id, stock.name, "leash", alike(sun ?? 0), alike(falls ?? 0)].join("|");
  const whole: Sample = {
    kind: "leash",
    state: `${state}|${knot ?? "sewn"}`,
    part: "leash",
    stock,
    cuts: [],
    others: [],
    row: knot === undefined ? { ...row, state: "sewn, used" } : { ...row, state: "used", knot },
  };
  // A leash without a knot is sewn, and is pulled as it is.
  if (knot === undefined) return { samples: [whole], cannot: [] };
  if (length < KNOT_PIECE_LENGTH + sampleLength()) {
    return { samples: [whole], cannot: [{ kind: "leashPlain", part: "leash", why: "leashShort" }] };
  }
  const plain: Sample = { ...whole, kind: "leashPlain", state: `${state}|plain`, length: sampleLength(), row };
  return { samples: [whole, plain], cannot: [] };
}

/** Rings, and the textile parts of anchors and connections: bolts and shackles outlast the parts that hang in them. */
function metalSamples(rig: Rig): Sample[] {
  const rings = rig.rings.map((ring, i) =>
    whole("ring", rig.rings.length === 1 ? "ring" : `ring.${i}`, ring.name, ring.rated.strength, ring.condition ?? {}),
  );
  const slings = (["A", "B"] as const).flatMap((side) =>
    (side === "A" ? rig.anchorA : rig.anchorB).hardware.flatMap((part, i) =>
      part.kind === "sling"
        ? [whole("hardware", `anchor${side}.hardware.${i}`, part.name, part.rated.strength, part.condition ?? {})]
        : [],
    ),
  );
  const connections = (rig.backup?.connections ?? []).flatMap((part, i) => {
    const id: PartId = `connection.${i}`;
    return isTape(rig, id) ? [] : [whole("connection", id, "connection", part.rated.strength, part.condition ?? {})];
  });
  return [...rings, ...slings, ...connections];
}

function whole(
  kind: "ring" | "hardware" | "connection",
  part: string,
  name: string,
  rated: number,
  condition: Condition,
): Sample {
  const sun = knownSun(condition);
  const months = condition.monthsOutside;
  return {
    kind,
    state: [kind, name, rated, alike(sun ?? 0)].join("|"),
    part,
    name,
    cuts: [],
    others: [],
    row: {
      part: kind === "hardware" ? "sling" : kind,
      material: name,
      state: "used",
      wet: "dry",
      taken_from: part,
      ...(months === undefined ? {} : { months_outside: written(months) }),
      ...(sun === undefined ? {} : { sun_months: written(sun) }),
      unit: "kN",
    },
  };
}

/** Sun of a condition for the row of a test; undefined if nobody says that any of the light fell on the part. */
function knownSun(condition: Condition): number | undefined {
  const sun = conditionSunMonths(condition);
  return sun === 0 && condition.sun === undefined && condition.monthsOutside !== 0 ? undefined : sun;
}
