#!/usr/bin/env node
/** The command line. Commands are loaded when called, so that `--help` and mistakes answer at once. */
import { Command, CommanderError, Option } from "commander";
import { CommandFailure, EXIT } from "./failure.ts";
import { writeData, writeMessage } from "./output.ts";
import { message } from "./terminal.ts";
import { VERSION } from "./version.ts";

const ACCURACIES = ["quick", "standard", "fine"] as const;
const accuracy = (usual: (typeof ACCURACIES)[number] = "standard") =>
  new Option("--accuracy <mesh>", "how fine the mesh is").choices(ACCURACIES).default(usual);
const estimate = () =>
  new Option("--estimate", "make the draws of the worst what-ifs on a second mesh too; all of them count");
const json = () => new Option("--json", "print data as JSON");
const wear = () => new Option("--wear <file>", "bring the rig to its state by a wear record; needs --on");
const on = () => new Option("--on <date>", "the day that counts, YYYY-MM-DD; gives the take-down date from there");
const tests = () => new Option("--tests <log>", "own break tests (CSV) in place of built-in factors");
const jobs = () =>
  new Option("--jobs <number>", "how many runs are made at a time; default: as many as there are cores");
const cache = () => new Option("--cache <folder>", "keep results of runs here, for the next call");
const set = () => new Option("--set <which>", "which what-ifs to run").choices(["quick", "full"]).default("full");

const EVENT_HELP =
  "repeatable: fall@0.5 (leash fall in the middle), fails@0,hanging@0.25 (main line fails at anchor A, walker hanging at a quarter; also standing or caught), leg@A1,caught@0.5 (first leg of anchor A fails; also hanging)";
const collect = (text: string, list: string[]) => [...list, text];
const judge = () =>
  new Option(
    "--judge <text>",
    'your own judgement of a part, "leash=0.7: looks furry", repeatable; without =FACTOR the cautious one is taken',
  )
    .argParser(collect)
    .default([] as string[], "none");

const program = new Command("secondline")
  .description("What carries the walker when a highline goes wrong, how hard, how far down, and which part goes first.")
  .version(VERSION, "--version", "print the version")
  .helpOption("-h, --help", "print this help")
  .helpCommand(false)
  // Of two commands with an option of one name each reads its own.
  .enablePositionalOptions()
  .showHelpAfterError("Try --help.")
  .configureHelp({ showGlobalOptions: false })
  .configureOutput({ writeOut: writeData, writeErr: writeMessage })
  .addHelpText(
    "before",
    `Examples:
  secondline new rig.json                   begins a rig with eight questions
  secondline check rig.json                 what every part carries and holds, and the verdict
  secondline check rig.json --require       the same; exit status 1 unless everything holds
  secondline check rig.json --why           with what every strength is made of, and on what basis
  secondline compare rig.json other.json    two to four layouts side by side
  secondline chances rig.json               how likely each part is to fail, and to be the first
  secondline sweep rig.json --over backup.slack=2%..14%
  secondline study plan.json --out results  the runs of a plan; study merge puts shards together
  secondline report rig.json --out rig.html a report to print
  secondline card rig.json --wear record.json --out card.html
  secondline strength breaks.csv            what break tests say a part still holds
  secondline wear rig.json --wear record.json --on 2026-07-01
  secondline teardown rig.json --wear record.json --on 2026-07-01 --sheet cuts.html
  secondline measured fall.csv rig.json     a load cell's recording beside the model's draws of that fall
  secondline validate rig.json              every fault in a file
  secondline solve problem.json --json      the bare engine on one problem
`,
  )
  .addHelpText(
    "after",
    `
Exit status: 0 done; 1 with --require when the verdict is not "holds", or a site card gives no permission; 2 bad
input, --require of less than the whole search, or output that cannot be written; 3 a run failed its own audit.
Data goes to standard output, messages to standard error.

This is a model. It does not replace inspection, the makers' instructions, local codes and standards, or
qualified practice. Do not rig from it alone.`,
  );

program
  .command("check")
  .description("simulate what can go wrong with a rig; say what every part carries, holds, and which goes first")
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option("--require", "exit status 1 unless the rig holds; only of the whole search, not of a quick look")
  .option("--what-if <event>", `run this only, and speak of this alone; ${EVENT_HELP}`, collect, [] as string[])
  .addOption(set())
  .addOption(accuracy())
  .addOption(estimate())
  .option("--runs <number>", "runs to spend; more of them settle what lies near a limit (default: 220)")
  .option("--all", "list every what-if, not only those that govern, the single failures and the middle values")
  .option("--why", "print what each strength is made of, with the basis of every factor")
  .option("--singles", "list every part gone, one at a time, and what then carries the walker")
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/check.ts")).check(file, options));

program
  .command("new")
  .description("begin a rig: asks eight questions, and writes a file in which what was not answered is marked")
  .argument("<file>", "rig document (JSON) to write")
  .option("--answers <file>", "answers from a file (JSON) instead of asking")
  .option(
    "--set <name=value>",
    'an answer, such as --set "span=60 m"; repeatable, goes before the file',
    collect,
    [] as string[],
  )
  .option("--ground <file>", "the ground from a table of distance and height (CSV) instead of its lowest point")
  .addOption(new Option("--ground-unit <unit>", "metres or feet, where that file does not say it").choices(["m", "ft"]))
  .option("--template", "ask nothing: what is not answered is taken over from the template")
  .option("--force", "overwrite the file when it exists")
  .action(async (file: string, options) => (await import("./commands/new.ts")).newRig(file, options));

program
  .command("compare")
  .description("two to four layouts side by side")
  .argument("<rig...>", "rig documents (JSON)")
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
  .description("how a number of the rig moves its least margin, drop, height or a load, and where that meets a limit")
  .argument("<rig>", "rig document (JSON)")
  .requiredOption(
    "--over <path=from..to>",
    "what to change, by its path in the rig's file: backup.slack=2%..14%, connection.1.at=0.3..0.6, also connections=0..5 and, with --on, months=0..24; twice for a map of two",
    collect,
    [] as string[],
  )
  .option("--what <quantity>", "margin, drop, height or load:PART", "margin")
  .option("--limit <value>", "a limit of your own beside what the rig requires: 1.2, 3m or 8kN")
  .option("--points <number>", "values along the range; default: 13, of two 7 each, of what is counted all")
  .option(
    "--what-if <event>",
    `draw this, in place of those that are found to govern; ${EVENT_HELP}`,
    collect,
    [] as string[],
  )
  .addOption(set())
  .addOption(accuracy())
  .addOption(json())
  .option("--out <file>", "write to this file instead")
  .option("--force", "overwrite the file when it exists")
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/sweep.ts")).sweep(file, options));

program
  .command("chances")
  .description("how likely each part is to fail, and to be the first, when strengths and what happens scatter")
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option(
    "--what-if <event>",
    `of this; default: the worst among a few, on a coarse mesh; ${EVENT_HELP}`,
    collect,
    [] as string[],
  )
  .option("--runs <number>", "draws per what-if; more make the intervals narrower (default: 64)")
  .option("--seed <number>", "of the random numbers: the same seed gives the same answer")
  .option(
    "--spread <input=spread>",
    "how far an input may be off, in place of what is assumed; repeatable: mass=5%, 0 takes it for exactly known",
    collect,
    [] as string[],
  )
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
  .description("the runs of a plan: many rigs, ranges and draws; killed at any moment it goes on where it was")
  .argument("<plan>", "plan (JSON)")
  .option("--out <folder>", "write every finished run into this folder, as a line of JSON")
  .option("--shard <i/n>", "make only every n-th run, beginning with the i-th; others make the rest")
  .option("--status", "say how much of it the folder has, and make nothing")
  .option("--cost", "say what it will cost, and make nothing")
  .option("--yes", "begin it however long it takes")
  .addOption(json())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/study.ts")).study(file, options));

study
  .command("merge")
  .description("put results of a study together: one line a run, by its number")
  .argument("<folder...>", "folders that runs were written into")
  .requiredOption("--out <file>", "file to write")
  .option("--partial", "also when runs are missing")
  .option("--force", "overwrite the file when it exists")
  .action(async (folders: string[], options) => (await import("./commands/study.ts")).merge(folders, options));

program
  .command("report")
  .description("write a report of a rig to print on A4")
  .argument("<rig>", "rig document (JSON)")
  .requiredOption("--out <file>", "HTML file to write")
  .option("--force", "overwrite the file when it exists")
  .option("--chances", "with the chances in the worst what-if")
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
  .description("write a site card, one page to hang at the line: who may walk, until when, for how many falls")
  .argument("<rig>", "rig document (JSON)")
  .requiredOption("--out <file>", "HTML file to write")
  .option("--force", "overwrite the file when it exists")
  .option("--require", "exit status 1 unless the card gives permission")
  .addOption(set())
  .addOption(accuracy())
  .option("--wear <file>", "bring the rig to its state by a wear record; without one no permission is given")
  .addOption(new Option("--on <date>", "the day that counts, YYYY-MM-DD; default: today"))
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/card.ts")).card(file, options));

program
  .command("strength")
  .description("what break tests say a part still holds")
  .argument("<log>", "break log (CSV)")
  .option("--content <percent>", "share of parts that reach the value: 95 or 90", "95")
  .option("--columns <file>", "which column is which, as the page saves it (JSON): for a table with names of its own")
  .option("--plot <file>", "write plots of fit, residuals and retention as a drawing (SVG)")
  .option("--table <file>", "write the numbers of these plots (CSV)")
  .option("--figure <which>", "only these: fit, residuals or retention; repeatable", collect, [] as string[])
  .option("--dark", "draw on a dark ground")
  .option("--force", "overwrite these files when they exist")
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/strength.ts")).strength(file, options));

program
  .command("wear")
  .description("what a rig's webbing still holds along its length on a date, by its wear record")
  .argument("<rig>", "rig document (JSON)")
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .addOption(judge())
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/wear.ts")).wear(file, options));

program
  .command("teardown")
  .description("which pieces of a line that comes down to pull, and what their results taught")
  .argument("<rig>", "rig document (JSON)")
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .option("--pulls <number>", "how many pulls you have (default: 12)")
  .option("--sheet <file>", "write the plan as HTML to print, with drawings and labels")
  .option("--log <file>", "write a break log (CSV) to fill in at the machine")
  .option("--force", "overwrite these files when they exist")
  .option("--results <log>", "the filled-in log: say what was learnt instead")
  .option("--share <percent>", "with --results: days until the next line holds this share of new (default: 75)")
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/teardown.ts")).teardown(file, options));

program
  .command("measured")
  .description("hold a load cell's recording of a fall against the model: alignment, peak, impulse, spread")
  .argument("<recording>", "recording (CSV; docs/MEASURED.md has the format)")
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option("--runs <number>", "draws of the model (default: 16)")
  .option(
    "--spread <input=spread>",
    "how far an input may be off, in place of what is assumed; repeatable",
    collect,
    [] as string[],
  )
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
  .description("find every fault in a rig, problem, wear record or break log")
  .argument("<file>", "JSON or CSV")
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .action(async (file: string, options) => (await import("./commands/validate.ts")).validate(file, options));

program
  .command("solve")
  .description("solve one problem with the bare engine")
  .argument("<problem>", "problem file (JSON, SI units)")
  .addOption(json())
  .addOption(accuracy())
  .action(async (file: string, options) => (await import("./commands/solve.ts")).solve(file, options));

for (const command of [program, ...program.commands, ...study.commands]) command.exitOverride();

try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = exitOf(error);
}

/** Prints what went wrong and says with which status to leave. */
function exitOf(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.input;
  if (error instanceof CommandFailure) {
    for (const line of error.lines) message(line);
    return error.exit;
  }
  message(`secondline: ${error instanceof Error ? error.message : String(error)}`);
  return EXIT.audit;
}
