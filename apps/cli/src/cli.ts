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
  new Option("--estimate", "repeat the draws of the worst what-ifs on a second mesh; the verdict counts both");
const json = () => new Option("--json", "print data as JSON");
const wear = () => new Option("--wear <file>", "take the state of the rig from this wear record; needs --on");
const on = () => new Option("--on <date>", "judge the rig on this day, YYYY-MM-DD, and tell its take-down date");
const tests = () => new Option("--tests <log>", "use your own break tests (CSV) in place of the built-in factors");
const jobs = () => new Option("--jobs <number>", "runs to make at a time; default: one for each core");
const cache = () => new Option("--cache <folder>", "keep the results of runs in this folder, for the next call");
const set = () => new Option("--set <which>", "which what-ifs to run").choices(["quick", "full"]).default("full");

const EVENT_HELP =
  "repeatable. fall@0.5: a leash fall in the middle. fails@0,hanging@0.25: the main line fails at anchor A while the walker hangs at a quarter of the span; also standing or caught. leg@A1,caught@0.5: the first leg of anchor A fails; also hanging";
const collect = (text: string, list: string[]) => [...list, text];
const judge = () =>
  new Option(
    "--judge <text>",
    'give your own judgement of a part, as in "leash=0.7: looks furry"; without =FACTOR a cautious factor counts; repeatable',
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
  secondline new rig.json                   begin a rig with eight questions
  secondline check rig.json                 tell what every part carries and holds, and the verdict
  secondline check rig.json --require       do the same; exit status 1 unless the rig holds
  secondline check rig.json --why           also tell the factors of every strength, and how each is known
  secondline compare rig.json other.json    put two to four layouts side by side
  secondline chances rig.json               tell how likely each part is to fail, and to fail first
  secondline sweep rig.json --over backup.slack=2%..14%
  secondline study plan.json --out results  make the runs of a plan; study merge joins the results of shards
  secondline report rig.json --out rig.html
  secondline card rig.json --wear record.json --out card.html
  secondline strength breaks.csv            tell from break tests what a part still holds
  secondline wear rig.json --wear record.json --on 2026-07-01
  secondline teardown rig.json --wear record.json --on 2026-07-01 --sheet cuts.html
  secondline measured fall.csv rig.json     compare a load cell's recording with the model's draws of that fall
  secondline validate rig.json              tell every fault in a file
  secondline solve problem.json --json      solve one problem with the engine alone
`,
  )
  .addHelpText(
    "after",
    `
Exit status:
  0  the command is done
  1  --require was given, and the verdict is not "holds" or the site card gives no permission
  2  the input is wrong, --require was given for less than the whole search, or the output cannot be written
  3  a run failed its own audit
Data goes to standard output, messages to standard error.

This is a model. It does not replace inspection, the makers' instructions, local codes and standards, or
qualified practice. Do not rig from it alone.`,
  );

program
  .command("check")
  .description(
    "simulate what can go wrong with a rig; tell what every part carries and holds, and which part goes first",
  )
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option("--require", "exit with status 1 unless the rig holds; needs the whole search, not a quick look")
  .option("--what-if <event>", `run only this what-if, and judge nothing else; ${EVENT_HELP}`, collect, [] as string[])
  .addOption(set())
  .addOption(accuracy())
  .addOption(estimate())
  .option("--runs <number>", "runs to spend; more runs settle margins that lie near a limit (default: 220)")
  .option("--all", "list every what-if, not only those that govern; also every single failure and the middle values")
  .option("--why", "print the factors of each strength, and how each factor is known")
  .option("--singles", "take away every part, one at a time, and tell what then carries the walker")
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/check.ts")).check(file, options));

program
  .command("new")
  .description("begin a rig: ask eight questions and write its file; values that you did not give are marked in it")
  .argument("<file>", "rig document (JSON) to write")
  .option("--answers <file>", "take the answers from this file (JSON) instead of asking")
  .option(
    "--set <name=value>",
    'give one answer, as in --set "span=60 m"; it counts before the file of answers; repeatable',
    collect,
    [] as string[],
  )
  .option("--ground <file>", "take the ground from a table of distance and height (CSV) instead of its lowest point")
  .addOption(
    new Option("--ground-unit <unit>", "the unit of that table, where it does not say it").choices(["m", "ft"]),
  )
  .option("--template", "ask nothing: take every value that is not given from the template")
  .option("--force", "overwrite the file when it exists")
  .action(async (file: string, options) => (await import("./commands/new.ts")).newRig(file, options));

program
  .command("compare")
  .description("put two to four layouts side by side")
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
  .description(
    "change one number of the rig step by step; tell where the least margin, the drop, the height or a load meets a limit",
  )
  .argument("<rig>", "rig document (JSON)")
  .requiredOption(
    "--over <path=from..to>",
    "the number, by its path in the rig's file, and its range: backup.slack=2%..14%, connection.1.at=0.3..0.6; also connections=0..5, and with --on months=0..24; give it twice for a map of two numbers",
    collect,
    [] as string[],
  )
  .option("--what <quantity>", "what to tell: margin, drop, height or load:PART", "margin")
  .option("--limit <value>", "add a limit of your own to what the rig requires: 1.2, 3m or 8kN")
  .option(
    "--points <number>",
    "values along the range; default: 13, or 7 along each of two; of connections every count",
  )
  .option("--what-if <event>", `draw this what-if instead of those that govern; ${EVENT_HELP}`, collect, [] as string[])
  .addOption(set())
  .addOption(accuracy())
  .addOption(json())
  .option("--out <file>", "write to this file instead of standard output")
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
  .description("tell how likely each part is to fail, and to fail first, when strengths and falls scatter")
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option(
    "--what-if <event>",
    `look at this what-if; default: the worst of a quick look; ${EVENT_HELP}`,
    collect,
    [] as string[],
  )
  .option("--runs <number>", "draws of each what-if; more draws make the intervals narrower (default: 64)")
  .option("--seed <number>", "seed of the random numbers; the same seed gives the same answer")
  .option(
    "--spread <input=spread>",
    "how far an input may be off, in place of the assumed spread, as in mass=5%; 0: it is known exactly; repeatable",
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
  .description(
    "make the runs of a plan of many rigs, ranges and draws; called again after it was stopped or killed, it makes the runs that are missing",
  )
  .argument("<plan>", "plan (JSON)")
  .option("--out <folder>", "write every finished run into this folder, as a line of JSON")
  .option("--shard <i/n>", "make only every n-th run, beginning with the i-th; other machines make the rest")
  .option("--status", "tell how many of the runs the folder has, and make none")
  .option("--cost", "tell how long the runs will take, and make none")
  .option("--yes", "begin, however long the runs will take")
  .addOption(json())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/study.ts")).study(file, options));

study
  .command("merge")
  .description("join the results of a study into one file: one line for each run, by its number")
  .argument("<folder...>", "folders with results")
  .requiredOption("--out <file>", "file to write")
  .option("--partial", "join them even if runs are missing")
  .option("--force", "overwrite the file when it exists")
  .action(async (folders: string[], options) => (await import("./commands/study.ts")).merge(folders, options));

program
  .command("report")
  .description("write a report of a rig, to print on A4")
  .argument("<rig>", "rig document (JSON)")
  .requiredOption("--out <file>", "HTML file to write")
  .option("--force", "overwrite the file when it exists")
  .option("--chances", "add the chances in the worst what-if")
  .option(
    "--sweep <path=from..to>",
    "add a sweep of this number, written as for the command sweep; may be given again for other numbers",
    collect,
    [] as string[],
  )
  .option("--sweep-what <quantity>", "of the sweeps: margin, drop, height or load:PART", "margin")
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
  .option("--require", "exit with status 1 unless the card gives permission")
  .addOption(set())
  .addOption(accuracy())
  .option("--wear <file>", "take the state of the rig from this wear record; without one the card gives no permission")
  .addOption(new Option("--on <date>", "the day of the card, YYYY-MM-DD; default: today"))
  .addOption(tests())
  .addOption(judge())
  .addOption(jobs())
  .addOption(cache())
  .action(async (file: string, options) => (await import("./commands/card.ts")).card(file, options));

program
  .command("strength")
  .description("tell from break tests what a part still holds")
  .argument("<log>", "break log (CSV)")
  .option("--content <percent>", "tell the load that this share of parts reaches: 95 or 90", "95")
  .option("--columns <file>", "read a table with other column names by this matching (JSON), which the page saves")
  .option("--plot <file>", "write plots of fit, residuals and retention (SVG)")
  .option("--table <file>", "write the numbers of these plots (CSV)")
  .option("--figure <which>", "write only this plot: fit, residuals or retention; repeatable", collect, [] as string[])
  .option("--dark", "draw on a dark ground")
  .option("--force", "overwrite these files when they exist")
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/strength.ts")).strength(file, options));

program
  .command("wear")
  .description("tell what a rig's webbing still holds along its length, from its wear record")
  .argument("<rig>", "rig document (JSON)")
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .addOption(judge())
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/wear.ts")).wear(file, options));

program
  .command("teardown")
  .description("choose which pieces of a line to pull when it comes down; tell what their results taught")
  .argument("<rig>", "rig document (JSON)")
  .addOption(wear().makeOptionMandatory())
  .addOption(on().makeOptionMandatory())
  .addOption(tests())
  .option("--pulls <number>", "pulls that you have at the machine (default: 12)")
  .option("--sheet <file>", "write the plan as HTML to print, with drawings and labels")
  .option("--log <file>", "write a break log (CSV) to fill in at the machine")
  .option("--force", "overwrite these files when they exist")
  .option("--results <log>", "read the filled-in log, and tell what it taught")
  .option("--share <percent>", "with --results: tell how many days the next line holds this share of new (default: 75)")
  .addOption(json())
  .action(async (file: string, options) => (await import("./commands/teardown.ts")).teardown(file, options));

program
  .command("measured")
  .description("compare a load cell's recording of a fall with the model: alignment, peak, impulse, spread")
  .argument("<recording>", "recording (CSV; docs/MEASURED.md has the format)")
  .argument("<rig>", "rig document (JSON)")
  .addOption(json())
  .option("--runs <number>", "draws of the model (default: 16)")
  .option(
    "--spread <input=spread>",
    "how far an input may be off, in place of the assumed spread; repeatable",
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
  .description("tell every fault in a rig, problem, wear record or break log")
  .argument("<file>", "JSON or CSV")
  .addOption(wear())
  .addOption(on())
  .addOption(tests())
  .addOption(judge())
  .action(async (file: string, options) => (await import("./commands/validate.ts")).validate(file, options));

program
  .command("solve")
  .description("solve one problem with the engine alone")
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
