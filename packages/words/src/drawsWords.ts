/** Sentences of many runs of one what-if. */

import type { LoadStrip, TraceBand } from "@secondline/scenarios";
import { DRAWS_ENGLISH, type DrawsKey } from "./drawsEnglish.ts";
import { filled, type Values } from "./language.ts";
import { listed } from "./lists.ts";
import { load } from "./quantity.ts";

export const sayDraws = (key: DrawsKey, values: Values = {}): string => filled(DRAWS_ENGLISH[key], values);

/** The dots in words, also for readers who do not see them. */
export function stripSentences({ loads, drawn, strength5 }: LoadStrip): readonly string[] {
  const count = loads.length;
  const [least, most] = [loads[0]!, loads.at(-1)!].map(load);
  // The middle value; for an even count the upper of the two, because loads are rounded up.
  const values = { count, least: least!, most: most!, middle: load(loads[Math.floor(count / 2)]!) };
  const over = strength5 === undefined ? 0 : loads.filter((one) => one > strength5).length;
  const idle = loads.filter((one) => one === 0).length;
  return [
    sayDraws(drawn ? "strip.draws" : count === 1 ? "strip.single" : "strip.few", values),
    ...(over > 0 ? [sayDraws("strip.over", { count: over })] : []),
    ...(idle > 0 && drawn ? [sayDraws("strip.idle", { count: idle })] : []),
  ];
}

/** The band behind a trace, in words. */
export const drawsBandSentence = ({ draws, leash }: TraceBand): string =>
  sayDraws("band.says", { count: draws, most: load(Math.max(...leash)) });

/** Every load in words. */
export const stripList = ({ loads }: LoadStrip): string =>
  sayDraws("strip.list", { list: listed(loads.map((one) => load(one))) });
