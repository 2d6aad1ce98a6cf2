import { sayPage } from "@secondline/words/page/page";
import type { Direction, SeekSize } from "./playbackClock.ts";

/** What a key asks of the time strip. */
export type KeyAction =
  | { readonly do: "toggle" | "start" | "end" | "loop" | "measure" | "fit" }
  | { readonly do: "seek"; readonly size: SeekSize; readonly direction: Direction }
  | { readonly do: "frame" | "mark" | "zoom"; readonly direction: Direction };

interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** The keys, for the help page: what to press and what it does. */
export const TIME_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "Space", does: sayPage("timeKeys.playOrPause") },
  { keys: "← →", does: sayPage("timeKeys.step") },
  { keys: "Shift + ← →", does: sayPage("timeKeys.longStep") },
  { keys: "Alt + ← →", does: sayPage("timeKeys.fineStep") },
  { keys: ", .", does: sayPage("timeKeys.frame") },
  { keys: "[ ]", does: sayPage("timeKeys.nextEvent") },
  { keys: "Home End", does: sayPage("timeKeys.startOrEnd") },
  { keys: "L", does: sayPage("timeKeys.repeat") },
  { keys: "M", does: sayPage("timeKeys.measure") },
  { keys: "+ −", does: sayPage("timeKeys.zoom") },
  { keys: "0", does: sayPage("timeKeys.zoomToAll") },
];

export function keyAction(event: Key): KeyAction | null {
  if (event.metaKey) return null;
  if (event.key === "ArrowLeft" || event.key === "ArrowRight") {
    const size = event.shiftKey ? "coarse" : event.altKey || event.ctrlKey ? "fine" : "medium";
    return { do: "seek", size, direction: event.key === "ArrowLeft" ? -1 : 1 };
  }
  // With these held the key belongs to the browser or the system; Alt writes brackets on some keyboards.
  const writesBracket = event.key === "[" || event.key === "]";
  if (!writesBracket && (event.ctrlKey || event.altKey)) return null;
  return PLAIN.get(event.key) ?? PLAIN.get(event.key.toLowerCase()) ?? null;
}

const PLAIN: ReadonlyMap<string, KeyAction> = new Map<string, KeyAction>([
  [" ", { do: "toggle" }],
  ["Home", { do: "start" }],
  ["End", { do: "end" }],
  ["PageUp", { do: "seek", size: "coarse", direction: 1 }],
  ["PageDown", { do: "seek", size: "coarse", direction: -1 }],
  [",", { do: "frame", direction: -1 }],
  [".", { do: "frame", direction: 1 }],
  ["[", { do: "mark", direction: -1 }],
  ["]", { do: "mark", direction: 1 }],
  ["+", { do: "zoom", direction: 1 }],
  ["=", { do: "zoom", direction: 1 }],
  ["-", { do: "zoom", direction: -1 }],
  ["0", { do: "fit" }],
  ["l", { do: "loop" }],
  ["m", { do: "measure" }],
]);
