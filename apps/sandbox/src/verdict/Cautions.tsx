import { outcomeOf } from "@secondline/workbench";
import { useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { CautionFoot } from "./CautionFoot.tsx";

/** The cautions of the verdict in sight, at the foot of its column; without a verdict, the cautions that always hold. */
export function Cautions() {
  const facts = useSandbox((state) => outcomeOf(state)?.cautions);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  return <CautionFoot cautions={facts ? words.cautions(rig, facts) : words.generalCautions()} across={false} />;
}
