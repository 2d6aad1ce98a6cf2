import { quantity } from "@secondline/words";
import { expect, it } from "vitest";
import type { Ink } from "../src/ink/ink.ts";
import { PALETTES } from "../src/palette.ts";
import { fitFlat } from "../src/scene/elevation/flatView.ts";
import { createLiveFrame, sampleFrame } from "../src/scene/liveFrame.ts";
import type { Projector } from "../src/scene/notes/noteInk.ts";
import { NoteLayout } from "../src/scene/notes/noteLayout.ts";
import { createNotes } from "../src/scene/notes/notes.ts";
import { eventWords, sceneWords } from "../src/scene/sceneWords.ts";
import { gapSection } from "../src/scene/shape/gap.ts";
import { syntheticRecording, syntheticRig } from "./syntheticRecording.ts";

const recording = syntheticRecording();
const rig = syntheticRig();
const gap = gapSection(rig.ground, rig.span, rig.rise);
const plain = { showForces: false, wide: false };

it("a break is marked at its place from the moment it happens", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  const mark = notes.list.find((n) => n.kind === "break")!;
  const cut = recording.events.find((e) => e.kind === "cut")!;
  sampleFrame(live, cut.time - 0.02);
  notes.update(live, plain);
  expect(mark.active).toBe(false);
  sampleFrame(live, cut.time + 0.001);
  notes.update(live, plain);
  expect(mark.active).toBe(true);
  expect([...mark.a]).toEqual([...cut.position!]);
  expect(mark.text).toBe("Main line fails at anchor A");
});

it("the drop drawn at the end is the recorded drop, and grows on the way there", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  const drop = notes.list[0]!;
  let before = 0;
  for (let t = 0; t <= recording.duration; t += 0.1) {
    sampleFrame(live, t);
    notes.update(live, plain);
    const now = drop.active ? drop.a[2]! - drop.b[2]! : 0;
    expect(now).toBeGreaterThanOrEqual(before - 1e-6);
    before = now;
  }
  expect(before).toBeCloseTo(recording.walker.drop, 2);
});

it("arrows show only on demand, and ring and harness feel the same leash", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  sampleFrame(live, 1.2);
  notes.update(live, plain);
  expect(notes.list.some((n) => n.kind === "arrow" && n.active)).toBe(false);
  notes.update(live, { ...plain, showForces: true });
  const arrows = notes.list.filter((n) => n.kind === "arrow" && n.active);
  const [ring, harness] = [
    arrows.find((a) => a.text.startsWith("ring")),
    arrows.find((a) => a.text.startsWith("harness")),
  ];
  expect(ring!.force).toBe(harness!.force);
  for (let c = 0; c < 3; c++) expect(ring!.b[c]).toBeCloseTo(-harness!.b[c]!, 6);
});

it("the chosen part is pointed out where it is", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  notes.update(live, { ...plain, selectedPart: "connection.0" });
  const pointer = notes.list.find((n) => n.kind === "pointer")!;
  expect(pointer.active).toBe(true);
  expect(pointer.a[0]).toBeCloseTo(30, 0);
  notes.update(live, { ...plain, selectedPart: "nothing.0" });
  expect(pointer.active).toBe(false);
});

it("the weak place is named where it lies along the webbing, until a part is chosen", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  const weak = { part: "backup", text: "Nearest to its limit: Backup, × 1.20", share: 0.25 };
  notes.update(live, { ...plain, weak });
  const pointer = notes.list.find((n) => n.kind === "pointer")!;
  expect(pointer.active).toBe(true);
  expect(pointer.text).toBe(weak.text);
  const place = pointer.a[0]!;
  notes.update(live, { ...plain, weak: { ...weak, share: 0.75 } });
  expect(pointer.a[0]! - place).toBeGreaterThan(0.3 * rig.span);
  notes.update(live, { ...plain, weak, selectedPart: "connection.0" });
  expect(pointer.text).toBe("Connection 1");
});

it("a mark tells the load at which it gave way, as the trace of it does", () => {
  expect(eventWords({ time: 1, kind: "break", part: "main", at: 0.4, value: 7101 }, rig)).toEqual({
    full: "Main line gives way at 7.11 kN",
    short: "Main line gives way",
  });
});

it("drop and loads are written in the scene as the verdict writes them", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  sampleFrame(live, recording.duration);
  notes.update(live, { showForces: true, wide: true });
  expect(notes.list[0]!.short).toBe(quantity.drop(recording.walker.drop));
  const leash = notes.list.find((n) => n.kind === "arrow" && n.active && n.text.startsWith("harness"))!;
  expect(leash.short).toBe(quantity.load(leash.force));
});

it("the scene in words names sag, drop, hardest pull and what gave way", () => {
  const said = sceneWords(recording, rig);
  expect(said).toContain(`sags ${quantity.drop(recording.standing.sag)}`);
  expect(said).toContain(`drops ${quantity.drop(recording.walker.drop)}`);
  expect(said).toContain(quantity.load(recording.peaks.leash.cfc60));
  expect(said).toContain("main line fails at anchor A");
});

it("of many tapes that part, the words only give the number and the hardest", () => {
  const tape = { kind: "break", part: "tape", value: 250 } as const;
  const many = {
    ...recording,
    events: [...recording.events, { ...tape, time: 1, at: 0.1 }, { ...tape, time: 2, at: 0.2 }],
  };
  expect(sceneWords(many, rig)).toContain("main line fails at anchor A; 2 tapes give way, up to 0.25 kN.");
});

it("both lines are named close to the fall too, and no name lies over ring, anchor or walker", () => {
  const notes = createNotes(recording, rig, gap);
  const live = createLiveFrame(recording);
  const layout = new NoteLayout();
  const ink = new Proxy(
    {},
    {
      get: (_, key) => (key === "measureText" ? (text: string) => ({ width: 7.5 * text.length }) : () => undefined),
      set: () => true,
    },
  ) as unknown as Ink;
  const view = { x: 0, z: 0, scale: 10 };
  const [width, height] = [1000, 450];
  for (const scope of ["event", "rig"] as const) {
    fitFlat(view, recording, gap, scope, width, height);
    const project: Projector = (x, _y, z, out) => {
      out.set([width / 2 + (x - view.x) * view.scale, height / 2 - (z - view.z) * view.scale, 1]);
    };
    for (let t = 0; t <= recording.duration; t += 0.2) {
      sampleFrame(live, t);
      notes.update(live, { showForces: true, wide: scope === "rig" });
      layout.lay(notes, {
        ink,
        palette: PALETTES.light,
        project,
        largest: notes.largest,
        width,
        height,
        lettering: 1,
        covered: [],
      });
      const shown = layout.labels.flatMap((one, i) => (one.shown === -1 ? [] : [{ one, text: notes.list[i]!.text }]));
      const texts = shown.map(({ text }) => text);
      if (scope === "event") expect(texts).toEqual(expect.arrayContaining(["Main line", "Backup"]));
      const [px, pz] = [0, 0, 0].map((_, c) => notes.fittings[c]!).filter((_, c) => c !== 1) as [number, number];
      const places: readonly (readonly [number, number])[] = [
        [px, pz],
        [0, 0],
        [gap.span, gap.rise],
        [notes.body[0]!, notes.body[2]!],
      ];
      for (const [x, z] of places) {
        const [sx, sy] = [width / 2 + (x - view.x) * view.scale, height / 2 - (z - view.z) * view.scale];
        for (const { one } of shown) {
          const wide = one.shown === 0 ? one.width : one.shortWidth;
          expect(sx > one.left && sx < one.left + wide && sy > one.top && sy < one.top + one.height).toBe(false);
        }
      }
    }
  }
});
