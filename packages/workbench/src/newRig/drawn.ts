/**
 * Answers moved by hand in the sketch. Whoever moves one point of a guessed valley, or one connection of the template, has not
 * confirmed the others: such an answer is noted as drawn until its question is said to be right.
 */

import { metreText } from "../metres.ts";
import type { Point } from "../side/side.ts";
import type { AnswerId, Answers } from "./answers.ts";
import { placesText } from "./places.ts";

type Drawn = NonNullable<Answers["drawn"]>[number];

/** The ground as drawn, in place of its lowest point. */
export function withDrawnGround(answers: Answers, points: readonly Point[]): Answers {
  // What came from a file is somebody's own already.
  const isOwn = answers.profile !== undefined && !answers.drawn?.includes("ground");
  const profile = points.map(([x, z]): [string, string] => [metreText(x), metreText(z)]);
  return { ...(isOwn ? answers : noted(answers, "ground")), profile };
}

/** Connections where the sketch has them [m from A]. */
export function withDrawnConnections(answers: Answers, metres: readonly number[]): Answers {
  const isOwn = answers.connections !== undefined && !answers.drawn?.includes("connections");
  return { ...(isOwn ? answers : noted(answers, "connections")), connections: placesText(metres) };
}

/** An answer as typed; an empty text takes it back: the template's value stands again. */
export function withAnswer(answers: Answers, id: AnswerId, text: string): Answers {
  const { [id]: _, ...others } = id === "connections" ? unnoted(answers, "connections") : answers;
  return text.trim() === "" ? others : { ...others, [id]: text };
}

/** The ground from a file, or none: then its lowest point counts again. */
export function withProfile(answers: Answers, profile: readonly (readonly [string, string])[] | undefined): Answers {
  const { profile: _, ...others } = unnoted(answers, "ground");
  return profile ? { ...others, profile: profile.map(([x, z]) => [x, z]) } : others;
}

const noted = (answers: Answers, one: Drawn): Answers => ({
  ...answers,
  drawn: [...(answers.drawn ?? []).filter((other) => other !== one), one],
});

function unnoted(answers: Answers, one: Drawn): Answers {
  const { drawn, ...others } = answers;
  const left = (drawn ?? []).filter((other) => other !== one);
  return left.length === 0 ? others : { ...others, drawn: left };
}
