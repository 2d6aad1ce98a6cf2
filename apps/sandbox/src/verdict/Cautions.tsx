import { CAUTIONS } from "@secondline/scenarios";
import { useSandbox } from "../state/useSandbox.ts";
import { CautionFoot } from "./CautionFoot.tsx";

/** Those of the verdict in sight, at the foot of its column; without a verdict, those that always hold. */
export function Cautions() {
  const cautions = useSandbox((state) => state.run.verdict?.outcome.cautions) ?? CAUTIONS;
  return <CautionFoot cautions={cautions} across={false} />;
}
