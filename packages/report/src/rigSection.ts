/** The rig as it was put in. */
import {
  type AnchorSide,
  formatAngle,
  formatForce,
  formatLength,
  formatMass,
  formatPercent,
  formatRatio,
  formatStiffness,
  type LineEnd,
  type Rig,
  type Wear,
  type WebbingSection,
} from "@secondline/rig";
import { type Content, type Html, tableOf } from "./html.ts";

export function rigTable(rig: Rig): Html {
  const rows: Content[][] = [
    [
      "Span",
      `${formatLength(rig.span)}${rig.rise === 0 ? "" : `, B ${formatLength(Math.abs(rig.rise))} ${rig.rise > 0 ? "higher" : "lower"} than A`}`,
    ],
    [
      "Main line",
      `${sections(rig.main.sections)}; ${formatForce(rig.main.pretension)} on the slow-pull curve, unloaded`,
    ],
    ["Its ends", ends(rig.main)],
    ["Backup", backup(rig)],
    [
      "Ring",
      rig.rings
        .map((one) => `${one.name}, ${formatMass(one.mass)}, rated ${formatForce(one.rated.strength)}`)
        .join("; "),
    ],
    ["Leash", leash(rig)],
    ["Harness", `rated ${formatForce(rig.harness.rated.strength)}`],
    ["Walker", `${formatMass(rig.walker.mass)}, tie-in ${formatLength(rig.walker.tieIn)} above the line when standing`],
    ["Anchor A", anchor(rig.anchorA)],
    ["Anchor B", anchor(rig.anchorB)],
    [
      "Ground",
      rig.ground.length < 2
        ? "not given"
        : `${rig.ground.length} points; lowest ${formatLength(-Math.min(...rig.ground.map(([, z]) => z)))} below anchor A`,
    ],
    [
      "Required of every part",
      `${formatRatio(rig.requiredFactor.value)} times its largest load (${rig.requiredFactor.basis.kind}: ${rig.requiredFactor.basis.note})`,
    ],
  ];
  if (rig.notes !== "") rows.push(["Notes", rig.notes]);
  return tableOf("As it was put in.", ["", "Value"], rows);
}

function sections(list: readonly WebbingSection[]): string {
  return list
    .map(({ stock, length, condition, wear }) => {
      const said = [length === undefined ? stock.name : `${formatLength(length)} of ${stock.name}`];
      if (condition.monthsOutside !== undefined) said.push(`${formatRatio(condition.monthsOutside)} months outside`);
      if (condition.ageYears !== undefined) said.push(`${formatRatio(condition.ageYears)} years old`);
      if (condition.wet) said.push("wet");
      return [...said, ...wear.map(wearText)].join(", ");
    })
    .join("; then ");
}

function wearText(wear: Wear): string {
  switch (wear.kind) {
    case "clampMark":
      return `clamp mark of ${formatRatio(wear.months)} months at ${formatLength(wear.at)}`;
    case "fallZone":
      return `${wear.falls} falls between ${formatLength(wear.from)} and ${formatLength(wear.to)}`;
    case "stitching":
      return `stitching at ${formatLength(wear.at)}`;
    case "abrasion":
      return `abrasion over ${formatPercent(wear.depth)} of the width between ${formatLength(wear.from)} and ${formatLength(wear.to)}`;
    case "heat":
      return `glazed over ${formatPercent(wear.depth)} of the width between ${formatLength(wear.from)} and ${formatLength(wear.to)}`;
    case "cut":
      return `cut over ${formatPercent(wear.depth)} of the width at ${formatLength(wear.at)}`;
  }
}

const END = { weblock: "weblock", sewnLoop: "sewn loop", knot: "knot" } as const;

function ends(line: { readonly endA: LineEnd; readonly endB: LineEnd }): string {
  const end = (one: LineEnd) => `${END[one.kind]} rated ${formatForce(one.rated.strength)}`;
  return `A: ${end(line.endA)}; B: ${end(line.endB)}`;
}

function backup(rig: Rig): string {
  if (!rig.backup) return "none";
  const count = (kind: "connection" | "tape") => {
    const number = rig.backup!.connections.filter((one) => one.kind === kind).length;
    return `${number === 0 ? "no" : number} ${kind}${number === 1 ? "" : "s"}`;
  };
  const held = `${count("connection")}, ${count("tape")}`;
  return `${sections(rig.backup.sections)}; ${formatPercent(rig.backup.slack)} longer than the chord; ${held}; ${ends(rig.backup)}`;
}

function leash({ leash: { stock, length, knots, condition, falls, sheathSlip, glazed } }: Rig): string {
  const said = [`${formatLength(length)} of ${stock.name}`];
  said.push(knots.length === 0 ? "sewn" : `${knots.length} ${knots.length === 1 ? "knot" : "knots"}`);
  if (condition.monthsOutside !== undefined) said.push(`${formatRatio(condition.monthsOutside)} months outside`);
  if (falls !== undefined && falls > 0) said.push(`${falls} falls`);
  if (sheathSlip !== undefined) said.push(`sheath slipped by ${formatPercent(sheathSlip)}`);
  if (glazed !== undefined) said.push(`glazed over ${formatPercent(glazed)} of the section`);
  return said.join(", ");
}

function anchor(side: AnchorSide): string {
  const parts = [...side.hardware, ...side.points].map(
    (one) =>
      `${one.name}${one.rigged === undefined ? "" : ` (${one.rigged})`} rated ${formatForce(one.rated.strength)}`,
  );
  const legs = side.points.length > 1 ? `; ${formatAngle(side.legAngle)} between the legs` : "";
  const give = side.stiffness === undefined ? "rigid" : formatStiffness(side.stiffness);
  return `${parts.join(", ")}${legs}; ${give}`;
}
