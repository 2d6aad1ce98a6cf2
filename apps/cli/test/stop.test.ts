import { spawn } from "node:child_process";
import { expect, it } from "vitest";
import { bundle, demo } from "./support/command.ts";

it("stops at Ctrl-C, says so and prints no half a result", async () => {
  const child = spawn(process.execPath, [await bundle(), "check", demo("sound-rig.json"), "--accuracy", "fine"], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let [out, err] = ["", ""];
  child.stdout.on("data", (text) => {
    out += text;
  });
  // It has begun when it has said how long it will take: the full set on the fine mesh takes many minutes.
  const begun = new Promise<void>((resolve) => {
    child.stderr.on("data", (text) => {
      err += text;
      if (err.includes("\n")) resolve();
    });
  });
  const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
  await begun;
  child.kill("SIGINT");
  expect(await closed).toBe(130);
  // Before it, how long it would have taken.
  expect(err).toMatch(
    /^Some \d+ runs, fewer where nothing lies near a limit: about [^\n]* at a time\.\nCancelled\.\n$/,
  );
  expect(out).toBe("");
});
