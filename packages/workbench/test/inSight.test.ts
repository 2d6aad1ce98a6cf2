import { expect, it } from "vitest";
import { viewOfOpened, viewOfStep, type WearPage } from "../src/index.ts";

const rig = { view: "rig", page: "record" } as const;
const wear = (page: WearPage) => ({ view: "wear", page });

it("stays where the step is seen", () => {
  expect(viewOfStep(rig, ["rig"], true)).toBeUndefined();
  expect(viewOfStep(rig, ["rig"], false)).toBeUndefined();
  expect(viewOfStep(wear("record"), ["record"], false)).toBeUndefined();
  expect(viewOfStep(wear("record"), ["stocks"], false)).toBeUndefined();
  expect(viewOfStep(wear("teardown"), ["log"], true)).toBeUndefined();
});

it("stays with the rig when a step of the record changes its verdict, and goes to the record when it does not", () => {
  expect(viewOfStep(rig, ["record"], true)).toBeUndefined();
  expect(viewOfStep(rig, ["record"], false)).toEqual({ view: "wear", page: "record" });
  expect(viewOfStep({ view: "howFar", page: "record" }, ["log"], false)).toEqual({ view: "wear", page: "log" });
});

it("turns to the page that shows the document", () => {
  expect(viewOfStep(wear("log"), ["record"], true)).toEqual({ view: "wear", page: "record" });
  expect(viewOfStep(wear("record"), ["log"], true)).toEqual({ view: "wear", page: "log" });
  expect(viewOfStep(wear("log"), ["record", "log"], true)).toBeUndefined();
});

it("leaves the record for the rig when nothing beside the record would tell of the step", () => {
  expect(viewOfStep(wear("record"), ["rig"], true)).toBeUndefined();
  expect(viewOfStep(wear("record"), ["rig"], false)).toMatchObject({ view: "rig" });
  expect(viewOfStep(wear("log"), ["rig"], true)).toMatchObject({ view: "rig" });
});

it("shows a rig that was opened, where the view in sight would tell nothing of it", () => {
  expect((["lessons", "layouts", "newRig"] as const).map(viewOfOpened)).toEqual(["rig", "rig", "rig"]);
  const ofTheRig = ["rig", "howFar", "wear", "card"] as const;
  expect(ofTheRig.map(viewOfOpened)).toEqual(ofTheRig);
});
