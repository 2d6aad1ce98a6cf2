import type { Rig } from "@secondline/rig";
import { type Sketched, sketch } from "@secondline/workbench";
import { useEffect, useState } from "react";
import { later } from "../state/pageServices.ts";
import { pageRunner } from "../worker/runner.ts";

/** The rig at rest; the last one that there was while another is worked out, or is none. */
export function useSketch(rig: Rig | undefined): Sketched | undefined {
  const [sketched, setSketched] = useState<Sketched>();
  useEffect(() => {
    if (!rig) return undefined;
    return sketch(rig, { runner: pageRunner(), newId: () => crypto.randomUUID(), later }, setSketched);
  }, [rig]);
  return sketched;
}
