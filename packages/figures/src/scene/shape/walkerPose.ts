/**
 * The walker's joints from the recorded motion: standing on the line, dropping, hanging in the harness. A function of
 * the moment only, so that scrubbing back and forth shows the same body. The tie-in is where the recording puts it;
 * everything else is drawn, not simulated.
 */
import { GRAVITY, type Recording } from "@secondline/engine";
import { smoothstep } from "./noise.ts";
import { add3, cross3, dot3, type Flat, length3, set3, square3, unit3 } from "./vector.ts";

export const JOINTS = [
  "pelvis",
  "chest",
  "neck",
  "head",
  "shoulderL",
  "shoulderR",
  "elbowL",
  "elbowR",
  "wristL",
  "wristR",
  "hipL",
  "hipR",
  "kneeL",
  "kneeR",
  "ankleL",
  "ankleR",
  "toeL",
  "toeR",
] as const;
export type BodyJoint = (typeof JOINTS)[number];

/** Lengths of a person of about 1.75 m [m]. */
export const BODY = {
  torso: 0.5,
  neck: 0.07,
  head: 0.14,
  upperArm: 0.29,
  forearm: 0.27,
  thigh: 0.45,
  shin: 0.44,
  foot: 0.15,
  shoulderHalf: 0.185,
  hipHalf: 0.09,
} as const;

export interface WalkerPose {
  /** One joint after the other, in the order of JOINTS; xyz each [m]. */
  readonly joints: Float64Array;
  /** Body axes, unit: forward, left, up. */
  readonly axes: Float64Array;
  /** Shares of the three postures; they add to 1. */
  standing: number;
  falling: number;
  hanging: number;
}

export function createPose(): WalkerPose {
  return {
    joints: new Float64Array(JOINTS.length * 3),
    axes: new Float64Array(9),
    standing: 0,
    falling: 0,
    hanging: 1,
  };
}

export function jointAt(joint: BodyJoint): number {
  return 3 * JOINTS.indexOf(joint);
}
const JOINT_OFFSET = Object.fromEntries(JOINTS.map((joint, i) => [joint, 3 * i])) as Record<BodyJoint, number>;
const FORWARD_AXIS = 0;
const LEFT_AXIS = 3;
const UP_AXIS = 6;
const SIDES = [
  {
    shoulder: JOINT_OFFSET.shoulderL,
    elbow: JOINT_OFFSET.elbowL,
    wrist: JOINT_OFFSET.wristL,
    hip: JOINT_OFFSET.hipL,
    knee: JOINT_OFFSET.kneeL,
    ankle: JOINT_OFFSET.ankleL,
    toe: JOINT_OFFSET.toeL,
    s: 1,
  },
  {
    shoulder: JOINT_OFFSET.shoulderR,
    elbow: JOINT_OFFSET.elbowR,
    wrist: JOINT_OFFSET.wristR,
    hip: JOINT_OFFSET.hipR,
    knee: JOINT_OFFSET.kneeR,
    ankle: JOINT_OFFSET.ankleR,
    toe: JOINT_OFFSET.toeR,
    s: -1,
  },
] as const;

const leash = new Float64Array(3);
const target = new Float64Array(3);
const part = new Float64Array(3);
const pole = new Float64Array(3);
const world = Float64Array.of(0, 0, 1);
const hip = new Float64Array(3);

/** The data that a pose follows from; the live frame has them. */
export interface PosedMoment {
  readonly recording: Pick<Recording, "problem">;
  /** xyz of everything drawn [m]; `ring` and `walker` are offsets into it. */
  readonly positions: Float32Array;
  readonly ring: number;
  readonly walker: number;
  /** Tension of the leash [N]. */
  readonly forces: { readonly leash: number };
}

/** Poses the walker at one moment, moving at `velocity` [m/s]. */
export function poseWalker(pose: WalkerPose, moment: PosedMoment, velocity: Flat): void {
  const { positions, recording } = moment;
  const { problem } = recording;
  const dx = positions[moment.ring]! - positions[moment.walker]!;
  const dy = positions[moment.ring + 1]! - positions[moment.walker + 1]!;
  const dz = positions[moment.ring + 2]! - positions[moment.walker + 2]!;
  const reach = Math.sqrt(dx * dx + dy * dy + dz * dz) / problem.leash.length;
  const above = -dz / Math.max(problem.walker.tieIn, 0.3);
  pose.standing = problem.start === "standing" ? smoothstep(0.6, 0.97, above) : 0;
  pose.hanging = (1 - pose.standing) * smoothstep(0.82, 0.99, reach) * smoothstep(-0.2, 0.4, dz);
  pose.falling = 1 - pose.standing - pose.hanging;
  set3(leash, 0, dx, dy, dz);
  unit3(leash, 0);
  const load = moment.forces.leash / (problem.walker.mass * GRAVITY);
  turnBody(pose, load, positions[moment.ring + 1]! - positions[moment.walker + 1]!);
  placeTrunk(pose, positions, moment.walker, moment.ring);
  for (let k = 0; k < 2; k++) {
    placeLeg(pose, k, positions, moment.ring, load, velocity);
    placeArm(pose, k);
  }
}

/** Body axes: upright on the line, tipped back in the air, lying back from the leash in the harness. */
function turnBody(pose: WalkerPose, load: number, lateral: number): void {
  const { axes, standing, falling, hanging } = pose;
  const lean = 0.5 + 0.16 * Math.min(Math.max(load - 1, 0), 4);
  const tip = 0.28;
  set3(axes, FORWARD_AXIS, 1, 0, 0);
  set3(part, 0, 1, 0, 0);
  square3(part, 0, leash, 0);
  for (let c = 0; c < 3; c++) {
    const hang = leash[c]! * Math.cos(lean) - part[c]! * Math.sin(lean);
    const fall = c === 2 ? Math.cos(tip) : c === 0 ? -Math.sin(tip) : 0;
    const stand = c === 2 ? 1 : c === 0 ? 0.06 : 0.5 * lateral;
    axes[UP_AXIS + c] = standing * stand + falling * fall + hanging * hang;
  }
  unit3(axes, UP_AXIS);
  square3(axes, FORWARD_AXIS, axes, UP_AXIS);
  cross3(axes, LEFT_AXIS, axes, UP_AXIS, axes, FORWARD_AXIS);
}

function placeTrunk(pose: WalkerPose, positions: Flat, walker: number, ring: number): void {
  const { joints, axes } = pose;
  for (let c = 0; c < 3; c++) hip[c] = positions[walker + c]!;
  add3(joints, JOINT_OFFSET.pelvis, hip, 0, axes, UP_AXIS, -0.05);
  // Standing, the hips come over the line and sink a little, so that both feet find it.
  const aside = positions[ring + 1]! - positions[walker + 1]!;
  joints[JOINT_OFFSET.pelvis + 1] = joints[JOINT_OFFSET.pelvis + 1]! + 0.45 * pose.standing * aside;
  joints[JOINT_OFFSET.pelvis + 2] = joints[JOINT_OFFSET.pelvis + 2]! - 0.03 * pose.standing;
  // The belly, not the spine, is tied in.
  add3(joints, JOINT_OFFSET.pelvis, joints, JOINT_OFFSET.pelvis, axes, FORWARD_AXIS, -0.1 * (1 - pose.standing));
  add3(joints, JOINT_OFFSET.chest, joints, JOINT_OFFSET.pelvis, axes, UP_AXIS, BODY.torso);
  add3(joints, JOINT_OFFSET.neck, joints, JOINT_OFFSET.chest, axes, UP_AXIS, BODY.neck);
  for (let c = 0; c < 3; c++) {
    part[c] =
      axes[UP_AXIS + c]! +
      pose.hanging * (0.5 * world[c]! + 0.35 * axes[FORWARD_AXIS + c]!) +
      0.1 * axes[FORWARD_AXIS + c]!;
  }
  unit3(part, 0);
  add3(joints, JOINT_OFFSET.head, joints, JOINT_OFFSET.neck, part, 0, BODY.head);
  for (const side of SIDES) {
    add3(joints, side.shoulder, joints, JOINT_OFFSET.chest, axes, LEFT_AXIS, side.s * BODY.shoulderHalf);
    add3(joints, side.shoulder, joints, side.shoulder, axes, UP_AXIS, -0.03);
    add3(joints, side.hip, joints, JOINT_OFFSET.pelvis, axes, LEFT_AXIS, side.s * BODY.hipHalf);
    add3(joints, side.hip, joints, side.hip, axes, UP_AXIS, -0.04);
  }
}

function placeLeg(pose: WalkerPose, k: number, positions: Flat, ring: number, load: number, velocity: Flat): void {
  const { joints, axes, standing, falling, hanging } = pose;
  const side = SIDES[k]!;
  const front = k === 0 ? 1 : -1;
  const pull = Math.min(Math.max(load - 1, 0), 3);
  for (let c = 0; c < 3; c++) {
    const x = c === 0 ? 1 : 0;
    const z = c === 2 ? 1 : 0;
    const stand = positions[ring + c]! + x * (front > 0 ? 0.15 : -0.13) + 0.075 * z;
    const fall = joints[side.hip + c]! + x * (front > 0 ? 0.2 : -0.3) - 0.74 * z + 0.06 * side.s * axes[LEFT_AXIS + c]!;
    const lag = Math.min(Math.max(-0.035 * velocity[c]!, -0.16), 0.16) * (1 - z);
    const hang =
      joints[side.hip + c]! -
      z * (0.56 + 0.07 * pull) +
      x * ((front > 0 ? 0.46 : 0.34) - 0.04 * pull) +
      0.05 * side.s * axes[LEFT_AXIS + c]! +
      lag;
    target[c] = standing * stand + falling * fall + hanging * hang;
    pole[c] = axes[FORWARD_AXIS + c]! + 0.15 * side.s * axes[LEFT_AXIS + c]! + 0.25 * hanging * axes[UP_AXIS + c]!;
  }
  bend(joints, side.hip, side.knee, side.ankle, BODY.thigh, BODY.shin);
  for (let c = 0; c < 3; c++) {
    const down = joints[side.ankle + c]! - joints[side.knee + c]!;
    const flat = c === 0 ? 1 : 0;
    const droop = 0.9 * axes[FORWARD_AXIS + c]! + 1.2 * down;
    part[c] = standing * flat + (1 - standing) * droop;
  }
  unit3(part, 0);
  add3(joints, side.toe, joints, side.ankle, part, 0, BODY.foot);
}

function placeArm(pose: WalkerPose, k: number): void {
  const { joints, axes, standing, falling, hanging } = pose;
  const side = SIDES[k]!;
  for (let c = 0; c < 3; c++) {
    const s = side.s * axes[LEFT_AXIS + c]!;
    const up = axes[UP_AXIS + c]!;
    const forward = axes[FORWARD_AXIS + c]!;
    const shoulder = joints[side.shoulder + c]!;
    const stand = shoulder + 0.3 * s + (k === 0 ? 0.1 : -0.02) * up + (k === 0 ? 0.38 : -0.4) * forward;
    const fall = shoulder + 0.22 * s + (k === 0 ? 0.3 : 0.16) * up + (k === 0 ? 0.36 : -0.34) * forward;
    const hang = hip[c]! + (k === 0 ? 0.52 : 0.42) * leash[c]! + 0.03 * s;
    target[c] = standing * stand + falling * fall + hanging * hang;
    pole[c] = 0.35 * s - up - (0.15 + 0.3 * hanging) * forward;
  }
  bend(joints, side.shoulder, side.elbow, side.wrist, BODY.upperArm, BODY.forearm);
}

/** Two bones from `root` towards `target`, the middle joint turned to `pole`; a target out of reach is approached. */
function bend(joints: Float64Array, root: number, middle: number, end: number, first: number, second: number): void {
  add3(part, 0, target, 0, joints, root, -1);
  const span = Math.min(Math.max(length3(part, 0), Math.abs(first - second) + 0.05), (first + second) * 0.995);
  unit3(part, 0);
  square3(pole, 0, part, 0);
  const along = (span * span + first * first - second * second) / (2 * span);
  const out = Math.sqrt(Math.max(first * first - along * along, 0));
  add3(joints, middle, joints, root, part, 0, along);
  add3(joints, middle, joints, middle, pole, 0, out);
  add3(joints, end, joints, root, part, 0, span);
}

/** Column-major matrix of the bone from joint a to joint b: z along the bone, x to the body's left. */
export function boneMatrix(out: Float32Array, at: number, pose: WalkerPose, a: number, b: number): void {
  const { joints, axes } = pose;
  add3(part, 0, joints, b, joints, a, -1);
  unit3(part, 0);
  for (let c = 0; c < 3; c++) target[c] = axes[LEFT_AXIS + c]!;
  if (Math.abs(dot3(target, 0, part, 0)) > 0.95) for (let c = 0; c < 3; c++) target[c] = axes[FORWARD_AXIS + c]!;
  square3(target, 0, part, 0);
  cross3(pole, 0, part, 0, target, 0);
  for (let c = 0; c < 3; c++) {
    out[at + c] = target[c]!;
    out[at + 4 + c] = pole[c]!;
    out[at + 8 + c] = part[c]!;
    out[at + 12 + c] = joints[a + c]!;
  }
  out[at + 3] = 0;
  out[at + 7] = 0;
  out[at + 11] = 0;
  out[at + 15] = 1;
}
