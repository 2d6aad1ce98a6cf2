/** The walker in the elevation: the same joints as in space, drawn as tapered limbs, far side first. */
import type { Theme } from "../../palette.ts";
import { type BodyJoint, jointAt, type WalkerPose } from "../shape/walkerPose.ts";
import { CLOTHES_COLOURS, type WalkerTone } from "../walkerTones.ts";
import type { FlatPen } from "./drawRig.ts";

/** First joint, last joint, radius at either end [m], garment. */
type Limb = readonly [from: number, to: number, first: number, last: number, tone: WalkerTone];
const limb = (from: BodyJoint, to: BodyJoint, first: number, last: number, tone: WalkerTone): Limb => [
  jointAt(from),
  jointAt(to),
  first,
  last,
  tone,
];

const SIDE = (s: "L" | "R"): readonly Limb[] => [
  limb(`ankle${s}`, `toe${s}`, 0.045, 0.03, "shoes"),
  limb(`knee${s}`, `ankle${s}`, 0.055, 0.037, "trousers"),
  limb(`hip${s}`, `knee${s}`, 0.088, 0.058, "trousers"),
];
const ARM = (s: "L" | "R"): readonly Limb[] => [
  limb(`elbow${s}`, `wrist${s}`, 0.038, 0.028, "skin"),
  limb(`wrist${s}`, `wrist${s}`, 0.042, 0.042, "skin"),
  limb(`shoulder${s}`, `elbow${s}`, 0.055, 0.042, "shirt"),
];
const LIMBS: readonly Limb[] = [
  ...ARM("L"),
  ...SIDE("L"),
  ...SIDE("R"),
  limb("chest", "neck", 0.06, 0.05, "skin"),
  limb("pelvis", "chest", 0.118, 0.125, "shirt"),
  limb("pelvis", "pelvis", 0.13, 0.13, "trousers"),
  limb("head", "head", 0.108, 0.108, "skin"),
  ...ARM("R"),
];

export function drawFigure(pen: FlatPen, pose: WalkerPose, theme: Theme): void {
  const { ink } = pen;
  for (const part of LIMBS) {
    limbShape(pen, pose, part, Math.max(1.2 / pen.scale, 0));
    ink.fillStyle = pen.palette.ink;
    ink.fill();
  }
  for (const part of LIMBS) {
    limbShape(pen, pose, part, 0);
    ink.fillStyle = CLOTHES_COLOURS[theme][part[4]];
    ink.fill();
  }
  drawHair(pen, pose, theme);
  const hip = jointAt("pelvis");
  ink.strokeStyle = CLOTHES_COLOURS[theme].harness;
  ink.lineWidth = Math.max(0.05 * pen.scale, 1.5);
  ink.beginPath();
  const across = 0.12;
  const up = pose.axes.subarray(6, 9);
  ink.moveTo(pen.px(pose.joints[hip]! - across * up[2]!), pen.py(pose.joints[hip + 2]! + across * up[0]!));
  ink.lineTo(pen.px(pose.joints[hip]! + across * up[2]!), pen.py(pose.joints[hip + 2]! - across * up[0]!));
  ink.stroke();
}

/** Crown and back of the head, as the head is turned. */
function drawHair(pen: FlatPen, pose: WalkerPose, theme: Theme): void {
  const { ink } = pen;
  const head = jointAt("head");
  const neck = jointAt("neck");
  const dx = pose.joints[head]! - pose.joints[neck]!;
  const dz = pose.joints[head + 2]! - pose.joints[neck + 2]!;
  const up = Math.atan2(-dz, dx);
  ink.beginPath();
  ink.arc(pen.px(pose.joints[head]!), pen.py(pose.joints[head + 2]!), 0.112 * pen.scale, up - 2.3, up + 0.85);
  ink.closePath();
  ink.fillStyle = CLOTHES_COLOURS[theme].hair;
  ink.fill();
}

/** The outline of one figure in one faint ink. */
export function drawFigureGhost(pen: FlatPen, pose: WalkerPose): void {
  pen.ink.globalAlpha = 0.28;
  pen.ink.fillStyle = pen.palette.ghost;
  pen.ink.beginPath();
  for (const part of LIMBS) limbShape(pen, pose, part, 0, false);
  pen.ink.fill();
  pen.ink.globalAlpha = 1;
}

/** A limb's outline: two circles and the tape between them. */
function limbShape(pen: FlatPen, pose: WalkerPose, [from, to, first, last]: Limb, grow: number, fresh = true): void {
  const { ink } = pen;
  const x0 = pen.px(pose.joints[from]!);
  const y0 = pen.py(pose.joints[from + 2]!);
  const x1 = pen.px(pose.joints[to]!);
  const y1 = pen.py(pose.joints[to + 2]!);
  const r0 = (first + grow) * pen.scale;
  const r1 = (last + grow) * pen.scale;
  const angle = Math.atan2(y1 - y0, x1 - x0);
  if (fresh) ink.beginPath();
  ink.moveTo(x0 + r0 * Math.cos(angle + Math.PI / 2), y0 + r0 * Math.sin(angle + Math.PI / 2));
  ink.arc(x0, y0, r0, angle + Math.PI / 2, angle - Math.PI / 2);
  ink.arc(x1, y1, r1, angle - Math.PI / 2, angle + Math.PI / 2);
  ink.closePath();
}
