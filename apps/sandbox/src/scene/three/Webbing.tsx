import { useFrame } from "@react-three/fiber";
import { type LiveFrame, lineRibbon } from "@secondline/figures/scene";
import { useMemo } from "react";
import { ribbonGeometry, ribbonMaterial, touchRibbon } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { useOwned } from "./useOwned.ts";

export interface WebbingProps {
  readonly live: LiveFrame;
  readonly look: SceneLook;
  readonly line: "main" | "backup";
  /** A faint line in one colour, for what was. */
  readonly ghost?: string | undefined;
  readonly chosen?: boolean;
}

/** Main line or backup: a ribbon that follows the nodes, coloured by tension. */
export function Webbing({ live, look, line, ghost, chosen = false }: WebbingProps) {
  const { ribbon, update } = useMemo(() => lineRibbon(live, line), [live, line]);
  const geometry = useOwned(() => ribbonGeometry(ribbon), [ribbon]);
  const material = useOwned(() => {
    if (ghost !== undefined) return ribbonMaterial(look, { mode: "flat", width: 0.01, minPx: 1.2, flat: ghost });
    return ribbonMaterial(look, line === "main" ? MAIN : BACKUP);
  }, [look, line, ghost]);
  material.uniforms.uChosen!.value = chosen ? 1 : 0;
  useFrame(() => {
    update();
    touchRibbon(geometry);
  }, -1);
  return (
    <mesh geometry={geometry} material={material} frustumCulled={false} renderOrder={ghost === undefined ? 2 : 1} />
  );
}

const MAIN = { mode: "main", width: 0.035, minPx: 4.2 } as const;
const BACKUP = { mode: "backup", width: 0.03, minPx: 3.4 } as const;
