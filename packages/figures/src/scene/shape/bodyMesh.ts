/** The walker's body as one mesh: tapered turned shapes, each bound to one bone, with the colour of the garment there. */
import { WALKER_TONES, type WalkerTone } from "../walkerTones.ts";
import { type BodyJoint, boneMatrix, jointAt, type WalkerPose } from "./walkerPose.ts";

/** Bones in the order of the mesh's `bone` attribute: from joint, to joint. */
export const BONES: readonly (readonly [BodyJoint, BodyJoint])[] = [
  ["pelvis", "chest"],
  ["neck", "head"],
  ["shoulderL", "elbowL"],
  ["shoulderR", "elbowR"],
  ["elbowL", "wristL"],
  ["elbowR", "wristR"],
  ["hipL", "kneeL"],
  ["hipR", "kneeR"],
  ["kneeL", "ankleL"],
  ["kneeR", "ankleR"],
  ["ankleL", "toeL"],
  ["ankleR", "toeR"],
];
const BONE_JOINTS = BONES.map(([from, to]) => [jointAt(from), jointAt(to)] as const);

/** Matrices of all bones one after the other, column by column. */
export function poseBones(out: Float32Array, pose: WalkerPose): void {
  for (let i = 0; i < BONE_JOINTS.length; i++) boneMatrix(out, 16 * i, pose, BONE_JOINTS[i]![0], BONE_JOINTS[i]![1]);
}

export interface BodyMesh {
  readonly position: Float32Array;
  readonly normal: Float32Array;
  /** Bone and tone of every vertex. */
  readonly binding: Float32Array;
  readonly index: Uint16Array;
}

/** Radius along the bone: [place along it, radius] [m]. */
type Turning = readonly (readonly [z: number, radius: number])[];
interface Piece {
  readonly bone: number;
  readonly tone: WalkerTone;
  readonly turning: Turning;
  /** Widths to the side and to the front over the radius [-]. */
  readonly wide?: number;
  readonly deep?: number;
  /** Offset to the back (the bone's y axis) [m]. */
  readonly shift?: number;
}

const TRUNK: Turning = [
  [0.062, 0.13],
  [0.075, 0.147],
  [0.18, 0.134],
  [0.33, 0.152],
  [0.43, 0.158],
  [0.49, 0.13],
  [0.53, 0.07],
  [0.56, 0.045],
];
const SEAT: Turning = [
  [-0.13, 0],
  [-0.11, 0.07],
  [-0.06, 0.125],
  [0, 0.142],
  [0.062, 0.138],
  [0.08, 0.07],
];
const BELT: Turning = [
  [0.0, 0.14],
  [0.012, 0.153],
  [0.05, 0.151],
  [0.062, 0.138],
];
const HEAD: Turning = [
  [-0.04, 0.05],
  [0.04, 0.049],
  [0.06, 0.062],
  [0.09, 0.083],
  [0.14, 0.095],
  [0.19, 0.094],
  [0.22, 0.08],
  [0.25, 0],
];
const HAIR: Turning = [
  [0.1, 0.075],
  [0.13, 0.096],
  [0.18, 0.104],
  [0.225, 0.09],
  [0.255, 0.05],
  [0.265, 0],
];
const UPPER_ARM: Turning = [
  [-0.055, 0],
  [-0.045, 0.035],
  [0, 0.057],
  [0.06, 0.053],
  [0.2, 0.042],
  [0.29, 0.037],
  [0.315, 0.02],
  [0.32, 0],
];
const FOREARM: Turning = [
  [-0.03, 0],
  [-0.015, 0.03],
  [0.06, 0.039],
  [0.19, 0.027],
  [0.25, 0.024],
  [0.29, 0.036],
  [0.34, 0.033],
  [0.37, 0.012],
  [0.375, 0],
];
const THIGH: Turning = [
  [-0.08, 0],
  [-0.06, 0.06],
  [0, 0.087],
  [0.1, 0.083],
  [0.3, 0.061],
  [0.45, 0.053],
  [0.48, 0.03],
  [0.48, 0],
];
const LEG_LOOP: Turning = [
  [0.055, 0.084],
  [0.063, 0.096],
  [0.095, 0.094],
  [0.105, 0.08],
];
const SHIN: Turning = [
  [-0.04, 0],
  [-0.02, 0.04],
  [0.1, 0.057],
  [0.2, 0.05],
  [0.36, 0.035],
  [0.42, 0.036],
  [0.45, 0.02],
  [0.46, 0],
];
const FOOT: Turning = [
  [-0.085, 0],
  [-0.07, 0.034],
  [-0.02, 0.046],
  [0.08, 0.042],
  [0.16, 0.032],
  [0.185, 0.015],
  [0.19, 0],
];

const PIECES: readonly Piece[] = [
  { bone: 0, tone: "trousers", turning: SEAT, wide: 1.1, deep: 0.82 },
  { bone: 0, tone: "shirt", turning: TRUNK, wide: 1.12, deep: 0.76 },
  { bone: 0, tone: "harness", turning: BELT, wide: 1.1, deep: 0.84 },
  { bone: 1, tone: "skin", turning: HEAD, wide: 0.9, deep: 1.05, shift: -0.008 },
  { bone: 1, tone: "hair", turning: HAIR, wide: 0.92, deep: 1.02, shift: 0.016 },
  ...[0, 1].flatMap((s): Piece[] => [
    { bone: 2 + s, tone: "shirt", turning: UPPER_ARM },
    { bone: 4 + s, tone: "skin", turning: FOREARM },
    { bone: 6 + s, tone: "trousers", turning: THIGH },
    { bone: 6 + s, tone: "harness", turning: LEG_LOOP },
    { bone: 8 + s, tone: "trousers", turning: SHIN },
    { bone: 10 + s, tone: "shoes", turning: FOOT, wide: 0.95, deep: 0.85 },
  ]),
];
const POINTS_AROUND = 16;

export function bodyMesh(): BodyMesh {
  const position: number[] = [];
  const normal: number[] = [];
  const binding: number[] = [];
  const index: number[] = [];
  for (const piece of PIECES) turn(piece, position, normal, binding, index);
  return {
    position: Float32Array.from(position),
    normal: Float32Array.from(normal),
    binding: Float32Array.from(binding),
    index: Uint16Array.from(index),
  };
}

function turn(piece: Piece, position: number[], normal: number[], binding: number[], index: number[]): void {
  const { turning, wide = 1, deep = 1, shift = 0 } = piece;
  const first = position.length / 3;
  const tone = WALKER_TONES.indexOf(piece.tone);
  for (let i = 0; i < turning.length; i++) {
    const [z, radius] = turning[i]!;
    const [z0, r0] = turning[Math.max(i - 1, 0)]!;
    const [z1, r1] = turning[Math.min(i + 1, turning.length - 1)]!;
    const slope = Math.hypot(z1 - z0, r1 - r0) || 1;
    for (let k = 0; k < POINTS_AROUND; k++) {
      const c = Math.cos((2 * Math.PI * k) / POINTS_AROUND);
      const s = Math.sin((2 * Math.PI * k) / POINTS_AROUND);
      position.push(radius * wide * c, radius * deep * s + shift, z);
      const nx = (c * (z1 - z0)) / slope / wide;
      const ny = (s * (z1 - z0)) / slope / deep;
      const nz = -(r1 - r0) / slope;
      const length = Math.hypot(nx, ny, nz) || 1;
      normal.push(nx / length, ny / length, nz / length);
      binding.push(piece.bone, tone);
    }
  }
  for (let i = 0; i + 1 < turning.length; i++) {
    for (let k = 0; k < POINTS_AROUND; k++) {
      const a = first + i * POINTS_AROUND + k;
      const b = first + i * POINTS_AROUND + ((k + 1) % POINTS_AROUND);
      index.push(a, b, b + POINTS_AROUND, a, b + POINTS_AROUND, a + POINTS_AROUND);
    }
  }
}
