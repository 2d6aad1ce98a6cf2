import {
  createSideDesk,
  type SideDesk,
  type SideHost,
  type SideInSight,
  type SideView,
  sideInSight,
} from "@secondline/workbench";
import { useRef, useState } from "react";
import { useStore } from "zustand";

/** A hand in a drawing from the side, and what is seen there. */
export type SideInHand = Omit<SideDesk, "store"> & SideInSight;

export function useSideDesk(side: SideView, host: SideHost): SideInHand {
  const given = useRef({ side, host });
  given.current = { side, host };
  const [desk] = useState(() => createSideDesk(() => given.current));
  const state = useStore(desk.store);
  return { ...desk, ...sideInSight(state, side) };
}
