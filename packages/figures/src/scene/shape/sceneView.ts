import type { Stage } from "../stage.ts";
import type { Margins, View } from "./framing.ts";
import { anchorView, comesDownLeft, eventPoints, eventView, LEGEND_FOOT, overviewView } from "./viewPoints.ts";

/** Room for the legend below the event and for the tools above it on a small screen [px]. */
const LEGEND_HEIGHT = 62;
const TOOLS_HEIGHT = 56;
/** A picture narrower than this is a phone's [px]. */
const NARROW_WIDTH = 560;

/** Place and target of the camera, for a picture of that size [px]. */
export function sceneView(
  { recording, gap }: Pick<Stage, "recording" | "gap">,
  wanted: "event" | "overview" | "elevation" | "anchor",
  width: number,
  height: number,
): View {
  const aspect = Math.max(width, 1) / Math.max(height, 1);
  const narrow = width < NARROW_WIDTH;
  const margins: Margins = narrow
    ? {
        left: 0.07,
        right: 0.2,
        top: Math.min(TOOLS_HEIGHT / height, 0.2),
        bottom: Math.min(LEGEND_HEIGHT / height, 0.25),
      }
    : { left: 0.1, right: 0.14, top: 0.09, bottom: 0.12 };
  if (!narrow && wanted === "event" && comesDownLeft(eventPoints(recording)))
    return eventView(recording, aspect, { ...margins, bottom: Math.min(LEGEND_FOOT / height, 0.4) });
  if (wanted === "anchor") return anchorView(recording, gap);
  if (wanted === "event") return eventView(recording, aspect, margins);
  const edge = narrow ? 0.05 : 0.06;
  const top = narrow ? Math.min((TOOLS_HEIGHT + 24) / height, 0.3) : 0.12;
  return overviewView(recording, gap, aspect, { left: edge, right: edge, top, bottom: 0.1 });
}
