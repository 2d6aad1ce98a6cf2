/** The printed card: self-contained, with headings and words for every picture, and nothing of a document that is not escaped. */
import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { assessRig, type Outcome, type SiteCard } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { siteCardPage } from "../src/index.ts";

const read = readRig(readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8"));
if (!read.ok) throw new Error("the sound rig has faults");
const { rig } = read;
const outcome = {
  rigName: rig.name,
  verdict: "holds",
  reasons: [],
  whatIfs: [],
  cautions: [{ kind: "general" }],
  statics: { standingSag: 2, standingTension: 4000, unloadedSag: 0.5, unloadedTension: 2500 },
} as unknown as Outcome;
const given: SiteCard = {
  rigName: 'Gap </style><script>alert("1")</script>',
  invented: false,
  on: "2026-06-10",
  permission: "given",
  lapses: [],
  refusals: [],
  allows: {
    walker: { mass: 80, from: "asked", looked: true },
    until: { day: "2026-07-31", ends: "inspection" },
    falls: { left: 12, ends: "thin" },
  },
  nextInspection: "2026-07-31",
  singles: ["leash"],
  unfollowed: ["leash"],
  hash: "f".repeat(64),
};
const { allows: _, ...bare } = given;
const page = (card: SiteCard) => siteCardPage(assessRig(rig), outcome, card, { date: "2026-06-11" });

describe("the page of a site card", () => {
  it("holds no style in line, which the application forbids what it prints", () => {
    expect(page(given)).toContain('paint-order="stroke"');
    expect(page(given)).not.toMatch(/\sstyle=/);
  });

  it("needs nothing else, is tagged, and escapes texts from a document", () => {
    const html = page(given);
    expect(html).not.toMatch(/(?:src|href)=|url\((?!#)|@import|https?:/);
    expect(html).toContain('<html lang="en">');
    expect(html.match(/<h1>/g)).toHaveLength(1);
    expect(html.match(/<h2/g)!.length).toBeGreaterThanOrEqual(3);
    expect(html).toMatch(/<svg [^>]*role="img" aria-label="[^"]+"/);
    expect(html).not.toContain("<script>alert");
    expect(html).toContain("f".repeat(64));
  });

  it("writes its days as the language does, none of them broken at a line's end, and asks the clock by the day as a file has it", () => {
    const html = page(given);
    expect(html).toContain(">31\u00a0Jul\u00a02026<");
    expect(html).toContain("State of 10\u00a0Jun\u00a02026. Made on 11\u00a0Jun\u00a02026");
    expect(html.replace(/<script>.*<\/script>/, "")).not.toMatch(/\d{4}-\d\d-\d\d/);
  });

  it("has the words for its ground beside a gap that is narrower than they are, else within it", () => {
    const words = (own: typeof rig) => {
      const html = siteCardPage(assessRig(own), outcome, given, { date: "2026-06-11" });
      const [, x, anchor] = /<text x="([\d.]+)" y="[\d.]+" text-anchor="(\w+)"[^>]*>ground/.exec(html)!;
      return { x: Number(x), anchor };
    };
    expect(words(rig)).toMatchObject({ anchor: "start" });
    expect(words(rig).x).toBeGreaterThan(320);
    const shallow = { ...rig, ground: rig.ground.map(([x, z]) => [x, z / 10] as const) };
    expect(words(shallow)).toEqual({ x: 320, anchor: "middle" });
  });

  it("of a permission carries what is shown once its last day is over; without one there is nothing to end", () => {
    expect(page(given)).toMatch(/class="status lapsed over".*Lapsed/s);
    expect(page(given)).toContain('>"2026-07-31")document.documentElement.className="isOver"');
    for (const permission of ["none", "lapsed"] as const) {
      const html = page({ ...bare, permission });
      expect(html).not.toContain("<script>");
      expect(html).not.toContain('isOver"');
      expect(html).not.toMatch(/up to 80 kg/);
    }
  });
});
