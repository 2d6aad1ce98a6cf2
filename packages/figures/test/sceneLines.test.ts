import { expect, it } from "vitest";
import { createLiveFrame, sampleFrame } from "../src/scene/liveFrame.ts";
import { ringNode } from "../src/scene/notes/partPlace.ts";
import { createAnchorGear } from "../src/scene/shape/anchorGear.ts";
import { anchorShape } from "../src/scene/shape/anchorShape.ts";
import { BONES, poseBones } from "../src/scene/shape/bodyMesh.ts";
import { cuffsOf } from "../src/scene/shape/cuffs.ts";
import { createFineLine, fillFineLine } from "../src/scene/shape/fineLine.ts";
import { contourInterval, gapSection, groundAt, hazeOf } from "../src/scene/shape/gap.ts";
import { createMaster } from "../src/scene/shape/masterPoint.ts";
import { leashRibbon, lineRibbon } from "../src/scene/shape/movingRibbon.ts";
import { createRibbon, fillRibbon } from "../src/scene/shape/ribbon.ts";
import { hangRope } from "../src/scene/shape/slackRope.ts";
import { BODY, jointAt } from "../src/scene/shape/walkerPose.ts";
import { createStage } from "../src/scene/stage.ts";
import { syntheticRecording, syntheticRig } from "./syntheticRecording.ts";

const recording = syntheticRecording();

it("the ribbon holds no NaN at any moment, though parted elements have no tension", () => {
  const live = createLiveFrame(recording);
  const { mainNodes, fractions } = recording.frames;
  const ribbon = createRibbon(mainNodes, fractions, 0, 60);
  for (let t = 0; t <= recording.duration; t += 0.05) {
    sampleFrame(live, t);
    fillRibbon(ribbon, live.positions, 0, live.tensions, 0);
    for (const array of [ribbon.position, ribbon.tangent, ribbon.tension])
      expect(array.every(Number.isFinite)).toBe(true);
  }
  expect(live.tensions[0]).toBeNaN();
});

it("a parted element vanishes and its neighbours keep their ends", () => {
  const nodes = Float32Array.from([0, 0, 0, 1, 0, 0, 2, 0, 0, 3, 0, 0]);
  const ribbon = createRibbon(4, Float32Array.of(0, 1 / 3, 2 / 3, 1), 0, 3);
  fillRibbon(ribbon, nodes, 0, Float32Array.of(100, Number.NaN, 200), 0);
  expect([...ribbon.tension]).toEqual([100, 100, 100, 100, -1, -1, -1, -1, 200, 200, 200, 200]);
  expect(ribbon.position[3 * 2]).toBe(1);
  expect(ribbon.position[3 * 8]).toBe(2);
  // Both ends of the parted one lie in one point, so that nothing of it can show.
  expect(ribbon.position[3 * 4]).toBe(ribbon.position[3 * 6]);
});

it("between two frames positions lie between theirs, and a break shows only from its own frame on", () => {
  const live = createLiveFrame(recording);
  const { rate, positions } = recording.frames;
  const stride = live.positions.length;
  sampleFrame(live, 10.5 / rate);
  for (let i = 0; i < stride; i += 7) {
    const [a, b] = [positions[10 * stride + i]!, positions[11 * stride + i]!];
    expect(live.positions[i]).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-6);
    expect(live.positions[i]).toBeLessThanOrEqual(Math.max(a, b) + 1e-6);
  }
  const cut = recording.events.find((e) => e.kind === "cut")!.time;
  sampleFrame(live, cut - 0.5 / rate);
  expect(live.tensions[0]).not.toBeNaN();
  sampleFrame(live, cut + 1.5 / rate);
  expect(live.tensions[0]).toBeNaN();
});

it("a slack leash hangs with its whole length, a taut one is straight", () => {
  const out = new Float32Array(33 * 3);
  hangRope(out, 33, Float32Array.of(0, 0, 0), 0, Float32Array.of(0.6, 0, 0.7), 0, 1.4);
  let length = 0;
  for (let k = 1; k < 33; k++) length += Math.hypot(out[3 * k]! - out[3 * k - 3]!, out[3 * k + 2]! - out[3 * k - 1]!);
  expect(length).toBeCloseTo(1.4, 3);
  hangRope(out, 33, Float32Array.of(0, 0, 0), 0, Float32Array.of(0, 0, -1.5), 0, 1.4);
  for (let k = 0; k < 33; k++) expect(out[3 * k + 2]).toBeCloseTo((-1.5 * k) / 32, 5);
});

it("the walker's bones keep their lengths while standing, falling and hanging", () => {
  const live = createLiveFrame(recording);
  const distance = (a: Parameters<typeof jointAt>[0], b: Parameters<typeof jointAt>[0]) => {
    const [i, j] = [jointAt(a), jointAt(b)];
    const p = live.pose.joints;
    return Math.hypot(p[i]! - p[j]!, p[i + 1]! - p[j + 1]!, p[i + 2]! - p[j + 2]!);
  };
  const seen = { standing: 0, falling: 0, hanging: 0 };
  for (let t = 0; t <= recording.duration; t += 0.02) {
    sampleFrame(live, t);
    for (const s of ["L", "R"] as const) {
      expect(distance(`hip${s}`, `knee${s}`)).toBeCloseTo(BODY.thigh, 5);
      expect(distance(`knee${s}`, `ankle${s}`)).toBeCloseTo(BODY.shin, 5);
      expect(distance(`shoulder${s}`, `elbow${s}`)).toBeCloseTo(BODY.upperArm, 5);
      expect(distance(`elbow${s}`, `wrist${s}`)).toBeCloseTo(BODY.forearm, 5);
    }
    for (const posture of ["standing", "falling", "hanging"] as const)
      seen[posture] = Math.max(seen[posture], live.pose[posture]);
  }
  expect(seen.standing).toBeCloseTo(1, 2);
  expect(seen.falling).toBeGreaterThan(0.8);
  expect(seen.hanging).toBeCloseTo(1, 2);
});

it("a standing walker has both feet at the line", () => {
  const live = createLiveFrame(recording);
  for (const ankle of ["ankleL", "ankleR"] as const) {
    const height = live.pose.joints[jointAt(ankle) + 2]! - live.positions[live.ring + 2]!;
    expect(height).toBeGreaterThan(0.03);
    expect(height).toBeLessThan(0.1);
  }
});

it("the drawn line goes through the computed nodes away from the ring, and through the ring", () => {
  const live = createLiveFrame(recording);
  sampleFrame(live, 1.2);
  live.ringAt[0] = 0.4;
  const fine = createFineLine(live, "main");
  fillFineLine(fine, live);
  expect(fine.nodes.every(Number.isFinite)).toBe(true);
  for (const node of [0, 10, 100, live.mainNodes - 1]) {
    for (let c = 0; c < 3; c++) {
      expect(fine.nodes[3 * node * fine.pieces + c]).toBeCloseTo(live.positions[3 * node + c]!, 5);
    }
  }
  let nearest = Infinity;
  for (let k = 0; k < fine.count; k++) {
    const away = [0, 1, 2].map((c) => fine.nodes[3 * k + c]! - live.positions[live.ring + c]!);
    nearest = Math.min(nearest, Math.hypot(...away));
  }
  expect(nearest).toBeLessThan(0.02);
});

it("a parted element stays parted in the drawn line", () => {
  const live = createLiveFrame(recording);
  sampleFrame(live, 3);
  const fine = createFineLine(live, "main");
  fillFineLine(fine, live);
  for (let k = 0; k < fine.pieces; k++) expect(fine.tensions[k]).toBeNaN();
  expect(fine.tensions[fine.pieces]).not.toBeNaN();
  expect(fine.nodes.every(Number.isFinite)).toBe(true);
});

it("the drawn leash is as long as the leash or as the way from ring to harness, and pulls as hard", () => {
  const live = createLiveFrame(recording);
  const { nodes, ribbon, update } = leashRibbon(live);
  for (const time of [0, 0.8, 2.4]) {
    sampleFrame(live, time);
    update();
    let length = 0;
    for (let i = 3; i < nodes.length; i += 3)
      length += Math.hypot(nodes[i]! - nodes[i - 3]!, nodes[i + 1]! - nodes[i - 2]!, nodes[i + 2]! - nodes[i - 1]!);
    const way = [0, 1, 2].map((c) => live.positions[live.walker + c]! - live.positions[live.ring + c]!);
    expect(length).toBeCloseTo(Math.max(recording.problem.leash.length, Math.hypot(...way)), 2);
    expect(ribbon.tension[0]).toBeCloseTo(live.forces.leash, 0);
  }
});

it("the drawn backup is longer than the main line by its slack", () => {
  const live = createLiveFrame(recording);
  const lengthOf = (line: "main" | "backup") => Math.max(...lineRibbon(live, line).ribbon.place);
  expect(lengthOf("backup") / lengthOf("main")).toBeCloseTo(1 + recording.problem.backup!.slack, 4);
});

it("the ring is at the nearest node of the line that it is on, and at none when it is off both", () => {
  const live = createLiveFrame(recording);
  live.ringAt.set([0, -1]);
  expect(ringNode(live)).toBe(0);
  live.ringAt.set([-1, 1]);
  expect(ringNode(live)).toBe(live.mainNodes + live.backupNodes - 1);
  live.ringAt.set([-1, -1]);
  expect(ringNode(live)).toBe(-1);
});

it("the bones of the walker keep their length: no matrix stretches one", () => {
  const live = createLiveFrame(recording);
  const flat = new Float32Array(16 * BONES.length);
  sampleFrame(live, 1.2);
  poseBones(flat, live.pose);
  for (let i = 0; i < BONES.length; i++)
    for (const axis of [0, 4, 8])
      expect(Math.hypot(...flat.subarray(16 * i + axis, 16 * i + axis + 3))).toBeCloseTo(1, 4);
});

it("an anchor's legs run from its rock points to the master point", () => {
  const stage = createStage(recording, syntheticRig(), undefined);
  const { shape, ribbon, master, update } = createAnchorGear(stage, "A");
  update();
  expect([...ribbon.position.subarray(0, 3)]).toEqual([...shape.rock.subarray(0, 3)]);
  expect([...ribbon.position.subarray(6, 9)]).toEqual([...master.points.subarray(0, 3)]);
});

it("a deeper gap has fewer contour lines, and haze that begins below both edges", () => {
  const gap = (floor: number) =>
    gapSection(
      [
        [0, -0.3],
        [30, floor],
        [60, -0.3],
      ],
      60,
      0,
    );
  expect([-20, -60, -200].map((floor) => contourInterval(gap(floor)))).toEqual([1, 2, 5]);
  const [near, far, top, bottom] = hazeOf(gap(-60));
  expect(near).toBeLessThan(far);
  expect(top).toBeLessThan(-0.3);
  expect(bottom).toBeLessThan(-60);
});

it("the anchor stays where it is when the main line is severed at it", () => {
  const rig = syntheticRig();
  const freed = { ...recording, events: recording.events.map((e) => (e.kind === "cut" ? { ...e, at: 0 } : e)) };
  const live = createLiveFrame(freed);
  const shape = anchorShape("A", rig.anchorA, undefined, gapSection(rig.ground, rig.span, rig.rise));
  const master = createMaster(live, shape);
  sampleFrame(live, 3);
  // As in a computed run, the whole first element has gone with the line.
  live.positions.set([12, 1, -6], 0);
  master.update();
  expect(Math.hypot(master.points[0]!, master.points[1]!, master.points[2]!)).toBeLessThan(0.01);
});

it("a connection shows until the run says that it parted", () => {
  const parted = {
    ...recording,
    events: [...recording.events, { time: 2.5, kind: "break", part: "connection", at: 0.5 } as const],
  };
  expect(cuffsOf(recording)[0]!.until).toBe(Number.POSITIVE_INFINITY);
  expect(cuffsOf(parted)[0]!.until).toBe(2.5);
});

it("a free end lies on the face of the rock, and the rest of the line stays where it was computed", () => {
  const shallow = gapSection(
    [
      [0, -1],
      [6, -2.5],
      [54, -2.5],
      [60, -1],
    ],
    60,
    0,
  );
  const [drawn, computed] = [createLiveFrame(recording, shallow), createLiveFrame(recording)];
  const connection = cuffsOf(recording)[0]!.node;
  const parted = recording.events.find((e) => e.kind === "cut")!.time;
  let moved = 0;
  for (let t = 0; t <= recording.duration; t += 0.1) {
    sampleFrame(drawn, t);
    sampleFrame(computed, t);
    for (let node = 0; node < drawn.mainNodes + drawn.backupNodes; node++) {
      const [x, z] = [drawn.positions[3 * node]!, drawn.positions[3 * node + 2]!];
      const stays = x === computed.positions[3 * node] && z === computed.positions[3 * node + 2];
      if (!stays) moved += 1;
      const isFree = t > parted + 0.01 && node > 0 && node < Math.min(connection, Math.round(0.4 * 120));
      if (isFree) expect(z).toBeGreaterThanOrEqual(groundAt(shallow, x) - 1e-4);
      else expect(stays).toBe(true);
    }
  }
  expect(moved).toBeGreaterThan(50);
});
