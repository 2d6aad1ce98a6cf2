/** Checks of the main line and the backup: lengths that fit, tension that the webbing holds, wear inside its section. */
import { strainAt } from "./curve.ts";
import type { Draft } from "./draft.ts";
import { chord, naturalLengths } from "./geometry.ts";
import { missing } from "./issues.ts";
import { checkStockId, findStock, type PartialStock } from "./ownStocks.ts";
import { fact } from "./rigFacts.ts";

type LineName = "main" | "backup";

const sectionStock = (draft: Draft, path: string): PartialStock | undefined => {
  const id = draft.text(`${path}.stock`);
  return id === undefined ? undefined : findStock(draft, id);
};

export function checkLines(draft: Draft): void {
  checkSections(draft, "main");
  checkTension(draft);
  if (!draft.has("backup")) return;
  checkSections(draft, "backup");
  checkSlack(draft);
  checkJoints(draft);
}

function anchorDistance(draft: Draft): number | undefined {
  const [span, rise] = [draft.number("span"), draft.number("rise")];
  return span === undefined || rise === undefined ? undefined : chord({ span, rise });
}

/** Slow-pull tension at which section lengths are counted, and the distance that they fill. */
function lineFit(draft: Draft, line: LineName): { distance: number; tension: number } | undefined {
  const distance = anchorDistance(draft);
  if (distance === undefined) return undefined;
  if (line === "main") {
    const tension = draft.number("main.pretension");
    return tension === undefined ? undefined : { distance, tension };
  }
  const natural = backupLength(draft, distance);
  return natural === undefined ? undefined : { distance: natural, tension: 0 };
}

function backupLength(draft: Draft, distance: number): number | undefined {
  if (draft.has("backup.length")) return draft.number("backup.length");
  const slack = draft.has("backup.slack") ? draft.number("backup.slack") : undefined;
  return slack === undefined ? undefined : distance * (1 + slack);
}

function checkSections(draft: Draft, line: LineName): void {
  const paths = draft.items(`${line}.sections`);
  for (const path of paths) checkStockId(draft, `${path}.stock`);
  const open = paths.filter((path) => !draft.has(`${path}.length`));
  if (paths.length > 0 && open.length === 0) {
    const last = paths.at(-1)!;
    draft.fault(`${last}.length`, fact("expected.openSection", {}), fact("sections.noneOpen", {}));
  }
  for (const path of open.slice(1)) {
    draft.fault(`${path}.length`, fact("expected.sectionLength", {}), fact("sections.manyOpen", {}));
  }
  const lengths = sectionLengths(draft, line, paths, open.length === 1);
  paths.forEach((path, i) => {
    checkWear(draft, path, lengths[i]);
  });
}

/** Natural lengths of the sections as far as they can be told; a fault when those with a length leave no rest. */
function sectionLengths(
  draft: Draft,
  line: LineName,
  paths: readonly string[],
  oneOpen: boolean,
): readonly (number | undefined)[] {
  const given = paths.map((path) => (draft.has(`${path}.length`) ? draft.number(`${path}.length`) : undefined));
  const readable = paths.every((path, i) => !draft.has(`${path}.length`) || given[i] !== undefined);
  const fit = lineFit(draft, line);
  // The backup is measured at no tension, where no curve has a say: an unreadable one hides nothing.
  const curves = paths.map((path) => sectionStock(draft, path)?.curve ?? (line === "backup" ? ANY_CURVE : undefined));
  if (!fit || !oneOpen || !readable || !curves.every((curve) => curve !== undefined)) return given;
  const pieces = curves.map((curve, i) => ({ curve, length: given[i] }));
  const lengths = naturalLengths(fit.distance, fit.tension, pieces);
  if (lengths) return lengths;
  const longest = given.reduce<number>((best, length, i) => ((length ?? 0) > (given[best] ?? 0) ? i : best), 0);
  const reach = pieces.reduce((sum, p) => sum + (p.length ?? 0) * (1 + (strainAt(p.curve, fit.tension) ?? 0)), 0);
  const told = { reach: { length: reach }, distance: { length: fit.distance } };
  draft.fault(
    `${paths[longest]}.length`,
    fact("expected.sectionsLeaving", { distance: told.distance }),
    fit.tension > 0
      ? fact("sections.tooLongStretched", { ...told, tension: { force: fit.tension } })
      : fact("sections.tooLong", told),
  );
  return given;
}

const ANY_CURVE = [
  [0, 0],
  [1, 1],
] as const;

/** Every wear lies in its section. */
function checkWear(draft: Draft, section: string, sectionLength: number | undefined): void {
  for (const path of draft.items(`${section}.wear`)) {
    const extent = wearExtent(draft, path);
    if (!extent) continue;
    const [from, to, key] = extent;
    if (from >= to && key === "to") {
      draft.fault(`${path}.to`, fact("expected.fartherTo", {}), fact("wear.backwards", {}));
    } else if (from < 0) {
      draft.fault(`${path}.${key}`, fact("expected.insideSection", {}), fact("wear.beyondA", {}));
    } else if (sectionLength !== undefined && to > sectionLength) {
      draft.fault(
        `${path}.${key}`,
        fact("expected.atMost", { most: { length: sectionLength } }),
        fact("wear.beyond", { to: { length: to }, length: { length: sectionLength } }),
      );
    }
  }
}

function wearExtent(draft: Draft, path: string): [from: number, to: number, key: "at" | "to"] | undefined {
  if (draft.has(`${path}.at`)) {
    const at = draft.number(`${path}.at`);
    const length = draft.has(`${path}.length`) ? draft.number(`${path}.length`) : 0;
    return at === undefined || length === undefined ? undefined : [at - length / 2, at + length / 2, "at"];
  }
  const [from, to] = [draft.number(`${path}.from`), draft.number(`${path}.to`)];
  return from === undefined || to === undefined ? undefined : [from, to, "to"];
}

/** The standing tension is held by every webbing and end on its way. */
function checkTension(draft: Draft): void {
  const tension = draft.number("main.pretension");
  if (tension === undefined) return;
  draft.items("main.sections").forEach((path, i) => {
    const rated = sectionStock(draft, path)?.rated?.strength;
    if (rated === undefined || tension < rated) return;
    draft.fault(
      "main.pretension",
      fact("expected.lessThan", { most: { force: rated } }),
      fact("tension.webbing", { tension: { force: tension }, section: i + 1, rated: { force: rated } }),
    );
  });
  checkEnd(draft, "main.endA", "A", tension);
  checkEnd(draft, "main.endB", "B", tension);
}

function checkEnd(draft: Draft, end: string, anchor: "A" | "B", tension: number): void {
  const [strength, slip] = [draft.number(`${end}.strength`), draft.number(`${end}.slipLoad`)];
  const told = { anchor, tension: { force: tension } };
  const expected = fact("expected.moreThan", { least: told.tension });
  if (strength !== undefined && tension >= strength) {
    draft.fault(`${end}.strength`, expected, fact("tension.end", told));
  }
  if (slip !== undefined && tension >= slip) {
    draft.fault(`${end}.slipLoad`, expected, fact("tension.slip", told));
  }
}

function checkSlack(draft: Draft): void {
  const [slack, length] = [draft.has("backup.slack"), draft.has("backup.length")];
  if (!slack && !length) draft.issues.push(missing("backup.slack"));
  if (slack && length) {
    draft.fault("backup.length", fact("expected.slackOrLength", {}), fact("backup.both", {}));
  }
  const [distance, natural] = [anchorDistance(draft), draft.number("backup.length")];
  if (distance !== undefined && natural !== undefined && natural < distance) {
    draft.fault(
      "backup.length",
      fact("expected.atLeast", { least: { length: distance } }),
      fact("backup.short", { distance: { length: distance } }),
    );
  }
  if (distance !== undefined && natural !== undefined && natural > 2 * distance) {
    draft.fault("backup.length", fact("expected.slackAtMost", { most: { share: 1 } }), fact("backup.long", {}));
  }
}

/** No two connections or tapes at the same place. */
function checkJoints(draft: Draft): void {
  const seen = new Map<number, string>();
  for (const path of [...draft.items("backup.connections"), ...draft.items("backup.tapes")]) {
    const at = draft.number(`${path}.at`);
    if (at === undefined) continue;
    const other = seen.get(at);
    if (other) draft.fault(`${path}.at`, fact("expected.ownPlace", {}), fact("joints.same", { other }));
    seen.set(at, path);
  }
}
