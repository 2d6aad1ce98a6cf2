/** Where a step back or forward is seen: what was changed far away must not happen behind somebody's back. */
import type { Documents } from "../documents/documents.ts";

export type WearPage = "record" | "log" | "teardown";

/** The view that is in sight; `wear` has pages. */
export interface InSight {
  readonly view: string;
  readonly page: WearPage;
}

/** What each page shows of the documents themselves. */
const SHOWN: Readonly<Record<WearPage, readonly (keyof Documents)[]>> = {
  record: ["record", "stocks"],
  log: ["log"],
  teardown: ["record", "log"],
};

/**
 * The view and page to go to after a step that changed these documents; undefined: the current view shows the step. `isOther`: the step
 * changed the rig or its evidence, so that verdict and dates change in sight.
 */
export function viewOfStep(
  { view, page }: InSight,
  changed: readonly (keyof Documents)[],
  isOther: boolean,
): { readonly view: "rig" | "wear"; readonly page: WearPage } | undefined {
  const ofRig = changed.includes("rig");
  if (view !== "wear") return ofRig || isOther ? undefined : { view: "wear", page: pageOf(changed) };
  if (changed.some((name) => SHOWN[page].includes(name))) return undefined;
  // The log does not depend on a rig; dates and plans do.
  if (ofRig) return isOther && page !== "log" ? undefined : { view: "rig", page };
  return { view: "wear", page: pageOf(changed) };
}

const pageOf = (changed: readonly (keyof Documents)[]): WearPage =>
  changed.every((name) => name === "log") ? "log" : "record";
