/** A what-if in words, as a short key, and read from such a key. */
import type { WhatIf } from "./outcome.ts";

/** Fractions are written with up to four digits: 0.1 mm on a 1 m line, 10 cm on a 1 km line. */
const fraction = (at: number) => String(Number(at.toFixed(4)));

/** Short, stable key: `fall@0.5`, `fails@0,hanging@0.25`, `leg@A1,caught@0.05`. Equal what-ifs have equal keys. */
export function whatIfKey(whatIf: WhatIf): string {
  const at = fraction(whatIf.at);
  switch (whatIf.kind) {
    case "leashFall":
      return `fall@${at}`;
    case "mainFails":
      return `fails@${fraction(whatIf.cutAt)},${whatIf.walker}@${at}`;
    case "legFails":
      return `leg@${whatIf.anchor}${whatIf.leg + 1},${whatIf.walker}@${at}`;
  }
}

const FALL = /^fall@(\d*\.?\d+)$/;
const FAILS = /^fails@(\d*\.?\d+),(hanging|standing|caught)@(\d*\.?\d+)$/;
const LEG = /^leg@([AB])([1-9]\d?),(hanging|caught)@(\d*\.?\d+)$/;

/** Reads a key; `undefined` when it is not one or a place is outside the line. */
export function parseWhatIf(text: string): WhatIf | undefined {
  const inside = (at: number) => at >= 0 && at <= 1;
  const fall = FALL.exec(text);
  if (fall) {
    const at = Number(fall[1]);
    return at > 0 && at < 1 ? { kind: "leashFall", at } : undefined;
  }
  const leg = LEG.exec(text);
  if (leg) {
    const [anchor, walker, at] = [leg[1] as "A" | "B", leg[3] as "hanging" | "caught", Number(leg[4])];
    return at > 0 && at < 1 ? { kind: "legFails", anchor, leg: Number(leg[2]) - 1, walker, at } : undefined;
  }
  const fails = FAILS.exec(text);
  if (!fails) return undefined;
  const [cutAt, at] = [Number(fails[1]), Number(fails[3])];
  if (!inside(cutAt) || !(at > 0 && at < 1)) return undefined;
  return { kind: "mainFails", at, cutAt, walker: fails[2] as "hanging" | "standing" | "caught" };
}

/** A place on the line in words, counted from the nearer anchor: "6 m from anchor A", "the middle". */
export function place(at: number, span: number): string {
  if (Math.abs(at - 0.5) < 1e-6) return "the middle";
  if (at <= 0) return "anchor A";
  if (at >= 1) return "anchor B";
  const near = at < 0.5 ? at : 1 - at;
  return `${metres(near * span)} from anchor ${at < 0.5 ? "A" : "B"}`;
}

const metres = (length: number) => `${length < 10 ? Number(length.toFixed(1)) : Math.round(length)} m`;
const where = (at: number, span: number) => (Math.abs(at - 0.5) < 1e-6 ? "in the middle" : place(at, span));
const WALKER = { hanging: "hanging", standing: "standing", caught: "being caught" } as const;

/** One line that names the what-if. `span` [m]. */
export function whatIfTitle(whatIf: WhatIf, span: number): string {
  if (whatIf.kind === "leashFall") return `Leash fall ${where(whatIf.at, span)}`;
  const walker = `walker ${WALKER[whatIf.walker]} ${where(whatIf.at, span)}`;
  if (whatIf.kind === "legFails") return `Leg ${whatIf.leg + 1} of anchor ${whatIf.anchor} fails, ${walker}`;
  const cut = whatIf.cutAt > 0 && whatIf.cutAt < 1 ? where(whatIf.cutAt, span) : `at ${place(whatIf.cutAt, span)}`;
  return `Main line fails ${cut}, ${walker}`;
}
