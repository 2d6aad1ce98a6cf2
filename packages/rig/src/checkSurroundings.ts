/** Checks of what the lines hang from and over: anchors, rings, leash, ground. */
import type { Draft } from "./draft.ts";
import { GROUND_END_REACH, groundFaults } from "./groundFaults.ts";
import { missing } from "./issues.ts";
import { checkStockId, findStock } from "./ownStocks.ts";
import { fact } from "./rigFacts.ts";

export function checkAnchors(draft: Draft): void {
  for (const anchor of ["anchorA", "anchorB"]) {
    const points = draft.items(`${anchor}.points`).length;
    if (points > 1) {
      for (const key of ["legAngle", "legLength"])
        if (!draft.has(`${anchor}.${key}`)) draft.issues.push(missing(`${anchor}.${key}`));
    }
    const angle = draft.number(`${anchor}.legAngle`);
    if (points === 1 && angle !== undefined && angle > 0) {
      draft.fault(`${anchor}.legAngle`, fact("expected.noAngle", {}), fact("legs.onePoint", {}));
    }
    for (const path of [...draft.items(`${anchor}.points`), ...draft.items(`${anchor}.hardware`)]) {
      if (draft.has(`${path}.pullAngle`) && draft.text(`${path}.kind`) !== "bolt") {
        draft.fault(`${path}.pullAngle`, fact("expected.bolt", {}), fact("pull.bolt", {}));
      }
      if (!draft.has("backup") && draft.text(`${path}.carries`) === "backup") {
        draft.fault(`${path}.carries`, fact("expected.mainOrBoth", {}), fact("carries.noBackup", {}));
      }
      if (!draft.has(`${path}.rigged`) || draft.text(`${path}.kind`) === "sling") continue;
      draft.fault(`${path}.rigged`, fact("expected.sling", {}), fact("rigged.sling", {}));
    }
  }
}

export function checkRings(draft: Draft): void {
  const names = draft.items("rings").map((path) => draft.text(`${path}.name`)?.trim().toLowerCase());
  names.forEach((name, i) => {
    if (name !== undefined && names.indexOf(name) < i) {
      draft.fault(`rings[${i}].name`, fact("expected.ownName", {}), fact("rings.same", {}));
    }
  });
}

export function checkLeash(draft: Draft): void {
  checkStockId(draft, "leash.stock");
  const stock = draft.text("leash.stock");
  const form = stock === undefined ? undefined : findStock(draft, stock)?.form;
  if (form === "webbing" && (draft.number("leash.sheathSlip") ?? 0) > 0) {
    draft.fault("leash.sheathSlip", fact("expected.ropeLeash", {}), fact("leash.noSheath", {}));
  }
  const [length, tieIn, lateral] = [
    draft.number("leash.length"),
    draft.number("walker.tieIn"),
    draft.number("walker.lateral"),
  ];
  if (length === undefined || tieIn === undefined || lateral === undefined) return;
  const reach = Math.hypot(tieIn, lateral);
  if (length < reach) {
    draft.fault(
      "leash.length",
      fact("expected.atLeast", { least: { length: reach } }),
      fact("leash.short", { reach: { length: reach } }),
    );
  }
}

export function checkGround(draft: Draft): void {
  const [span, rise] = [draft.number("span"), draft.number("rise")];
  const paths = draft.items("ground");
  const points = draft.pairs("ground");
  paths.forEach((path, i) => {
    const [before, here] = [i > 0 ? draft.number(`ground[${i - 1}][0]`) : undefined, draft.number(`${path}[0]`)];
    if (before !== undefined && here !== undefined && here <= before) {
      draft.fault(`${path}[0]`, fact("expected.moreThan", { least: { length: before } }), fact("ground.backwards", {}));
    }
  });
  if (span === undefined || points === undefined || points.length === 0) return;
  checkCover(draft, points, span);
  if (rise !== undefined) checkBelow(draft, points, { span, rise });
}

function checkCover(draft: Draft, points: readonly (readonly [number, number])[], span: number): void {
  const last = points.length - 1;
  if (points[0]![0] > 0) {
    draft.fault("ground[0][0]", fact("expected.zeroOrLess", {}), fact("ground.beginsLate", {}));
  }
  if (points[last]![0] < span - GROUND_END_REACH) {
    draft.fault(
      `ground[${last}][0]`,
      fact("expected.orMore", { least: { length: span } }),
      fact("ground.endsEarly", { span: { length: span } }),
    );
  }
}

function checkBelow(
  draft: Draft,
  points: readonly (readonly [number, number])[],
  site: { span: number; rise: number },
): void {
  for (const { kind, index, x, limit } of groundFaults(points, site)) {
    const path = `ground[${index}][1]`;
    if (kind === "line") {
      draft.fault(
        path,
        fact("expected.below", { most: { length: limit } }),
        fact("ground.line", { at: { length: x } }),
      );
    } else {
      const expected = fact("expected.atMostThere", { most: { length: limit } });
      draft.fault(path, expected, fact("ground.anchor", { anchor: kind === "anchorA" ? "A" : "B" }));
    }
  }
}
