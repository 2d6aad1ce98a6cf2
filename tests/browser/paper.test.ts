/** What is printed: a site card that says all that one can say is still one page to hang up. */
import { readFileSync } from "node:fs";
import { siteCardPage } from "@secondline/report";
import { readRig } from "@secondline/rig";
import { assessRig, type CautionFact, type Outcome, type SiteCard } from "@secondline/scenarios";
import { beforeAll, expect, it } from "vitest";
import { type App, sharedApp } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

const read = readRig(readFileSync(new URL("../../demo-data/sound-rig.json", import.meta.url), "utf8"));
if (!read.ok) throw new Error("the sound rig has faults");
const { rig } = read;
const parts = ["harness", "leash", "ring", "connection.0", "anchorA.points.0", "anchorB.points.1"] as const;
const reason =
  "invented tests, nothing was pulled: 6 own break tests of new Polyester webbing 25 mm against its rated strength";
const raised = (["main", "endA", "endB"] as const).map((part) => ({
  part,
  factor: "make",
  own: false,
  value: 1.01,
  reason,
  margin: 4,
}));
const cautions: readonly CautionFact[] = [
  { kind: "general" },
  { kind: "judged", judged: raised },
  { kind: "coarse" },
  { kind: "invented" },
];
const outcome = {
  rigName: rig.name,
  verdict: "holds",
  reasons: [],
  whatIfs: [],
  cautions,
  statics: { standingSag: 2, standingTension: 4000, unloadedSag: 0.5, unloadedTension: 2500 },
} as unknown as Outcome;
const card: SiteCard = {
  rigName: rig.name,
  invented: true,
  on: "2026-06-10",
  permission: "given",
  lapses: [],
  refusals: [],
  allows: {
    walker: { mass: 80, from: "asked", looked: false },
    until: { day: "2026-07-31", ends: "thin" },
    falls: { left: 388, ends: "thin" },
  },
  nextInspection: "2026-08-02",
  singles: [...parts],
  unfollowed: [...parts, ...parts],
  hash: "f".repeat(64),
};

it("a site card that permits, with every caution that it may have, is one page", async () => {
  const context = await app.browser.newContext();
  const page = await context.newPage();
  await page.setContent(siteCardPage(assessRig(rig), outcome, card, { date: "2026-06-11" }));
  const printed = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  await context.close();
  expect(printed.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
});
