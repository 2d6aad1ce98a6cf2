import { useFrame } from "@react-three/fiber";
import { useMemo } from "react";
import type { LiveFrame } from "../liveFrame.ts";
import { createRibbon, fillRibbon } from "../shape/ribbon.ts";
import { ribbonGeometry, ribbonMaterial, touchRibbon } from "./geometry.ts";
import type { Look } from "./look.ts";
import { useOwned } from "./useOwned.ts";

export interface WebbingProps {
  readonly live: LiveFrame;
  readonly look: Look;
  readonly line: "main" | "backup";
  /** A faint line in one colour, for what was. */
  readonly ghost?: string | undefined;
  readonly chosen?: boolean;
}

/** Main line or backup: a ribbon that follows the nodes, coloured by tension. */
export function Webbing({ live, look, line, ghost, chosen = false }: WebbingProps) {
  const ribbon = useMemo(() => lineRibbon(live, line), [live, line]);
  const geometry = useOwned(() => ribbonGeometry(ribbon), [ribbon]);
  const material = useOwned(() => {
    if (ghost !== undefined) return ribbonMaterial(look, { mode: "flat", width: 0.01, minPx: 1.2, flat: ghost });
    return ribbonMaterial(look, line === "main" ? MAIN : BACKUP);
  }, [look, line, ghost]);
  material.uniforms.uChosen!.value = chosen ? 1 : 0;
  useFrame(() => {
    const first = line === "main" ? 0 : live.mainNodes;
    fillRibbon(ribbon, live.positions, first, live.tensions, line === "main" ? 0 : live.mainNodes - 1);
    touchRibbon(geometry);
  }, -1);
  return (
    <mesh geometry={geometry} material={material} frustumCulled={false} renderOrder={ghost === undefined ? 2 : 1} />
  );
}

const MAIN = { mode: "main", width: 0.035, minPx: 4.2 } as const;
const BACKUP = { mode: "backup", width: 0.03, minPx: 3.4 } as const;

function lineRibbon(live: LiveFrame, line: "main" | "backup") {
  const { problem, frames } = live.recording;
  const chord = Math.hypot(problem.span, problem.rise);
  if (line === "main") return createRibbon(frames.mainNodes, frames.fractions, 0, chord);
  return createRibbon(
    frames.backupNodes,
    frames.fractions,
    frames.mainNodes,
    chord * (1 + (problem.backup?.slack ?? 0)),
  );
}
