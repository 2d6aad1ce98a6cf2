/** Where a rig hangs, in the rig and in every condition that counts months outside. */
import type { AnchorPart, Condition, Latitude, LineEnd, Rig, WebbingSection } from "./rig.ts";

type Change = (condition: Condition) => Condition;

/** The rig with the condition of every textile part changed; a part without a condition stays without. */
export function withConditions(rig: Rig, change: Change): Rig {
  const changed = <T extends { readonly condition?: Condition }>(part: T): T =>
    part.condition === undefined ? part : { ...part, condition: change(part.condition) };
  const line = <T extends { sections: readonly WebbingSection[]; endA: LineEnd; endB: LineEnd }>(made: T): T => ({
    ...made,
    sections: made.sections.map(changed),
    endA: changed(made.endA),
    endB: changed(made.endB),
  });
  const parts = (list: readonly AnchorPart[]) =>
    list.map((part) => (part.kind === "sling" || part.kind === "other" ? changed(part) : part));
  const side = (anchor: Rig["anchorA"]) => ({
    ...anchor,
    points: parts(anchor.points),
    hardware: parts(anchor.hardware),
  });
  const { backup } = rig;
  return {
    ...rig,
    anchorA: side(rig.anchorA),
    anchorB: side(rig.anchorB),
    main: line(rig.main),
    ...(backup && { backup: { ...line(backup), connections: backup.connections.map(changed) } }),
    leash: changed(rig.leash),
    harness: changed(rig.harness),
  };
}

/** The rig at a latitude: the months that its parts have been outside were months there. */
export function atLatitude(rig: Rig, latitude: Latitude): Rig {
  const placed = withConditions(rig, (one) => (one.monthsOutside === undefined ? one : { ...one, latitude }));
  return { ...placed, latitude };
}
