/** Predictions and results, kept on this device: every try, the last one last. */
import { readJson } from "@secondline/rig";
import { sayLessons } from "@secondline/words/page/lessons";
import { type Shelf, setAside } from "../keeping/shelf.ts";
import { LESSON_IDS, type LessonId } from "./lessons.ts";

export interface Try {
  /** In the lesson's unit. */
  readonly predicted: number;
  /** Number of the chosen reason, 1 to 3; undefined when only words of the learner's own were given. */
  readonly reason?: 1 | 2 | 3;
  readonly ownReason?: string;
  /** In the lesson's unit; undefined where the run gave no number. */
  readonly result?: number;
  /** Milliseconds since 1970. */
  readonly when: number;
}
export type KeptTries = Readonly<Partial<Record<LessonId, readonly Try[]>>>;

const KEY = "secondline.lessons";
/** What lessons were called before they had their present name. */
const NAMES_BEFORE: Readonly<Partial<Record<LessonId, string>>> = { clampMark: "trace" };
const FORMAT = { noun: sayLessons("kept.recordLessons"), longest: 1_000_000 };
const MOST_TRIES = 20;
const LONGEST_REASON = 400;

/** What was kept; what cannot be read is set aside and gives an empty record. */
export function readKept(shelf: Shelf): KeptTries {
  const text = shelf.getItem(KEY);
  if (text === null) return {};
  const json = readJson(text, FORMAT);
  const found = json.parsed && json.issues.length === 0 ? json.document : undefined;
  if (typeof found !== "object" || found === null || Array.isArray(found)) {
    setAside(shelf, KEY, text);
    return {};
  }
  let lost = false;
  const kept = Object.fromEntries(
    LESSON_IDS.flatMap((id) => {
      const written = found as Record<string, unknown>;
      const tries = written[id] ?? written[NAMES_BEFORE[id] ?? ""];
      if (!Array.isArray(tries)) return [];
      const good = tries.filter(isTry);
      lost ||= good.length < tries.length;
      return [[id, good]];
    }),
  );
  if (lost) setAside(shelf, KEY, text);
  return kept;
}

/** Keeps one more try; throws what the storage throws when it is full or forbidden. */
export function keep(shelf: Shelf, kept: KeptTries, id: LessonId, one: Try): KeptTries {
  const own = one.ownReason?.slice(0, LONGEST_REASON);
  const tidy: Try = own === undefined ? one : { ...one, ownReason: own };
  const next = { ...kept, [id]: [...(kept[id] ?? []), tidy].slice(-MOST_TRIES) };
  shelf.setItem(KEY, JSON.stringify(next));
  return next;
}

function isTry(value: unknown): value is Try {
  if (typeof value !== "object" || value === null) return false;
  const { predicted, reason, ownReason, result, when } = value as Record<string, unknown>;
  return (
    Number.isFinite(predicted) &&
    (reason === undefined || reason === 1 || reason === 2 || reason === 3) &&
    (ownReason === undefined || typeof ownReason === "string") &&
    (result === undefined || Number.isFinite(result)) &&
    Number.isFinite(when)
  );
}

/** The same; where it cannot be kept it counts until the page is closed, and the trouble is told. */
export function keepOrTell(
  shelf: Shelf,
  kept: KeptTries,
  id: LessonId,
  one: Try,
  onTrouble: (error: unknown) => void,
): KeptTries {
  try {
    return keep(shelf, kept, id, one);
  } catch (error) {
    onTrouble(error);
    return { ...kept, [id]: [...(kept[id] ?? []), one] };
  }
}
