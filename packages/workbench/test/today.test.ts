/** Today is the day of the reader's own calendar, in every face: an inspection of this evening is not one of tomorrow. */
import { readdirSync, readFileSync } from "node:fs";
import { afterEach, expect, it, vi } from "vitest";
import { todayIso } from "../src/index.ts";

const zone = process.env.TZ;
afterEach(() => {
  vi.useRealTimers();
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

it.each([
  ["2026-12-31T09:30:00Z", "Pacific/Kiritimati", "2026-12-31"],
  ["2026-12-31T10:30:00Z", "Pacific/Kiritimati", "2027-01-01"],
  ["2027-01-01T10:30:00Z", "Pacific/Pago_Pago", "2026-12-31"],
  ["2027-01-01T11:30:00Z", "Pacific/Pago_Pago", "2027-01-01"],
  ["2026-12-31T23:59:59Z", "UTC", "2026-12-31"],
])("at %s in %s it is %s", (moment, TZ, day) => {
  process.env.TZ = TZ;
  vi.useFakeTimers({ now: new Date(moment) });
  expect(todayIso()).toBe(day);
});

it("is asked of one place", () => {
  const root = new URL("../../../", import.meta.url);
  const folders = ["packages", "apps"].flatMap((group) =>
    readdirSync(new URL(group, root), { encoding: "utf8" }).map((name) => `${group}/${name}/src`),
  );
  const others = folders.flatMap((folder) =>
    readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => `${folder}/${name}`)
      .filter((file) =>
        /new Date\(\)\.(?:to|get)|now\.get(?:UTC)?Date/.test(readFileSync(new URL(file, root), "utf8")),
      ),
  );
  expect(others).toEqual(["packages/workbench/src/wear/days.ts"]);
});
