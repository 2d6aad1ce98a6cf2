/** Where a rig that was just opened is seen. */
import type { ViewName } from "./state.ts";

/** The view to be in once another rig was opened: lessons, layouts and the questions of a new rig show nothing of the open rig. */
export function viewOfOpened(view: ViewName): ViewName {
  switch (view) {
    case "lessons":
    case "layouts":
    case "newRig":
      return "rig";
    case "rig":
    case "howFar":
    case "wear":
    case "card":
      return view;
  }
}
