/** Points that each camera must have in its picture, and the side from which it looks. */
import type { Recording } from "@secondline/engine";
import { frameView, type Margins, type Vec3, type View } from "./framing.ts";
import type { Gap } from "./gap.ts";

/** Vertical angle of all cameras [rad]. */
export const FIELD_OF_VIEW = (32 * Math.PI) / 180;
/** Head above and feet below the tie-in, with arms and swing [m]. */
const ROOM_ABOVE = 1.0;
const ROOM_BELOW = 1.05;
const ROOM_BESIDE = 0.7;

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
      [0, ROOM_ABOVE],
      [0, -ROOM_BELOW],
      [ROOM_BESIDE, 0],
      [-ROOM_BESIDE, 0],
    ] as const)
      points.push(x + dx, y, z + dz);
  }
  return Float32Array.from(points);
}

/** Height of the legend over the lower left corner of the picture, with its edge [px]. */
export const LEGEND_FOOT = 148;

/** Whether the walker comes down near the left edge of the framed points, where the legend lies. `points`: of `eventPoints`. */
export function comesDownLeft(points: Float32Array): boolean {
  let [least, most, low] = [Infinity, -Infinity, 0];
  for (let i = 0; i < points.length; i += 3) {
    least = Math.min(least, points[i]!);
    most = Math.max(most, points[i]!);
    if (points[i + 2]! < points[low + 2]!) low = i;
  }
  return points[low]! - least < 0.35 * (most - least) && most - least > 4 * ROOM_BESIDE;
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

/** Place of the eye behind anchor A: back, and to the side [m]. */
const DISTANCE_BEHIND_ANCHOR = 7.2;
const DISTANCE_BESIDE_ANCHOR = 2.3;
/** Height of the eyes, and the most they may be raised to look over the edge [m]. */
const EYE_HEIGHT = 1.8;
const MOST_EYE_HEIGHT = 9;

/**
 * From behind anchor A: the anchor before one's feet, the line running away to B. Raised as far as it takes to see the
 * walker's lowest point over the edge.
 */
export function anchorView(recording: Recording, gap: Gap): View {
  const fall = eventPoints(recording);
  let [low, x] = [Infinity, gap.span / 2];
  for (let i = 0; i < fall.length; i += 3) if (fall[i + 2]! < low) [low, x] = [fall[i + 2]!, fall[i]!];
  const edge = gap.edgeA + 0.15;
  const share = DISTANCE_BEHIND_ANCHOR / (DISTANCE_BEHIND_ANCHOR + Math.max(x, 1));
  const over = (edge - share * low) / (1 - share);
  const height = Math.min(Math.max(gap.edgeA + EYE_HEIGHT, over), gap.edgeA + MOST_EYE_HEIGHT);
  const down = (z: number, away: number) => Math.atan2(z - height, away);
  const lowest = Math.min(down(low, DISTANCE_BEHIND_ANCHOR + x), down(gap.edgeA - 0.2, DISTANCE_BEHIND_ANCHOR - 1.5));
  const highest = Math.max(down(gap.rise, DISTANCE_BEHIND_ANCHOR + gap.span), -0.02) + 0.12;
  const nod = Math.min(0.5 * (lowest + highest), highest - 0.42 * FIELD_OF_VIEW);
  const turn = 0.13;
  const away = 25;
  const position: Vec3 = [-DISTANCE_BEHIND_ANCHOR, -DISTANCE_BESIDE_ANCHOR, height];
  return {
    position,
    target: [position[0] + away * Math.cos(turn), position[1] + away * Math.sin(turn), height + away * Math.tan(nod)],
  };
}
