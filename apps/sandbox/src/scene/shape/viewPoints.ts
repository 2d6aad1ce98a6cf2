/** What each camera must hold in its picture, and from which side it looks. */
import type { Recording } from "@secondline/engine";
import { frameView, type Margins, type Vec3, type View } from "./framing.ts";
import type { Gap } from "./gap.ts";

/** Vertical angle of all cameras [rad]. */
export const FIELD_OF_VIEW = (32 * Math.PI) / 180;
/** Head above and feet below the tie-in, with arms and swing [m]. */
const ABOVE = 1.0;
const BELOW = 1.05;
const BESIDE = 0.7;

/** Ring and whole walker over the whole run, xyz each [m]. */
export function eventPoints(recording: Recording): Float32Array {
  const { frames } = recording;
  const stride = (frames.mainNodes + frames.backupNodes + 2) * 3;
  const step = Math.max(1, Math.floor(frames.count / 240));
  const points: number[] = [];
  for (let f = 0; f < frames.count; f += step) {
    const at = (f + 1) * stride - 6;
    const [x, y, z] = [frames.positions[at + 3]!, frames.positions[at + 4]!, frames.positions[at + 5]!];
    points.push(frames.positions[at]!, frames.positions[at + 1]!, frames.positions[at + 2]!);
    for (const [dx, dz] of [
      [0, ABOVE],
      [0, -BELOW],
      [BESIDE, 0],
      [-BESIDE, 0],
    ] as const)
      points.push(x + dx, y, z + dz);
  }
  return Float32Array.from(points);
}

/** Both anchors with their legs, the lines at rest, the walker's drop, and the ground unless it is very deep. */
export function overviewPoints(recording: Recording, gap: Gap): Float32Array {
  const points: number[] = [-2.5, 0, 0.5, gap.span + 2.5, 0, gap.rise + 0.5];
  points.push(...eventPoints(recording));
  const nodes = (recording.frames.mainNodes + recording.frames.backupNodes) * 3;
  for (let i = 0; i < nodes; i += 12) for (let c = 0; c < 3; c++) points.push(recording.frames.positions[i + c]!);
  points.push(gap.span / 2, 0, Math.max(gap.floor, -0.5 * gap.span));
  return Float32Array.from(points);
}

export function eventView(recording: Recording, aspect: number, margins: Margins): View {
  return frameView(eventPoints(recording), [0.38, 1, -0.2], FIELD_OF_VIEW, aspect, margins);
}

export function overviewView(recording: Recording, gap: Gap, aspect: number, margins: Margins): View {
  return frameView(overviewPoints(recording, gap), [0.16, 1, -0.17], FIELD_OF_VIEW, aspect, margins);
}

/** From behind anchor A at a person's height: the anchor before one's feet, the line running away to B. */
export function anchorView(gap: Gap): View {
  const position: Vec3 = [-7.2, -2.3, Math.max(gap.edgeA + 1.9, 1.5)];
  const turn = 0.13;
  const nod = Math.atan2(gap.rise, gap.span) - 0.13;
  const away = 25;
  return {
    position,
    target: [
      position[0] + away * Math.cos(turn),
      position[1] + away * Math.sin(turn),
      position[2] + away * Math.tan(nod),
    ],
  };
}
