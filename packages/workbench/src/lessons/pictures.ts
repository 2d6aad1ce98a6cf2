/** The two falls of a lesson between which a learner chooses, by what tells them apart. */
import { quantity } from "@secondline/words";
import { inPicture, type LessonRun, type ShownFall } from "./facts.ts";
import type { LessonId } from "./lessons.ts";
import { say } from "./words.ts";

export interface LessonPictureChoice {
  readonly which: "before" | "after";
  readonly label: string;
  readonly fall: ShownFall;
}

/** One fall until the second is there; of a lesson that asks about one rig the second is told by how it differs. */
export function picturesOf(
  id: LessonId,
  before: LessonRun | undefined,
  after: LessonRun | undefined,
): readonly LessonPictureChoice[] {
  const [was, is] = [before && inPicture(before), after && inPicture(after)];
  const first = was ? [{ which: "before", label: beforeLabel(id), fall: was } as const] : [];
  // A second picture that shows the first fall again is none to choose.
  if (!is || (after && isOfOneRig(after) && !after.shown)) return first;
  return [...first, { which: "after", label: afterLabel(id, is), fall: is }];
}

const isOfOneRig = ({ many, swept }: LessonRun): boolean => many !== undefined || swept !== undefined;

/** Whether two falls move alike: the ghost and the trace of one are those of the other. */
export function isSameFall(a: ShownFall, b: ShownFall): boolean {
  const [one, other] = [a.recording.frames.positions, b.recording.frames.positions];
  return one === other || (one.length === other.length && one.every((value, i) => value === other[i]));
}

function beforeLabel(id: LessonId): string {
  switch (id) {
    case "clampMark":
    case "chance":
    case "howFar":
      return say(`${id}.pictureBefore`);
    default:
      return say("lesson.pictureBefore");
  }
}

function afterLabel(id: LessonId, { at }: ShownFall): string {
  if (id === "chance" || id === "clampMark") return say(`${id}.pictureAfter`);
  if (id === "howFar" && at !== undefined)
    return say("howFar.pictureAfter", { slack: quantity.rounded(at, 1, "down") });
  return say("lesson.pictureAfter");
}
