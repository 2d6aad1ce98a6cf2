/** Numbers and sentences of the scene, in plain English. */
import type { Recording, RunEvent } from "@secondline/engine";
import type { Outcome, Rig } from "./sceneProps.ts";

/** A force with two or three digits, e.g. "7.1 kN" (from newtons). */
export function forceWords(newtons: number): string {
  const kN = newtons / 1000;
  return `${kN < 1 ? kN.toFixed(2) : kN < 20 ? kN.toFixed(1) : kN.toFixed(0)} kN`;
}

/** A length with two or three digits, e.g. "4.5 m" (from metres). */
export function lengthWords(metres: number): string {
  return `${Math.abs(metres) < 1 ? metres.toFixed(2) : Math.abs(metres) < 20 ? metres.toFixed(1) : metres.toFixed(0)} m`;
}

const PARTS: Readonly<Record<string, string>> = {
  main: "Main line",
  backup: "Backup",
  leash: "Leash",
  ring: "Ring",
  harness: "Harness",
  connection: "Connection",
  tape: "Tape",
  anchorA: "Leg at anchor A",
  anchorB: "Leg at anchor B",
};

export function partWords(part: string): string {
  return PARTS[part] ?? PARTS[part.split(".")[0]!] ?? part;
}

/** What happened, with its load where there is one; "" for events that nobody needs to see marked. */
export function eventWords(event: RunEvent): { readonly full: string; readonly short: string } {
  const part = partWords(event.part);
  const load = event.value === undefined ? "" : `, ${forceWords(event.value)}`;
  // Where along a line; of an anchor, `at` is the number of a leg.
  const place = event.part.startsWith("anchor") ? "" : placeWords(event.at);
  if (event.kind === "cut") return { full: `${part} fails${place}`, short: `${part} fails` };
  // Tapes are made to go and many go at once: their loads would only crowd the picture.
  if (event.kind === "break" && event.part === "tape") return { full: "Tape parts", short: "" };
  if (event.kind === "break") return { full: `${part} parts${load}`, short: `${part} parts` };
  if (event.kind === "slip") return { full: `Weblock slips${load}`, short: "slips" };
  if (event.kind === "ground") {
    const speed = event.value === undefined ? "" : ` at ${event.value.toFixed(1)} m/s`;
    return { full: `Walker meets the ground${speed}`, short: "ground" };
  }
  return { full: "", short: "" };
}

/** What broke, in order; tapes are only counted. */
function brokenWords(events: readonly RunEvent[]): readonly string[] {
  const broke = events.filter((e) => e.kind === "cut" || e.kind === "break");
  const tapes = broke.filter((e) => e.part === "tape").length;
  const words = broke.filter((e) => e.part !== "tape").map((e) => inSentence(eventWords(e).full));
  if (tapes > 0) words.push(tapes === 1 ? "one tape" : `${tapes} tapes`);
  return words;
}

function inSentence(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

function placeWords(at: number | undefined): string {
  if (at === undefined) return "";
  if (at < 0.02) return " at anchor A";
  if (at > 0.98) return " at anchor B";
  return ` at ${Math.round(100 * at)} % of the way`;
}

/** The scene in words, for those who do not see it. */
export function sceneWords(recording: Recording, rig: Rig, outcome?: Outcome): string {
  const { standing, walker, peaks, events } = recording;
  const broken = brokenWords(events);
  const onGround = events.some((e) => e.kind === "ground");
  const sentences = [
    `${rig.name}: a line of ${lengthWords(rig.span)} between anchors A and B.`,
    `With the walker on it the main line sags ${lengthWords(standing.sag)}.`,
    `The walker drops ${lengthWords(walker.drop)}, lowest after ${recording.walker.lowestTime.toFixed(1)} seconds.`,
    `Hardest pull of the leash ${forceWords(peaks.leash.cfc60)}.`,
    broken.length > 0 ? `What breaks: ${broken.join("; ")}.` : "Nothing breaks.",
  ];
  if (onGround) sentences.push("The walker meets the ground.");
  if (outcome) sentences.push(outcome.sentence);
  return sentences.join(" ");
}
