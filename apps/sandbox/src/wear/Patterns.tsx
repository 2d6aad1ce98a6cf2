import type { LaneKind } from "@secondline/workbench/record";

/** Every kind of mark has a pattern of its own, so that it can be told without colour. */
export const KIND_COLOUR: Readonly<Record<LaneKind, string>> = {
  span: "var(--soft-ink)",
  falls: "var(--line-main)",
  clamp: "var(--line-backup)",
  sewn: "var(--line-connection)",
  damage: "var(--fails-ink)",
};

export function Patterns({ id }: { id: string }) {
  const pattern = (name: string, size: number, d: string, colour: string, width = 1.2) => (
    <pattern id={`${id}-${name}`} width={size} height={size} patternUnits="userSpaceOnUse">
      <path d={d} stroke={colour} strokeWidth={width} fill="none" strokeLinecap="round" />
    </pattern>
  );
  return (
    <defs>
      {pattern("span", 6, "M0 3h6", "var(--rule)", 2)}
      {pattern("falls", 6, "M1.5 1.5h.01M4.5 4.5h.01", KIND_COLOUR.falls, 2.2)}
      {pattern("clamp", 5, "M0 0l5 5M5 0l-5 5", KIND_COLOUR.clamp)}
      {pattern("sewn", 6, "M0 4l3-3 3 3", KIND_COLOUR.sewn, 1.4)}
      {pattern("damage", 5, "M0 5l5-5M-1 1l2-2M4 6l2-2", KIND_COLOUR.damage, 1.4)}
      {pattern("short", 6, "M0 6l6-6M-1 1l2-2M5 7l2-2", "var(--fails-ink)", 1.3)}
      {pattern("off", 7, "M0 0l7 7", "var(--rule)", 1.2)}
    </defs>
  );
}
