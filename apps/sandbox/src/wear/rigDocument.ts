/**
 * Writes the state that a wear record gives to the parts of a rig into the rig's document. Only conditions, wear and
 * time in the clamp are written; everything else stays as it was typed.
 */
import { type Condition, editDocument, type LineEnd, type Rig, type Wear, type WebbingSection } from "@secondline/rig";
import type { WrittenRig } from "../state/types.ts";

/** `before`: the rig of `document`; `worn`: what `applyWear` made of it. */
export function wornDocument(document: WrittenRig, before: Rig, worn: Rig): WrittenRig {
  const changes: (readonly [path: string, value: unknown])[] = [];
  const condition = (path: string, was: Condition | undefined, is: Condition | undefined) => {
    if (is !== undefined && is !== was) changes.push([`${path}.condition`, writeCondition(is)]);
  };
  for (const line of ["main", "backup"] as const) {
    const [was, is] = [before[line], worn[line]];
    if (was === undefined || is === undefined) continue;
    is.sections.forEach((section, i) => {
      if (section !== was.sections[i]) changes.push(...sectionChanges(`${line}.sections[${i}]`, section));
    });
    changes.push(...endChanges(`${line}.endA`, was.endA, is.endA), ...endChanges(`${line}.endB`, was.endB, is.endB));
  }
  condition("leash", before.leash.condition, worn.leash.condition);
  if (worn.leash !== before.leash) changes.push(["leash.falls", worn.leash.falls === undefined ? undefined : Math.round(worn.leash.falls)]);
  condition("harness", before.harness.condition, worn.harness.condition);
  worn.backup?.connections.forEach((c, i) => {
    condition(connectionPath(worn, i), before.backup?.connections[i]?.condition, c.condition);
  });
  for (const anchor of ["anchorA", "anchorB"] as const) {
    for (const list of ["points", "hardware"] as const) {
      worn[anchor][list].forEach((part, i) => {
        condition(`${anchor}.${list}[${i}]`, before[anchor][list][i]?.condition, part.condition);
      });
    }
  }
  return changes.reduce((next, [path, value]) => editDocument(next, path, value), document);
}

/** Connections and tapes are two lists in the document and one in the rig, sorted by place within their kind. */
function connectionPath({ backup }: Rig, index: number): string {
  const all = backup?.connections ?? [];
  const kind = all[index]?.kind;
  const before = all.slice(0, index).filter((c) => c.kind === kind).length;
  return `backup.${kind === "tape" ? "tapes" : "connections"}[${before}]`;
}

function sectionChanges(path: string, section: WebbingSection): [string, unknown][] {
  const wear = section.wear.flatMap(writeWear);
  return [
    [`${path}.condition`, writeCondition(section.condition)],
    [`${path}.wear`, wear.length > 0 ? wear : undefined],
  ];
}

function endChanges(path: string, was: LineEnd, is: LineEnd): [string, unknown][] {
  if (is === was || is.kind !== "weblock" || is.monthsClamped === undefined) return [];
  return [[`${path}.clamped`, months(is.monthsClamped)]];
}

/**
 * A rig document has months outside and a share of light, the record months of full sun. More sun than months, which a
 * bright season gives, is written as that many months in full sun.
 */
export function writeCondition({ monthsOutside, sunMonths, sun, ageYears, wet }: Condition): Record<string, unknown> {
  const outside = monthsOutside === undefined ? sunMonths : Math.max(monthsOutside, sunMonths ?? 0);
  const share = sunMonths === undefined ? sun : outside ? Math.min(1, sunMonths / outside) : 0;
  return {
    ...(outside === undefined ? {} : { outside: months(outside) }),
    ...(share === undefined ? {} : { sun: `${number(100 * share)} %` }),
    ...(ageYears === undefined ? {} : { age: `${number(ageYears)} years` }),
    ...(wet === undefined ? {} : { wet }),
  };
}

/** A stretch shorter than what a rig document can hold is dropped: it is less than the thickness of the webbing. */
const LEAST = 0.001;

function writeWear(wear: Wear): Record<string, unknown>[] {
  if (wear.kind === "cut") return [{ kind: "cut", at: metre(wear.at, Math.round), depth: share(wear.depth) }];
  if (wear.kind === "clampMark" || wear.kind === "stitching") {
    if (wear.length < LEAST) return [];
    // The length is rounded down, so that a place at the very end of the section stays inside it.
    const spot = { at: metre(wear.at, Math.round, 1e4), length: metre(wear.length, Math.floor) };
    if (wear.kind === "stitching") return [{ kind: wear.kind, ...spot }];
    const load = wear.load === undefined ? {} : { load: `${number(wear.load / 1000)} kN` };
    return [{ kind: wear.kind, ...spot, clamped: months(wear.months), ...load }];
  }
  if (wear.to - wear.from < 2 * LEAST) return [];
  const stretch = { from: metre(wear.from, Math.ceil), to: metre(wear.to, Math.floor) };
  return wear.kind === "fallZone"
    ? [{ kind: wear.kind, ...stretch, falls: Math.round(wear.falls) }]
    : [{ kind: wear.kind, ...stretch, depth: share(wear.depth) }];
}

const number = (value: number): number => Number(value.toPrecision(4));
const months = (value: number): string => `${number(value)} months`;
const share = (value: number): string => `${number(100 * value)} %`;
/** Whole millimetres, or `perMetre`th parts of a metre; the small term forgives binary fractions such as 0.1499999. */
function metre(value: number, round: (value: number) => number, perMetre = 1000): string {
  const slip = round === Math.ceil ? -1e-6 : round === Math.floor ? 1e-6 : 0;
  return `${Math.max(0, round(value * perMetre + slip)) / perMetre} m`;
}
