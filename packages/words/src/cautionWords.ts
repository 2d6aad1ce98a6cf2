/**
 * The cautions that stand beside every verdict. They are worded here and nowhere else, and shown on screen, in the terminal and
 * in print.
 */

import type { Rig } from "@secondline/rig";
import type { AnchorFacts, CautionFact, JudgedFactor } from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import { type Language, type Say, sayIn } from "./language.ts";
import { listed } from "./lists.ts";
import { tellBasis } from "./noteWords.ts";
import { partName } from "./partNames.ts";
import { degrees, factor, load, margin, rounded } from "./quantity.ts";
import { valueNames } from "./valueNames.ts";

/** Always shown, in this order, whether or not anything was computed. */
export function generalCautions(language: Language): readonly string[] {
  const say = sayIn(language);
  return [say("caution.model"), say("caution.textiles"), say("caution.alone")];
}

/** All cautions of an outcome, in order. */
export function cautionTexts(language: Language, rig: Rig, facts: readonly CautionFact[]): readonly string[] {
  return facts.flatMap((fact) => cautionText(language, rig, fact));
}

function cautionText(language: Language, rig: Rig, fact: CautionFact): readonly string[] {
  const say = sayIn(language);
  switch (fact.kind) {
    case "general":
      return generalCautions(language);
    case "judged":
      return judgedTexts(say, rig, fact.judged);
    case "unconfirmed":
      return unconfirmedTexts(say, rig, fact.paths);
    case "unfounded": {
      const all = fact.parts === fact.of;
      const share = say(all ? "caution.all" : "caution.some", { some: fact.parts, of: fact.of });
      return [say("caution.unfounded", { share })];
    }
    case "failedRuns":
      return [say("caution.failedRuns", { count: fact.whatIfs.length })];
    case "partial":
      return [say("caution.partial", { run: fact.run, of: fact.of })];
    case "anchors":
      return anchorTexts(say, rig, fact.anchors);
    case "slips":
      return fact.weblocks.map(({ part, above, whatIfs }) =>
        say("caution.slips", { part: partName(say, rig, part), load: load(above), count: whatIfs }),
      );
    case "endedOnGround":
      return [say("caution.endedOnGround", { count: fact.whatIfs })];
    case "invented":
    case "chance":
    case "coarse":
    case "scatter":
    case "noBackup":
    case "noGround":
    case "notModelled":
      return [say(`caution.${fact.kind}`)];
  }
}

/** Values that nobody confirmed, by their names; empty if there is none. */
export function unconfirmedTexts(say: Say, rig: Rig, paths = rig.unconfirmed ?? []): readonly string[] {
  return paths.length === 0 ? [] : [say("caution.unconfirmed", { list: valueNames(say, rig, paths) })];
}

/** Judgements that raise a strength come first, each reason in a caution of its own; doubts share one sentence. */
export function judgedTexts(say: Say, rig: Rig, judged: readonly JudgedFactor[]): readonly string[] {
  const name = (one: JudgedFactor) => partName(say, rig, one.part);
  const doubts = judged.filter(({ value }) => value <= 1);
  const list = doubts.map((one) => `${name(one)} × ${factor(one.value)} (${tellBasis(one.reason)})`);
  return [
    ...raisedTexts(say, rig, judged),
    ...(list.length > 0 ? [say("caution.judged", { list: listed(list, "semicolon") })] : []),
  ];
}

/** A webbing and its ends are raised by the same tests: such parts are told together. */
function raisedTexts(say: Say, rig: Rig, judged: readonly JudgedFactor[]): readonly string[] {
  const alike = new Map<string, JudgedFactor[]>();
  for (const one of judged) {
    if (one.value <= 1) continue;
    const why = `${factor(one.value)} ${one.own} ${one.factor} ${tellBasis(one.reason)}`;
    alike.set(why, [...(alike.get(why) ?? []), one]);
  }
  return [...alike.values()].map((parts) => {
    const { own, value, factor: by, reason } = parts[0]!;
    const margins = parts.map((one) => (one.margin === undefined ? "–" : margin(one.margin / one.value)));
    const [part, ...others] = parts.map((one) => partName(say, rig, one.part));
    return say("caution.raised", {
      part: part!,
      times: factor(value),
      reason: `${own ? "" : `${broughtIn(by)}: `}${tellBasis(reason)}`,
      likewise: others.length > 0 ? say("caution.likewise", { list: listed(others, "semicolon") }) : "",
      without: margins.every((one) => one === "–")
        ? ""
        : say("caution.without", { count: parts.length, margins: listed(margins) }),
    });
  });
}

/** Angle between legs above which each leg carries more than 0.7 of the pull [rad]. */
const WIDE_ANGLE = Math.PI / 2;
/** Angle between legs from which on each leg carries the whole pull [rad]. */
const WIDEST_ANGLE = (2 * Math.PI) / 3;
/** An angle written as 90° or 120° may be off by the last bit after reading [rad]. */
const ANGLE_TOLERANCE = 1e-9;

/** How the points share, and legs that meet at a wide angle. */
export function anchorTexts(say: Say, rig: Rig, anchors: readonly AnchorFacts[]): readonly string[] {
  const several = anchors.filter(({ points }) => points > 1);
  const one = anchors.filter(({ points }) => points === 1);
  const alone = several.flatMap((each) => each.alone ?? []);
  return [
    ...several.flatMap((each) => legText(say, each)),
    ...(several.length > 0
      ? [
          [
            say("caution.sharing", { anchors: named(say, several) }),
            ...(alone.length > 0
              ? [
                  say("caution.sharingAlone", {
                    list: listed(
                      alone.map((each) =>
                        say(each.margin < each.required ? "caution.aloneLess" : "caution.aloneKeeps", {
                          part: partName(say, rig, each.part),
                          margin: margin(each.margin),
                        }),
                      ),
                      "semicolon",
                    ),
                  }),
                ]
              : []),
          ].join(" "),
        ]
      : []),
    ...(one.length > 0 ? [say("caution.singlePoint", { anchors: named(say, one) })] : []),
  ];
}

function legText(say: Say, { anchor, legAngle, share }: AnchorFacts): readonly string[] {
  if (legAngle <= WIDE_ANGLE + ANGLE_TOLERANCE) return [];
  const key = legAngle > WIDEST_ANGLE + ANGLE_TOLERANCE ? "caution.widestLegs" : "caution.wideLegs";
  return [say(key, { anchor, angle: degrees(legAngle), share: rounded(share, 2, "up") })];
}

const named = (say: Say, anchors: readonly AnchorFacts[]) =>
  anchors.length === 1 ? say("anchors.one", { anchor: anchors[0]!.anchor }) : say("anchors.both");
