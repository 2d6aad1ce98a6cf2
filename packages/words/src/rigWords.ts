/** The rig of the file in words: one line, and a table. */

import type { AnchorSide, LineEnd, Rig, Wear, WebbingSection } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import { formatAngle, formatMass, formatRatio, formatStiffness } from "./formats.ts";
import type { Language } from "./language.ts";
import { type LaterSay, sayLaterIn } from "./laterLanguage.ts";
import { listed } from "./lists.ts";
import { capital } from "./partNames.ts";
import { drop, height, length, load, percent, required, strength } from "./quantity.ts";
import { tiedAt, webbingToLayOut } from "./settingOut.ts";
import { stockName } from "./stockNames.ts";
import { basisText } from "./tableWords.ts";

const LIST_SEPARATOR = ", ";

export const rigCaption = (language: Language): string => sayLaterIn(language)("rig.caption");
/** How finely the falls were computed. */
export const meshText = (language: Language, accuracy: Outcome["accuracy"]): string =>
  sayLaterIn(language)(`rig.mesh.${accuracy}`);

/** "66 m span, main line 3.2 kN, backup 5.5 % longer …" */
export function rigLine(language: Language, rig: Rig, { statics, accuracy }: Outcome): string {
  const say = sayLaterIn(language);
  return say("rig.line", {
    span: length(rig.span),
    tension: load(rig.main.pretension),
    backup: rig.backup
      ? say("rig.backupIs", { slack: percent(rig.backup.slack, "up"), count: countOf(rig, "connection") })
      : say("rig.noBackup"),
    mass: formatMass(rig.walker.mass),
    standing: load(statics.standingTension),
    sag: drop(statics.standingSag),
    mesh: say(`rig.mesh.${accuracy}`),
  });
}

export function staticsText(language: Language, { statics }: Pick<Outcome, "statics">): string {
  return sayLaterIn(language)("rig.unloaded", {
    unloaded: load(statics.unloadedTension),
    unloadedSag: drop(statics.unloadedSag),
    standing: load(statics.standingTension),
    standingSag: drop(statics.standingSag),
  });
}

const countOf = (rig: Rig, kind: "connection" | "tape"): number =>
  (rig.backup?.connections ?? []).filter((one) => one.kind === kind).length;

export interface RigRow {
  readonly name: string;
  readonly value: string;
}

export function rigRows(language: Language, rig: Rig): readonly RigRow[] {
  const say = sayLaterIn(language);
  const { main, walker } = rig;
  const tied = tiedAt(say, rig);
  const rows: RigRow[] = [
    { name: say("rig.row.span"), value: span(say, rig) },
    ...(rig.latitude === undefined
      ? []
      : [{ name: say("rig.row.latitude"), value: say(`rig.latitude.${rig.latitude}`) }]),
    {
      name: say("rig.row.main"),
      value: say("rig.mainIs", { sections: sections(say, main.sections), tension: load(main.pretension) }),
    },
    { name: say("rig.row.mainEnds"), value: ends(say, main) },
    { name: say("rig.row.backup"), value: backup(say, rig) },
    { name: say("rig.row.layOut"), value: webbingToLayOut(say, rig) },
    ...(tied === undefined ? [] : [{ name: say("rig.row.tiedAt"), value: tied }]),
    { name: say("rig.row.ring"), value: rings(say, rig) },
    { name: say("rig.row.leash"), value: leash(say, rig) },
    {
      name: say("rig.row.harness"),
      value: capital(say("rig.rated", { name: say("part.harness"), strength: strength(rig.harness.rated.strength) })),
    },
    {
      name: say("rig.row.walker"),
      value: say("rig.walkerIs", {
        mass: formatMass(walker.mass),
        tieIn: length(walker.tieIn),
        rescuer: walker.rescuer === undefined ? "" : say("rig.rescuerIs", { mass: formatMass(walker.rescuer) }),
      }),
    },
    { name: say("rig.row.anchor", { anchor: "A" }), value: anchor(say, rig.anchorA) },
    { name: say("rig.row.anchor", { anchor: "B" }), value: anchor(say, rig.anchorB) },
    { name: say("rig.row.ground"), value: ground(say, rig) },
    {
      name: say("rig.row.required"),
      value: say("rig.requiredIs", {
        expected: required(rig.requiredFactor.value),
        basis: basisText(language, rig.requiredFactor.basis),
        afterFailure: required(rig.requiredAfterFailure),
        clearance: height(rig.requiredClearance),
      }),
    },
  ];
  return rig.notes === "" ? rows : [...rows, { name: say("rig.row.notes"), value: rig.notes }];
}

function span(say: LaterSay, { span, rise }: Rig): string {
  if (rise === 0) return length(span);
  return say(rise > 0 ? "rig.higher" : "rig.lower", { span: length(span), rise: length(Math.abs(rise)) });
}

function sections(say: LaterSay, list: readonly WebbingSection[]): string {
  return list
    .map(({ stock, length: long, condition, wear }) =>
      [
        long === undefined
          ? stockName(stock.name)
          : say("rig.sectionOf", { length: length(long), stock: stockName(stock.name) }),
        ...(condition.monthsOutside === undefined
          ? []
          : [say("rig.months", { months: formatRatio(condition.monthsOutside, "up") })]),
        ...(condition.ageYears === undefined
          ? []
          : [say("rig.years", { years: formatRatio(condition.ageYears, "up") })]),
        ...(condition.wet ? [say("rig.wet")] : []),
        ...wear.map((one) => wearText(say, one)),
      ].join(LIST_SEPARATOR),
    )
    .join(say("rig.then"));
}

function wearText(say: LaterSay, wear: Wear): string {
  switch (wear.kind) {
    case "clampMark":
      return say("rig.wear.clampMark", { months: formatRatio(wear.months, "up"), at: length(wear.at) });
    case "fallZone":
      return say("rig.wear.fallZone", { falls: wholeFalls(wear.falls), from: length(wear.from), to: length(wear.to) });
    case "stitching":
      return say("rig.wear.stitching", { at: length(wear.at) });
    case "abrasion":
    case "heat": {
      const values = { depth: percent(wear.depth, "up"), from: length(wear.from), to: length(wear.to) };
      return say(`rig.wear.${wear.kind}`, values);
    }
    case "cut":
      return say("rig.wear.cut", { depth: percent(wear.depth, "up"), at: length(wear.at) });
  }
}

/** A record that shares falls out counts parts of one. */
const wholeFalls = (falls: number): number => Math.ceil(falls - 1e-9);

function ends(say: LaterSay, line: { readonly endA: LineEnd; readonly endB: LineEnd }): string {
  const end = (one: LineEnd) =>
    say("rig.rated", { name: say(`rig.end.${one.kind}`), strength: strength(one.rated.strength) });
  return say("rig.ends", { a: end(line.endA), b: end(line.endB) });
}

function backup(say: LaterSay, rig: Rig): string {
  if (!rig.backup) return say("rig.none");
  return say("rig.backupRow", {
    sections: sections(say, rig.backup.sections),
    slack: percent(rig.backup.slack, "up"),
    connections: countOf(rig, "connection"),
    tapes: countOf(rig, "tape"),
    ends: ends(say, rig.backup),
  });
}

const rings = (say: LaterSay, rig: Rig): string =>
  listed(
    rig.rings.map(({ name, mass, rated }) =>
      say("rig.ratedMass", { name, mass: formatMass(mass), strength: strength(rated.strength) }),
    ),
    "semicolon",
  );

function leash(say: LaterSay, { leash: one }: Rig): string {
  return [
    say("rig.sectionOf", { length: length(one.length), stock: stockName(one.stock.name) }),
    one.knots.length === 0 ? say("rig.sewn") : say("rig.knots", { count: one.knots.length }),
    ...(one.condition.monthsOutside === undefined
      ? []
      : [say("rig.months", { months: formatRatio(one.condition.monthsOutside, "up") })]),
    ...((one.falls ?? 0) > 0 ? [say("rig.falls", { falls: wholeFalls(one.falls!) })] : []),
    ...(one.sheathSlip === undefined ? [] : [say("rig.sheathSlip", { share: percent(one.sheathSlip, "up") })]),
    ...(one.glazed === undefined ? [] : [say("rig.glazed", { share: percent(one.glazed, "up") })]),
  ].join(LIST_SEPARATOR);
}

function anchor(say: LaterSay, side: AnchorSide): string {
  const parts = [...side.hardware, ...side.points]
    .map(({ name, rigged, rated }) =>
      say("rig.rated", {
        name: rigged === undefined ? name : say("rig.rigged", { name, rigged }),
        strength: strength(rated.strength),
      }),
    )
    .join(LIST_SEPARATOR);
  const give = side.stiffness === undefined ? say("rig.rigid") : formatStiffness(side.stiffness);
  return side.points.length > 1
    ? say("rig.legs", { parts, angle: formatAngle(side.legAngle), give })
    : say("rig.noLegs", { parts, give });
}

function ground(say: LaterSay, rig: Rig): string {
  if (rig.ground.length < 2) return say("rig.noGround");
  const depth = length(-Math.min(...rig.ground.map(([, z]) => z)));
  return say("rig.groundIs", { points: rig.ground.length, depth });
}
