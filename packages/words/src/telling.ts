/** Makes the sentence of a fact. Facts from the packages below the words are a code with its values; their texts are here. */
import type { Fact, FactAmount, FactValue } from "@secondline/rig";
import { broughtIn } from "./broughtEnglish.ts";
import { dayText } from "./dates.ts";
import { formatForce, formatLength, formatMass, formatMonths, formatPercent, formatRatio } from "./formats.ts";
import { filled } from "./language.ts";
import { listed } from "./lists.ts";
import { required, rounded } from "./quantity.ts";
import { stockName } from "./stockNames.ts";

/** A value whose facts have sentences in a catalogue; the sentence of a fact whose code the types do not know is looked up. */
type ToldIn<Value, Code extends string> = Value extends Fact
  ? string extends Value["code"]
    ? Value
    : Value["code"] extends Code
      ? Value
      : never
  : Value;

/** Most letters told of a user's text, which may be as long as a file [letters]. */
const LONGEST_TEXT = 200;
const inShort = (text: string): string => (text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT)}…` : text);

/** Tells the facts of one catalogue, and every other value that a fact may have. */
export function telling<Code extends string>(sentences: Readonly<Record<Code, string>>) {
  const all: Readonly<Record<string, string>> = sentences;
  function value(one: FactValue): string | number {
    if (typeof one === "string") return inShort(one);
    if (typeof one === "number") return one;
    if ("code" in one) return sentence(one);
    if ("brought" in one) return broughtIn(one.brought);
    if ("stock" in one) return stockName(one.stock);
    if ("list" in one)
      return listed(
        one.list.map((item) => String(value(item))),
        one.joined,
      );
    return amountText(one);
  }
  function sentence({ code, values, next }: Fact): string {
    const text = all[code];
    if (text === undefined) throw new Error(`The fact "${code}" has no sentence here.`);
    const said = filled(text, Object.fromEntries(Object.entries(values).map(([name, one]) => [name, value(one)])));
    return next === undefined ? said : `${said} ${sentence(next)}`;
  }
  return <Told extends FactValue>(told: Told & ToldIn<Told, Code>): string => String(value(told));
}

function amountText(amount: FactAmount): string {
  if ("day" in amount) return dayText(amount.day);
  if ("force" in amount) return formatForce(amount.force);
  if ("length" in amount) return formatLength(amount.length);
  if ("mass" in amount) return formatMass(amount.mass);
  if ("share" in amount) return formatPercent(amount.share);
  if ("months" in amount) return formatMonths(amount.months);
  // A factor that raises a strength is told to the hundredth: beside "by 1 %" stands "1.01", not "1.1".
  if ("ratio" in amount) return amount.side === "up" ? required(amount.ratio) : formatRatio(amount.ratio, amount.side);
  return rounded(amount.rounded, amount.decimals, "nearest");
}
