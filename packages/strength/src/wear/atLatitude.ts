/** The conditions of a rig's textile parts, and the latitude that stands in each of them. */
import type { AnchorSide, Condition, Latitude, LineEnd, Rig, WebbingSection } from "@secondline/rig";
import { HARD_KINDS } from "./hardKinds.ts";

type Change = (condition: Condition) => Condition;
interface Conditioned {
  readonly kind?: string;
  readonly condition?: Condition;
}

/** The rig with the condition of every textile part changed; a part without a condition stays without. */
export function withConditions(rig: Rig, change: Change): Rig {
  const changed = <T extends Conditioned>(part: T): T =>
    part.condition && !HARD_KINDS.has(part.kind) ? { ...part, condition: change(part.condition) } : part;
  const line = <T extends { sections: readonly WebbingSection[]; endA: LineEnd; endB: LineEnd }>(made: T): T => ({
    ...made,
    sections: made.sections.map(changed),
    endA: changed(made.endA),
    endB: changed(made.endB),
  });
  const side = (anchor: AnchorSide): AnchorSide => ({
    ...anchor,
    points: anchor.points.map(changed),
    hardware: anchor.hardware.map(changed),
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

/** The conditions of a rig's textile parts. */
export function conditionsOf(rig: Rig): readonly Condition[] {
  const found: Condition[] = [];
  withConditions(rig, (condition) => {
    found.push(condition);
    return condition;
  });
  return found;
}

/** The rig at a latitude: the months that its parts have been outside were months there. */
export function atLatitude(rig: Rig, latitude: Latitude): Rig {
  const placed = withConditions(rig, (one) => (one.monthsOutside === undefined ? one : { ...one, latitude }));
  return { ...placed, latitude };
}
