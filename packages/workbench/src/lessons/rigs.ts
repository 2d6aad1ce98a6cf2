/**
 * The rigs of the lessons: one plain line, and the one thing that each lesson changes about it. Every number is invented
 * and the rigs say so.
 */
import { editDocument } from "@secondline/rig";
import type { WrittenRig } from "../documents/documents.ts";

const INVENTED = "assumed: invented for this lesson";
// The rigs say everything about every part: what a rig does not say counts at its worst.
const AS_NEW = { outside: "0 months", age: "0 months", wet: false };

const bolt = (name: string) => ({ name, kind: "bolt", strength: "25 kN", basis: INVENTED, pullAngle: "90 deg" });
const ANCHOR = {
  points: [bolt("Left bolt"), bolt("Right bolt")],
  legAngle: "45 deg",
  legLength: "1.2 m",
  hardware: [{ name: "Shackle", kind: "shackle", strength: "80 kN", basis: INVENTED }],
};
const sewnLoop = (strength: string) => ({ kind: "sewnLoop", strength, basis: INVENTED, bend: 8 });
const weblock = (clamped: string) => ({ kind: "weblock", strength: "45 kN", basis: INVENTED, clamped, bend: 8 });

/** Above the floor of the gap [m]. */
export const RIG_HEIGHT = 45;

/** A gap with steep sides, `span` wide [m]. */
function gap(span: number): readonly (readonly [string, string])[] {
  const edge = Math.min(2.5, span / 8);
  const point = (x: number, share: number) => [`${Number(x.toFixed(2))} m`, `${-share * RIG_HEIGHT} m`] as const;
  return [
    point(0, 0.01),
    point(edge / 2, 0.09),
    point(edge, 0.46),
    point(0.17 * span, 0.75),
    point(0.35 * span, 0.95),
    point(0.5 * span, 1),
    point(0.7 * span, 0.92),
    point(0.84 * span, 0.7),
    point(span - edge, 0.42),
    point(span - edge / 2, 0.07),
    point(span, 0.01),
  ];
}

/** 60 m of new webbing, with a sewn backup of 4 % slack that is joined to it nowhere. */
export const PLAIN: WrittenRig = {
  secondline: "rig/1",
  name: "Lesson gap",
  notes: "Invented for the lessons. It describes no real line.",
  invented: true,
  span: "60 m",
  rise: "0 m",
  latitude: "middle",
  requiredFactor: 2,
  requiredFactorBasis: "common practice: no source",
  anchorA: ANCHOR,
  anchorB: ANCHOR,
  main: {
    pretension: "3 kN",
    sections: [{ stock: "polyester-webbing-25", condition: AS_NEW }],
    endA: weblock("0 months"),
    endB: weblock("0 months"),
  },
  backup: {
    slack: "4 %",
    sections: [{ stock: "polyester-webbing-25-light", condition: AS_NEW }],
    endA: sewnLoop("28 kN"),
    endB: sewnLoop("28 kN"),
  },
  rings: [{ name: "Leash ring", mass: "0.1 kg", strength: "32 kN", basis: INVENTED }],
  leash: {
    stock: "dynamic-rope-10",
    length: "1.4 m",
    knots: [
      { kind: "figureEight", where: "ring" },
      { kind: "figureEight", where: "harness" },
    ],
    condition: AS_NEW,
    falls: 0,
    sheathSlip: "0 %",
    glazed: "0 %",
  },
  harness: { strength: "15 kN", basis: INVENTED, condition: AS_NEW },
  walker: { mass: "80 kg", at: 0.5 },
  ground: gap(60),
};

/** Changes one after the other, by their paths. */
function changed(rig: WrittenRig, changes: Readonly<Record<string, unknown>>): WrittenRig {
  return Object.entries(changes).reduce((made, [path, value]) => editDocument(made, path, value), rig);
}

export const WITHOUT_BACKUP = changed(PLAIN, { backup: undefined });

export const LOOSE_BACKUP = changed(PLAIN, { "backup.slack": "12 %" });

/** One connection, 6 m from the walker on the side where the line fails. */
export const CONNECTED = changed(PLAIN, {
  "backup.connections": [{ at: 0.4, strength: "22 kN", basis: INVENTED, condition: AS_NEW }],
});

/** Months outside have taken their share of the backup: a loop bears the fall, and a knot does not. */
export const AGED_BACKUP = changed(PLAIN, {
  "backup.endA": sewnLoop("22 kN"),
  "backup.endB": sewnLoop("22 kN"),
  "backup.slack": "11 %",
  "backup.sections[0].condition": { outside: "2.5 months", sun: "100 %", age: "1 year", wet: false },
});
export const KNOTTED_BACKUP = changed(AGED_BACKUP, {
  "backup.endA": { kind: "knot", knot: "overhand", bend: 8 },
});

/** A main line that hung for a year, clamped anew at webbing that no clamp has bitten. */
export const OLD_LINE = changed(PLAIN, {
  "main.pretension": "4 kN",
  "main.sections[0].condition": { outside: "12 months", sun: "40 %", age: "1 year", wet: false },
});
export const MOVED_CLAMP_MARK = changed(OLD_LINE, {
  "main.sections[0].wear": [{ kind: "clampMark", at: "5 m", length: "0.35 m", clamped: "12 months", load: "4 kN" }],
});

export const SHORT_STIFF = changed(PLAIN, {
  span: "15 m",
  ground: gap(15),
  "main.pretension": "6 kN",
  "main.sections[0].stock": "hmpe-webbing-25",
});
