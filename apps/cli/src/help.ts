/** The layout of the help, and the messages on a mistaken command line, in the words of the language. */
import { listed } from "@secondline/words";
import { sayHelp } from "@secondline/words/terminal/help";
import { type Command, Help, type HelpConfiguration, type Option } from "commander";
import { wrap } from "./wrap.ts";

/** Commands for a beginner. A command without a sentence explains itself. */
const EXAMPLES: readonly (readonly [command: string, says?: string])[] = [
  ["secondline new rig.json", sayHelp("examples.new")],
  ["secondline check rig.json", sayHelp("examples.check")],
  ["secondline check rig.json --require", sayHelp("examples.checkRequire")],
  ["secondline check rig.json --why", sayHelp("examples.checkWhy")],
  ["secondline compare rig.json other.json", sayHelp("examples.compare")],
  ["secondline chances rig.json", sayHelp("examples.chances")],
  ["secondline sweep rig.json --over backup.slack=2%..14%"],
  ["secondline study plan.json --out results", sayHelp("examples.study")],
  ["secondline report rig.json --out rig.html"],
  ["secondline card rig.json --wear record.json --out card.html"],
  ["secondline strength breaks.csv", sayHelp("examples.strength")],
  ["secondline wear rig.json --wear record.json --on 2026-07-01"],
  ["secondline teardown rig.json --wear record.json --on 2026-07-01 --sheet cuts.html"],
  ["secondline measured fall.csv rig.json", sayHelp("examples.measured")],
  ["secondline validate rig.json", sayHelp("examples.validate")],
  ["secondline solve problem.json --json", sayHelp("examples.solve")],
];

/** Width of the commands, with the gap to their descriptions [letters]. */
const EXAMPLE_COLUMNS = 42;

export const examplesText = (): string =>
  [
    sayHelp("examples.head"),
    ...EXAMPLES.map(([command, says]) =>
      says === undefined ? `  ${command}` : `  ${command.padEnd(EXAMPLE_COLUMNS)}${says}`,
    ),
    "",
  ].join("\n");

/** Width of the text under the options [letters]. */
const FOOT_COLUMNS = 108;

export const exitText = (): string =>
  [
    "",
    sayHelp("exit.head"),
    ...(["done", "required", "input", "audit"] as const).map((name, exit) => `  ${exit}  ${sayHelp(`exit.${name}`)}`),
    sayHelp("exit.streams"),
    "",
    wrap(sayHelp("caution.model"), FOOT_COLUMNS),
  ].join("\n");

/** Headings of the help, by their text in the library. */
const HELP_HEADINGS: Readonly<Record<string, string>> = {
  "Usage:": sayHelp("usage.head"),
  "Arguments:": sayHelp("usage.arguments"),
  "Options:": sayHelp("usage.options"),
  "Commands:": sayHelp("usage.commands"),
};
const usual = Help.prototype;
const inUsage = (usage: string): string =>
  usage
    .replace("[options]", `[${sayHelp("usage.anyOptions")}]`)
    .replace("[command]", `[${sayHelp("usage.anyCommand")}]`);

export const HELP_LAYOUT: HelpConfiguration = {
  showGlobalOptions: false,
  styleTitle: (head) => HELP_HEADINGS[head] ?? head,
  commandUsage: (command: Command) => inUsage(usual.commandUsage(command)),
  subcommandTerm: (command: Command) => inUsage(usual.subcommandTerm.call(usual, command)),
  optionDescription({ argChoices, defaultValue, defaultValueDescription, description, ...option }: Option) {
    const takes = option.required || option.optional;
    const details = [
      ...(argChoices ? [sayHelp("usage.choices", { list: quoted(argChoices) })] : []),
      ...(takes && defaultValue !== undefined
        ? [sayHelp("usage.default", { value: defaultValueDescription ?? JSON.stringify(defaultValue) })]
        : []),
    ];
    return details.length === 0 ? description : `${description} (${listed(details)})`;
  },
};

const quoted = (choices: readonly string[]) => listed(choices.map((one) => JSON.stringify(one)));

type Mistake = readonly [says: RegExp, said: (found: readonly string[]) => string];

/** Messages of the library on a mistaken command line, and the messages printed instead. */
const PARSER_MISTAKES: readonly Mistake[] = [
  [/^error: unknown option '(.*)'$/, ([option = ""]) => sayHelp("mistake.unknownOption", { option })],
  [/^error: unknown command '(.*)'$/, ([command = ""]) => sayHelp("mistake.unknownCommand", { command })],
  [/^\(Did you mean one of (.*)\?\)$/, ([similar = ""]) => sayHelp("mistake.similarSome", { similar })],
  [/^\(Did you mean (.*)\?\)$/, ([similar = ""]) => sayHelp("mistake.similarOne", { similar })],
  [/^error: missing required argument '(.*)'$/, ([argument = ""]) => sayHelp("mistake.argumentMissing", { argument })],
  [/^error: option '(.*)' argument missing$/, ([option = ""]) => sayHelp("mistake.valueMissing", { option })],
  [/^error: required option '(.*)' not specified$/, ([option = ""]) => sayHelp("mistake.optionMissing", { option })],
  [
    /^error: too many arguments for '(.*)'\. Expected (\d+) arguments? but got (\d+)\.$/,
    ([command = "", most = "", got = ""]) => sayHelp("mistake.tooMany", { command, most, got }),
  ],
  [
    /^error: option '(.*?)' argument '(.*)' is invalid\. Allowed choices are (.*)\.$/,
    ([option = "", got = "", list = ""]) => sayHelp("mistake.notAllowed", { option, got, list }),
  ],
];

/** Translates line by line; an unknown line stays as it is. */
export const spokenMistake = (text: string): string =>
  text
    .split("\n")
    .map((line) => {
      for (const [says, said] of PARSER_MISTAKES) {
        const found = says.exec(line);
        if (found) return said(found.slice(1));
      }
      return line;
    })
    .join("\n");
