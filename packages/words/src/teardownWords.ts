/** A teardown in words: the plan and the gain of its results, for terminal, sheet and page. */

import { type PartId, type Rig, visibleText } from "@secondline/rig";
import {
  type Contradiction,
  type LearntFactor,
  type LearntPart,
  type NotToBeHad,
  type OtherWear,
  OUTCOMES,
  type Piece,
  type Sample,
  type Teardown,
  type TeardownBand,
  type TeardownLearnt,
  Z95,
} from "@secondline/strength";
import { broughtIn } from "./broughtEnglish.ts";
import type { Language, LaterKey } from "./language.ts";
import { type LaterSay, sayLaterIn } from "./laterLanguage.ts";
import { capital, lowered, partName, weakness } from "./partNames.ts";
import { cutAt, factor, kilonewtons, length, load, percent, required, strength } from "./quantity.ts";
import { stockName } from "./stockNames.ts";

/** Turns a deviation of the logarithm into a coefficient of variation [-]. */
const scatter = (sigmaLog: number): string => percent(Math.sqrt(Math.expm1(sigmaLog ** 2)), "up");
/** A smaller narrowing is told as unchanged [-]. */
const UNCHANGED_SHARE = 5e-4;

const kindKey = ({ kind }: Pick<Sample, "kind">): LaterKey => `teardown.kind.${kind}`;

/** "Clamp mark, main line", "Sling, anchor A". */
export function pieceTitle(say: LaterSay, rig: Rig, sample: Sample | NotToBeHad): string {
  const kind = say(kindKey(sample));
  switch (sample.kind) {
    case "leash":
    case "leashPlain":
      return capital(kind);
    case "ring":
    case "hardware":
    case "connection":
      return partName(say, rig, sample.part as PartId);
    default:
      return capital(say("teardown.what", { kind, part: fromName(say, sample.part) }));
  }
}

const fromName = (say: LaterSay, part: string): string =>
  say(part === "main" ? "teardown.from.main" : part === "backup" ? "teardown.from.backup" : "teardown.from.leash");

/**
 * The place at which a piece is cut out. `short`: without the webbing's name, for a label or under a drawing of the webbing.
 */
export function pieceWhere(say: LaterSay, plan: Pick<Teardown, "webbings">, sample: Sample): string {
  const cuts = sample.cuts.map(({ webbing, from, to }) =>
    say("teardown.cut", { from: cutAt(from), to: cutAt(to), name: nameOf(plan, webbing) }),
  );
  const [first, second] = cuts;
  if (first !== undefined) return second === undefined ? first : say("teardown.cutJoin", { first, second });
  if (sample.kind === "new" || sample.kind === "newKnot") {
    return say("teardown.newFrom", { length: length(sample.length!), stock: stockName(sample.stock!.name) });
  }
  if (sample.kind === "leash") return say("teardown.leashWhole");
  if (sample.kind === "leashPlain") return say("teardown.leashMiddle", { length: length(sample.length!) });
  return say("teardown.whole");
}

const nameOf = ({ webbings }: Pick<Teardown, "webbings">, id: string): string =>
  visibleText(webbings.find((one) => one.id === id)?.name ?? id);

/** The wear of a piece, from its row of the log. */
export function pieceDoses(say: LaterSay, { kind, row, others }: Sample): string {
  const number = (text: string | undefined) => (text === undefined || text === "" ? undefined : Number(text));
  const [sun, falls, clamped, sewn] = [row.sun_months, row.falls, row.clamped_months, row.sewn_months].map(number);
  const months = (value: number) => required(value);
  if (kind === "new" || kind === "newKnot") {
    const knot = row.knot ? [say("teardown.dose.knot", { knot: broughtIn(row.knot) })] : [];
    return [say("teardown.dose.new"), ...knot].join(", ");
  }
  const said = [
    ...(sun === undefined ? [] : [say("teardown.dose.sun", { months: months(sun) })]),
    ...(falls === undefined || falls === 0 ? [] : [say("teardown.dose.falls", { count: falls })]),
    ...(clamped === undefined ? [] : [say("teardown.dose.clamped", { months: months(clamped) })]),
    ...(sewn === undefined ? [] : [say("teardown.dose.sewn", { months: months(sewn) })]),
    ...(row.knot ? [say("teardown.dose.knot", { knot: broughtIn(row.knot) })] : []),
  ];
  const doses = said.length > 0 ? said.join(", ") : kind === "ring" ? "" : say("teardown.dose.unknown");
  return [doses, othersText(say, others)].filter((text) => text !== "").join("; ");
}

function othersText(say: LaterSay, others: readonly OtherWear[]): string {
  if (others.length === 0) return "";
  const list = others.map(({ kind, from, to }) => say(`teardown.other.${kind}`, { from: cutAt(from), to: cutAt(to) }));
  return say("teardown.with", { list: list.join(", ") });
}

/** The expected effect of pulling a piece, after the pieces before it. */
export function pieceTeaches(say: LaterSay, rig: Rig, plan: Teardown, { teaches, alone }: Piece): string {
  if (teaches !== undefined) {
    const { place } = plan.bands[teaches.band]!;
    const values = {
      part: partName(say, rig, place.part as PartId),
      before: scatter(teaches.before),
      after: scatter(teaches.after),
    };
    const change = teaches.after - teaches.before;
    if (Math.abs(change) < UNCHANGED_SHARE || values.before === values.after)
      return say("teardown.teaches.same", values);
    return say(change < 0 ? "teardown.teaches.narrows" : "teardown.teaches.widens", values);
  }
  const why = alone ?? "no stock";
  switch (why) {
    case "other wear":
      return say("teardown.alone.otherWear");
    case "beyond":
      return say("teardown.alone.beyond");
    case "no dose":
    case "no months":
    case "wet":
      return say("teardown.alone.noDose");
    case "no stock":
      return say("teardown.alone.noStock");
  }
}

/** The weakest place of a webbing or rope, now and after all pulls. */
export function teardownBandSentence(say: LaterSay, rig: Rig, band: TeardownBand): string {
  const name = partName(say, rig, band.place.part as PartId);
  const values = { part: name, reason: weakness(band.reason ?? ""), at: cutAt(band.at ?? 0) };
  const part =
    band.at !== undefined
      ? say("teardown.bandAt", values)
      : band.reason === undefined
        ? name
        : say("teardown.bandIn", values);
  const said = say("teardown.band", {
    part,
    strength: strength(band.strength5),
    before: scatter(band.before),
    after: scatter(band.after),
    expected: strength(band.strength * Math.exp(-Z95 * band.after)),
  });
  if (band.factor === undefined) return said;
  const { name: factorName, share, before, after } = band.factor;
  const most = say("teardown.bandFactor", {
    factor: broughtIn(factorName),
    share: percent(share),
    before: percent(before, "up"),
    after: percent(after, "up"),
  });
  return `${said} ${most}`;
}

/** States of the rig that are not pulled, each with the reason. */
export function cannotTexts(say: LaterSay, rig: Rig, plan: Pick<Teardown, "cannot">): readonly string[] {
  return plan.cannot.map((one) => {
    const title = pieceTitle(say, rig, one);
    const what =
      one.from === undefined || one.to === undefined
        ? title
        : say("teardown.cannotAt", { what: title, from: cutAt(one.from), to: cutAt(one.to) });
    return say(`teardown.cannot.${one.why}`, { what });
  });
}

/** Undefined when every state is in the plan. */
export function wantedText(say: LaterSay, rig: Rig, { leftOut, pieces }: Pick<Teardown, "leftOut" | "pieces">) {
  if (leftOut.length === 0) return undefined;
  const list = leftOut.map((sample) => {
    const title = lowered(pieceTitle(say, rig, sample));
    const doses = sample.cuts.length > 0 ? ` (${pieceDoses(say, { ...sample, others: [] })})` : "";
    return `${title}${doses}`;
  });
  const states = new Set([...leftOut, ...pieces].map(({ state }) => state));
  return say("teardown.wanted", { list: list.join("; "), pulls: states.size });
}

export const assumedTexts = (say: LaterSay, { grip, free }: Pick<Teardown, "grip" | "free">): readonly string[] => [
  say("teardown.assumed.grips", { grip: cutAt(grip), free: cutAt(free) }),
  say("teardown.assumed.places"),
  say("teardown.assumed.dry"),
  say("teardown.assumed.scatter"),
  say("teardown.assumed.weights"),
  say("teardown.assumed.batch"),
];

export const outcomesText = (say: LaterSay): string => say("teardown.outcomes", { list: OUTCOMES.join(", ") });

export interface PieceRow {
  readonly id: string;
  readonly what: string;
  readonly where: string;
  readonly length: string;
  readonly state: string;
  readonly teaches: string;
}

export function pieceRowOf(language: Language, rig: Rig, plan: Teardown, piece: Piece): PieceRow {
  const say = sayLaterIn(language);
  return {
    id: piece.id,
    what: pieceTitle(say, rig, piece),
    where: pieceWhere(say, plan, piece),
    length: piece.length === undefined ? say("table.none") : cutAt(piece.length),
    state: pieceDoses(say, piece),
    teaches: pieceTeaches(say, rig, plan, piece),
  };
}

export interface FactorLearntRow {
  readonly what: string;
  readonly tests: string;
  readonly before: string;
  readonly after: string;
}

export function factorLearntRow(
  say: LaterSay,
  { stock, what, before, after, testCount }: LearntFactor,
): FactorLearntRow {
  const text = ({ value, spread }: LearntFactor["before"]) =>
    say("teardown.learnt.value", { value: factor(value), spread: percent(spread, "up") });
  const name = what === "level" ? say("teardown.learnt.level") : broughtIn(what);
  return { what: `${stockName(stock)}: ${name}`, tests: String(testCount), before: text(before), after: text(after) };
}

/** The measured strength of a state; a value that is only expected beyond a bound is told as such. */
function heldText(say: LaterSay, { held, testCount: count, tested }: Contradiction): string {
  switch (held.kind) {
    case "loads":
      return say("teardown.learnt.broke", { count, load: strength(tested) });
    case "atLeast":
      return say("teardown.learnt.stopped", { count, load: strength(held.load) });
    case "atMost":
      return say("teardown.learnt.brokeBelow", { count, load: load(held.load) });
    case "mixed":
      return say("teardown.learnt.bounded", { count, bounds: held.bounds, load: strength(tested) });
  }
}

export function contradictionText(say: LaterSay, one: Contradiction): string {
  const said = say("teardown.learnt.contradicts", {
    stock: stockName(one.stock),
    state: broughtIn(one.state),
    held: heldText(say, one),
    builtIn: strength(one.builtIn),
    low: strength(one.builtInBand[0]),
    high: strength(one.builtInBand[1]),
  });
  return `${said} ${say(one.finding === "below" ? "teardown.learnt.below" : "teardown.learnt.above")}`;
}

export interface PartLearntRow {
  readonly part: string;
  readonly before: string;
  readonly after: string;
  readonly change: string;
  readonly until: string;
  readonly daysBefore: string;
  readonly daysAfter: string;
}

export function partLearntRow(
  say: LaterSay,
  rig: Rig,
  { part, before, after, next }: LearntPart,
  { horizon }: Pick<TeardownLearnt, "horizon">,
): PartLearntRow {
  const days = (count: number | undefined) =>
    next === undefined
      ? say("table.none")
      : count === undefined
        ? say("teardown.learnt.beyond", { days: horizon })
        : String(count);
  const change = after / before - 1;
  return {
    part: partName(say, rig, part as PartId),
    before: kilonewtons(before, "down"),
    after: kilonewtons(after, "down"),
    change: change < 0 ? `\u2212${percent(-change, "up")}` : `+${percent(change, "down")}`,
    until: next === undefined ? say("table.none") : kilonewtons(next.until, "down"),
    daysBefore: days(next?.before),
    daysAfter: days(next?.after),
  };
}
