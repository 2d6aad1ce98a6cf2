/** Numbers the points of the statics problem, and says which point each node of the lines is. */
import type { Line } from "../line/line.ts";
import type { Model } from "../line/model.ts";
import type { Legs } from "../rigging/legs.ts";

/** Which point each node is; joined nodes share one. Rock points of the legs come last. */
export interface Numbering {
  readonly main: readonly number[];
  readonly backup: readonly number[];
  readonly ring: number;
  readonly masters: { readonly A: number; readonly B: number };
  readonly rocks: { readonly A: readonly number[]; readonly B: readonly number[] };
  readonly count: number;
}

/** Points in order of fraction, so that coupled ones are close. */
export function numberPoints(model: Model, legs: Legs): Numbering {
  const { main, backup } = model;
  const joined = new Map(model.joints.map((joint) => [joint.backup, joint.main]));
  const mainPoints = new Array<number>(main.nodes);
  const backupPoints = new Array<number>(backup?.nodes ?? 0);
  const ringAt = main.fractions[model.start]!;
  let next = 1;
  let ring = -1;
  let j = 0;
  const takeBackup = (below: number) => {
    for (; backup && j < backup.nodes && backup.fractions[j]! < below; j++)
      if (!joined.has(j)) backupPoints[j] = next++;
  };
  for (let i = 0; i < main.nodes; i++) {
    takeBackup(main.fractions[i]!);
    if (ring < 0 && main.fractions[i]! >= ringAt) ring = next++;
    mainPoints[i] = main.seam >= 0 && i === main.seam + 1 ? mainPoints[i - 1]! : next++;
  }
  takeBackup(2);
  const masters = { A: 0, B: next++ };
  for (const [b, m] of joined) backupPoints[b] = mainPoints[m]!;
  if (legs.A.length > 0) {
    mainPoints[0] = masters.A;
    if (backup) backupPoints[0] = masters.A;
  }
  if (legs.B.length > 0) {
    mainPoints[main.nodes - 1] = masters.B;
    if (backup) backupPoints[backup.nodes - 1] = masters.B;
  }
  const rocks = { A: legs.A.map(() => next++), B: legs.B.map(() => next++) };
  return { main: mainPoints, backup: backupPoints, ring, masters, rocks, count: next };
}

/** A point in words. */
export function pointName({ main, backup }: Model, points: Numbering, point: number): string {
  const place = (line: Line, i: number) =>
    `${line.name === "main" ? "main line" : "backup"} at ${line.fractions[i]!.toFixed(3)} of its length`;
  const onMain = points.main.indexOf(point);
  if (onMain >= 0) return place(main, onMain);
  const onBackup = points.backup.indexOf(point);
  return backup && onBackup >= 0 ? place(backup, onBackup) : "ring";
}
