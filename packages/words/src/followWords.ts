/** Sentences on parts that give way. */
import type { Rig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import type { Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { lowered, partName } from "./partNames.ts";
import { eventTitle } from "./phrases.ts";
import { endsOnGround } from "./verdictWords.ts";

/** For every part with too small a margin: the part that holds the walker when it gives way. */
export function followTexts(language: Language, rig: Rig, outcome: Outcome): readonly string[] {
  const say = sayLaterIn(language);
  return outcome.followUps.map((follow) => {
    const { part, during, caughtBy } = follow;
    const values = {
      part: partName(say, rig, part),
      event: lowered(eventTitle(language, rig, outcome.whatIfs[during]!.whatIf)),
    };
    if (endsOnGround(outcome, follow)) return say("follow.ground", values);
    return caughtBy === "nothing"
      ? say("follow.nothing", values)
      : say("follow.catches", { ...values, catcher: say(`catcher.${caughtBy}`) });
  });
}
