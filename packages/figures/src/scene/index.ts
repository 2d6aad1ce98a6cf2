export {
  createElevationScene,
  drawElevation,
  drawWithWords,
  type ElevationDrawing,
  flatProjector,
  type Size,
} from "./elevation/drawElevation.ts";
export { FlatHand } from "./elevation/flatHand.ts";
export { coveredEdges, type FlatView, fitFlat, isSameView } from "./elevation/flatView.ts";
export { largestTension } from "./largestTension.ts";
export { LEGEND_SAMPLE_LENGTH, type LegendFacts, legendOf } from "./legend.ts";
export { drawLegend, legendHeight } from "./legendInk.ts";
export { lineHeight } from "./lineHeight.ts";
export { createLiveFrame, type LiveFrame, sampleFrame } from "./liveFrame.ts";
export type { Label, LabelEdges } from "./notes/labelLayout.ts";
export type { NotesCanvas, Projector } from "./notes/noteInk.ts";
export { NoteLayout, noteColour, noteFont, writeNotes } from "./notes/noteLayout.ts";
export type { NoteOptions, Notes, SceneNote } from "./notes/notes.ts";
export { ringNode } from "./notes/partPlace.ts";
export { sceneWords } from "./sceneWords.ts";
export {
  BODY_FRAGMENT,
  BODY_VERTEX,
  RIBBON_FRAGMENT,
  RIBBON_VERTEX,
  RIDGE_FRAGMENT,
  ROCK_FRAGMENT,
  ROCK_VERTEX,
  SOLID_FRAGMENT,
  SOLID_VERTEX,
} from "./shaders.ts";
export { createAnchorGear } from "./shape/anchorGear.ts";
export { BONES, bodyMesh, poseBones } from "./shape/bodyMesh.ts";
export { cuffsOf } from "./shape/cuffs.ts";
export type { View } from "./shape/framing.ts";
export { contourInterval, type Gap, hazeOf } from "./shape/gap.ts";
export type { MasterPoint } from "./shape/masterPoint.ts";
export { LEASH_POINTS, leashRibbon, lineRibbon } from "./shape/movingRibbon.ts";
export type { Ribbon } from "./shape/ribbon.ts";
export { ridgeMesh } from "./shape/ridges.ts";
export { sceneView } from "./shape/sceneView.ts";
export { scaleEnd, TABLE_SIZE, tensionGradient, tensionTable, tensionTexels } from "./shape/tensionColour.ts";
export { terrainMesh, treePlaces } from "./shape/terrain.ts";
export { CONIFER_PROFILE, KNOT_PROFILE } from "./shape/turned.ts";
export { FIELD_OF_VIEW } from "./shape/viewPoints.ts";
export { createStage, hasMoved, type Stage } from "./stage.ts";
export { STONE, type StoneColours } from "./stone.ts";
export { CLOTHES_COLOURS, WALKER_TONES } from "./walkerTones.ts";
export type { WeakPlace } from "./weakPlace.ts";
