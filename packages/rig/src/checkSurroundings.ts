/** Checks of what the lines hang from and over: anchors, rings, leash, ground. */
import type { Draft } from "./draft.ts";
import { formatLength } from "./format.ts";
import { groundFaults } from "./groundFaults.ts";
import { missing } from "./issues.ts";
import { checkStockId, findStock } from "./ownStocks.ts";

export function checkAnchors(draft: Draft): void {
  for (const anchor of ["anchorA", "anchorB"]) {
    const points = draft.items(`${anchor}.points`).length;
    if (points > 1) {
      for (const key of ["legAngle", "legLength"])
        if (!draft.has(`${anchor}.${key}`)) draft.issues.push(missing(`${anchor}.${key}`));
    }
    const angle = draft.number(`${anchor}.legAngle`);
    if (points === 1 && angle !== undefined && angle > 0) {
      draft.fault(`${anchor}.legAngle`, "no angle", "One rock point has no legs with an angle between them.");
    }
    for (const path of [...draft.items(`${anchor}.points`), ...draft.items(`${anchor}.hardware`)]) {
      if (draft.has(`${path}.pullAngle`) && draft.text(`${path}.kind`) !== "bolt") {
        draft.fault(`${path}.pullAngle`, "a bolt", "Only a bolt has an axis that the pull makes an angle with.");
      }
      if (!draft.has(`${path}.rigged`) || draft.text(`${path}.kind`) === "sling") continue;
      draft.fault(`${path}.rigged`, "a sling", "Only a sling is rigged straight, choked or in a basket.");
    }
  }
}

export function checkRings(draft: Draft): void {
  const names = draft.items("rings").map((path) => draft.text(`${path}.name`)?.trim().toLowerCase());
  names.forEach((name, i) => {
    if (name !== undefined && names.indexOf(name) < i) {
      draft.fault(`rings[${i}].name`, "a name of its own", "Two rings have the same name.");
    }
  });
}

export function checkLeash(draft: Draft): void {
  checkStockId(draft, "leash.stock");
  const stock = draft.text("leash.stock");
  const form = stock === undefined ? undefined : findStock(draft, stock)?.form;
  if (form === "webbing" && (draft.number("leash.sheathSlip") ?? 0) > 0) {
    draft.fault("leash.sheathSlip", "a leash of rope", "Flat webbing has no sheath that could slip.");
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
      `at least ${formatLength(reach)}`,
      `The leash is shorter than the ${formatLength(reach)} from the line to the tie-in: nobody could stand up on it.`,
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
      draft.fault(
        `${path}[0]`,
        `more than ${formatLength(before)}`,
        "The ground profile must go on from A to B, from point to point.",
      );
    }
  });
  if (span === undefined || points === undefined || points.length === 0) return;
  checkCover(draft, points, span);
  if (rise !== undefined) checkBelow(draft, points, { span, rise });
}

function checkCover(draft: Draft, points: readonly (readonly [number, number])[], span: number): void {
  const last = points.length - 1;
  if (points[0]![0] > 0) {
    draft.fault(
      "ground[0][0]",
      "0 m or less",
      "The ground profile begins beyond anchor A; it must cover the whole span.",
    );
  }
  if (points[last]![0] < span) {
    draft.fault(
      `ground[${last}][0]`,
      `${formatLength(span)} or more`,
      `The ground profile ends before anchor B; it must cover the whole span of ${formatLength(span)}.`,
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
        `below ${formatLength(limit)}`,
        `At ${formatLength(x)} along the span the ground is as high as the line.`,
      );
    } else {
      const where = kind === "anchorA" ? "anchor A" : "anchor B";
      draft.fault(path, `at most ${formatLength(limit)} there`, `The ground at ${where} is above the anchor.`);
    }
  }
}
