import { type LineStock, stocksIn } from "@secondline/rig";
import { useMemo } from "react";
import { useSandbox } from "../state/useSandbox.ts";

/** Webbings and ropes that the open rig brings along. */
export function useOwnStocks(): readonly LineStock[] {
  const document = useSandbox((state) => state.document.history.present.rig);
  return useMemo(() => stocksIn(document), [document]);
}
