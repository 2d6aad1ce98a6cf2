import { assessRig } from "@secondline/scenarios";
import { testRig } from "../../../scenarios/test/testRig.ts";

/** The plain rig of the tests of scenarios. */
export const rig = { ...testRig, requiredAfterFailure: 1.5, requiredClearance: 1 };
export const assessed = assessRig(rig);
