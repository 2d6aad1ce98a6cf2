/** Why there is no plan of a teardown, in words. */
import type { Rig } from "@secondline/rig";
import type { TeardownIssue } from "@secondline/strength";
import { dayText } from "./dates.ts";
import type { LaterSay } from "./laterLanguage.ts";

/** The reason why there is no plan, one line for every webbing of the record. */
export function teardownIssueTexts(
  say: LaterSay,
  rig: Rig,
  on: string,
  { webbings }: TeardownIssue,
): readonly string[] {
  return [
    say("teardown.fault.notHanging", { rig: rig.name, on: dayText(on) }),
    ...webbings.map(({ name, since }) =>
      since === undefined
        ? say("teardown.fault.elsewhere", { name })
        : say("teardown.fault.left", { name, since: dayText(since) }),
    ),
  ];
}
