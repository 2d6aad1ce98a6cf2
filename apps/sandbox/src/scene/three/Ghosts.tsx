import { useFrame } from "@react-three/fiber";
import { hasMoved } from "@secondline/figures/scene";
import { useRef } from "react";
import type { Group } from "three";
import type { PartProps } from "./look.ts";
import { Walker } from "./Walker.tsx";
import { Webbing } from "./Webbing.tsx";

/** What was: the state before the event, and the run before this one. */
export function Ghosts({ stage, look }: PartProps) {
  const before = useRef<Group>(null);
  useFrame(() => {
    // Under the very same body a ghost is only noise.
    before.current!.visible = hasMoved(stage);
  }, -1);
  return (
    <>
      <group ref={before}>
        <Webbing live={stage.before} look={look} line="main" ghost={look.palette.ghost} />
        <Walker live={stage.before} look={look} as="ghost" />
      </group>
      {stage.previous && (
        <>
          <Webbing live={stage.previous} look={look} line="main" ghost={look.palette.lineBackup} />
          {stage.previous.backupNodes > 1 && (
            <Webbing live={stage.previous} look={look} line="backup" ghost={look.palette.lineBackup} />
          )}
          <Walker live={stage.previous} look={look} as="previous" />
        </>
      )}
    </>
  );
}
