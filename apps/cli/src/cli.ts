#!/usr/bin/env node
/** The command line. Commands are loaded when called, so that `--help` and mistakes answer at once. */
import { DEFAULT_RUNS } from "@secondline/scenarios";
import { type HelpKey, sayHelp } from "@secondline/words/terminal/help";
import { Command, CommanderError, Option } from "commander";
import { CommandFailure, EXIT } from "./failure.ts";
import { examplesText, exitText, HELP_LAYOUT, spokenMistake } from "./help.ts";
import { writeData, writeMessage } from "./output.ts";
import { message } from "./terminal.ts";
import { VERSION } from "./version.ts";

type ValueName = HelpKey extends infer Key ? (Key extends `value.${infer Name}` ? Name : never) : never;
/** The arguments of a command, by their name in the help. */
const value = (name: ValueName, more = "") => `<${sayHelp(`value.${name}`)}${more}>`;

const ACCURACIES = ["quick", "standard", "fine"] as const;
const accuracy = (usual: (typeof ACCURACIES)[number] = "standard") =>
  new Option(`--accuracy ${value("mesh")}`, sayHelp("option.accuracy")).choices(ACCURACIES).default(usual);
const estimate = () => new Option("--estimate", sayHelp("option.estimate"));
const json = () => new Option("--json", sayHelp("option.json"));
const wear = () => new Option(`--wear ${value("file")}`, sayHelp("option.wear"));
const on = () => new Option(`--on ${value("date")}`, sayHelp("option.on"));
const tests = () => new Option(`--tests ${value("log")}`, sayHelp("option.tests"));
const jobs = () => new Option(`--jobs ${value("number")}`, sayHelp("option.jobs"));
const cache = () => new Option(`--cache ${value("folder")}`, sayHelp("option.cache"));
const set = () =>
  new Option(`--set ${value("which")}`, sayHelp("option.set")).choices(["quick", "full"]).default("full");

const events = sayHelp("events");
const collect = (text: string, list: string[]) => [...list, text];
const judge = () =>
  new Option(`--judge ${value("text")}`, sayHelp("option.judge"))
    .argParser(collect)
    .default([] as string[], sayHelp("option.judge.none"));

const program = new Command("secondline")
  .description(sayHelp("program.does"))
  .version(VERSION, "--version", sayHelp("program.version"))
  .helpOption("-h, --help", sayHelp("program.help"))
  .helpCommand(false)
  // If two commands have an option of the same name, each reads its own.
  .enablePositionalOptions()
  .showHelpAfterError(sayHelp("program.tryHelp"))
  .configureHelp(HELP_LAYOUT)
  .configureOutput({
    writeOut: writeData,
    writeErr: writeMessage,
    outputError: (text, write) => write(spokenMistake(text)),
  })
  .addHelpText("before", examplesText())
  .addHelpText("after", exitText());

program
  .command("check")
  .description(sayHelp("check.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .addOption(json())
  .option("--require", sayHelp("check.require"))
  .option(`--what-if ${value("event")}`, sayHelp("check.whatIf", { events }), collect, [] as string[])
  .addOption(set())
  .addOption(accuracy())
  .addOption(estimate())
  .option(`--runs ${value("number")}`, sayHelp("check.runs", { default: DEFAULT_RUNS }))
  .option("--all", sayHelp("check.all"))
  .option("--why", sayHelp("check.why"))
  .option("--singles", sayHelp("check.singles"))
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/check.ts")).check(file, options));

program
  .command("new")
  .description(sayHelp("new.does"))
  .argument(value("file"), sayHelp("new.file"))
  .option(`--answers ${value("file")}`, sayHelp("new.answers"))
  .option(`--set ${value("answer")}`, sayHelp("new.set"), collect, [] as string[])
  .option(`--ground ${value("file")}`, sayHelp("new.ground"))
  .addOption(new Option(`--ground-unit ${value("unit")}`, sayHelp("new.groundUnit")).choices(["m", "ft"]))
  .option("--template", sayHelp("new.template"))
  .option("--force", sayHelp("option.overwriteFile"))
  .action(async (file: string, options) => (await import("./commands/new.ts")).newRig(file, options));

program
  .command("compare")
  .description(sayHelp("compare.does"))
  .argument(value("rig", "..."), sayHelp("argument.rigs"))
  .addOption(json())
  .addOption(set())
  .addOption(accuracy())
  .addOption(estimate())
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (files: string[], options) => (await import("./commands/compare.ts")).compare(files, options));

program
  .command("sweep")
  .description(sayHelp("sweep.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .requiredOption(`--over ${value("range")}`, sayHelp("sweep.over"), collect, [] as string[])
  .option(`--what ${value("quantity")}`, sayHelp("sweep.what"), "margin")
  .option(`--limit ${value("limit")}`, sayHelp("sweep.limit"))
  .option(`--points ${value("number")}`, sayHelp("sweep.points"))
  .option(`--what-if ${value("event")}`, sayHelp("sweep.whatIf", { events }), collect, [] as string[])
  .addOption(set())
  .addOption(accuracy())
  .addOption(json())
  .option(`--out ${value("file")}`, sayHelp("sweep.out"))
  .option("--force", sayHelp("option.overwriteFile"))
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/sweep.ts")).sweep(file, options));

program
  .command("chances")
  .description(sayHelp("chances.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .addOption(json())
  .option(`--what-if ${value("event")}`, sayHelp("chances.whatIf", { events }), collect, [] as string[])
  .option(`--runs ${value("number")}`, sayHelp("chances.runs"))
  .option(`--seed ${value("number")}`, sayHelp("chances.seed"))
  .option(`--spread ${value("spread")}`, sayHelp("chances.spread"), collect, [] as string[])
  .addOption(accuracy())
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/chances.ts")).chances(file, options));

const study = program
  .command("study")
  .enablePositionalOptions()
  .description(sayHelp("study.does"))
  .argument(value("plan"), sayHelp("study.plan"))
  .option(`--out ${value("folder")}`, sayHelp("study.out"))
  .option(`--shard ${value("shard")}`, sayHelp("study.shard"))
  .option("--status", sayHelp("study.status"))
  .option("--cost", sayHelp("study.cost"))
  .option("--yes", sayHelp("study.yes"))
  .addOption(json())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/study.ts")).study(file, options));

study
  .command("merge")
  .description(sayHelp("merge.does"))
  .argument(value("folder", "..."), sayHelp("merge.folders"))
  .requiredOption(`--out ${value("file")}`, sayHelp("merge.out"))
  .option("--partial", sayHelp("merge.partial"))
  .option("--force", sayHelp("option.overwriteFile"))
  .action(async (folders: string[], options) => (await import("./commands/study.ts")).merge(folders, options));

program
  .command("report")
  .description(sayHelp("report.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .requiredOption(`--out ${value("file")}`, sayHelp("option.htmlFile"))
  .option("--force", sayHelp("option.overwriteFile"))
  .option("--chances", sayHelp("report.chances"))
  .option(`--sweep ${value("range")}`, sayHelp("report.sweep"), collect, [] as string[])
  .option(`--sweep-what ${value("quantity")}`, sayHelp("report.sweepWhat"), "margin")
  .addOption(estimate())
  .addOption(set())
  .addOption(accuracy())
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/report.ts")).report(file, options));

program
  .command("card")
  .description(sayHelp("card.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .requiredOption(`--out ${value("file")}`, sayHelp("option.htmlFile"))
  .option("--force", sayHelp("option.overwriteFile"))
  .option("--require", sayHelp("card.require"))
  .addOption(set())
  .addOption(accuracy())
  .option(`--wear ${value("file")}`, sayHelp("card.wear"))
  .addOption(new Option(`--on ${value("date")}`, sayHelp("card.on")))
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/card.ts")).card(file, options));

program
  .command("strength")
  .description(sayHelp("strength.does"))
  .argument(value("log"), sayHelp("strength.log"))
  .option(`--content ${value("percent")}`, sayHelp("strength.content"), "95")
  .option(`--columns ${value("file")}`, sayHelp("strength.columns"))
  .option(`--plot ${value("file")}`, sayHelp("strength.plot"))
  .option(`--table ${value("file")}`, sayHelp("strength.table"))
  .option(`--figure ${value("which")}`, sayHelp("strength.figure"), collect, [] as string[])
  .option("--dark", sayHelp("strength.dark"))
  .option("--force", sayHelp("option.overwriteFiles"))
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/strength.ts")).strength(file, options));

program
  .command("wear")
  .description(sayHelp("wear.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .addOption(judge())
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/wear.ts")).wear(file, options));

program
  .command("teardown")
  .description(sayHelp("teardown.does"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .option(`--pulls ${value("number")}`, sayHelp("teardown.pulls"))
  .option(`--sheet ${value("file")}`, sayHelp("teardown.sheet"))
  .option(`--log ${value("file")}`, sayHelp("teardown.log"))
  .option("--force", sayHelp("option.overwriteFiles"))
  .option(`--results ${value("log")}`, sayHelp("teardown.results"))
  .option(`--share ${value("percent")}`, sayHelp("teardown.share"))
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/teardown.ts")).teardown(file, options));

program
  .command("measured")
  .description(sayHelp("measured.does"))
  .argument(value("recording"), sayHelp("measured.recording"))
  .argument(value("rig"), sayHelp("argument.rig"))
  .addOption(json())
  .option(`--runs ${value("number")}`, sayHelp("measured.runs"))
  .option(`--spread ${value("spread")}`, sayHelp("measured.spread"), collect, [] as string[])
  .addOption(accuracy())
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .action(async (recording: string, file: string, options) =>
    (await import("./commands/measured.ts")).measured(recording, file, options),
  );

program
  .command("validate")
  .description(sayHelp("validate.does"))
  .argument(value("file"), sayHelp("validate.file"))
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .action(async (file: string, options) => (await import("./commands/validate.ts")).validate(file, options));

program
  .command("solve")
  .description(sayHelp("solve.does"))
  .argument(value("problem"), sayHelp("solve.problem"))
  .addOption(json())
  .addOption(accuracy())
  .action(async (file: string, options) => (await import("./commands/solve.ts")).solve(file, options));

for (const command of [program, ...program.commands, ...study.commands]) command.exitOverride();

try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = exitOf(error);
}

/** Prints the failure and returns the exit status. */
function exitOf(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.input;
  if (error instanceof CommandFailure) {
    for (const line of error.lines) message(line);
    return error.exit;
  }
  message(`secondline: ${error instanceof Error ? error.message : String(error)}`);
  return EXIT.audit;
}
