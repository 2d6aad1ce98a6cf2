/** Sentences of the help of the terminal. No page loads it. */
export const HELP_ENGLISH = {
  "program.does":
    "What carries the walker when a highline goes wrong, how hard, how far down, and which part goes first.",
  "program.version": "print the version",
  "program.help": "print this help",
  "program.tryHelp": "Try --help.",

  "examples.head": "Examples:",
  "examples.new": "begin a rig with eight questions",
  "examples.check": "tell what every part carries and holds, and the verdict",
  "examples.checkRequire": "do the same; exit status 1 unless the rig holds",
  "examples.checkWhy": "also tell the factors of every strength, and how each is known",
  "examples.compare": "put two to four layouts side by side",
  "examples.chances": "tell how likely each part is to fail, and to fail first",
  "examples.study": "make the runs of a plan; study merge joins the results of shards",
  "examples.strength": "tell from break tests what a part still holds",
  "examples.measured": "compare a load cell's recording with the model's draws of that fall",
  "examples.validate": "tell every fault in a file",
  "examples.solve": "solve one problem with the engine alone",

  "exit.head": "Exit status:",
  "exit.done": "the command is done",
  "exit.required": '--require was given, and the verdict is not "holds" or the site card gives no permission',
  "exit.input":
    "the input is wrong, --require was given for less than the whole search, or the output cannot be written",
  "exit.audit": "a run failed its own audit",
  "exit.streams": "Data goes to standard output, messages to standard error.",
  "caution.model":
    "This is a model. It does not replace inspection, the makers' instructions, local codes and standards, or qualified practice. Do not rig from it alone.",

  // Parts of the help that its commands have in common
  "usage.head": "Usage:",
  "usage.arguments": "Arguments:",
  "usage.options": "Options:",
  "usage.commands": "Commands:",
  "usage.anyOptions": "options",
  "usage.anyCommand": "command",
  "usage.choices": "choices: {list}",
  "usage.default": "default: {value}",

  // Faults of a command line
  "mistake.unknownOption": "error: unknown option '{option}'",
  "mistake.unknownCommand": "error: unknown command '{command}'",
  "mistake.similarOne": "(Did you mean {similar}?)",
  "mistake.similarSome": "(Did you mean one of {similar}?)",
  "mistake.argumentMissing": "error: missing required argument '{argument}'",
  "mistake.valueMissing": "error: option '{option}' argument missing",
  "mistake.optionMissing": "error: required option '{option}' not specified",
  "mistake.tooMany":
    "error: too many arguments for '{command}'. Expected {most} {most|argument|arguments} but got {got}.",
  "mistake.notAllowed": "error: option '{option}' argument '{got}' is invalid. Allowed choices are {list}.",

  // Names between < and >
  "value.percent": "percent",
  "value.date": "date",
  "value.event": "event",
  "value.file": "file",
  "value.folder": "folder",
  "value.limit": "value",
  "value.log": "log",
  "value.mesh": "mesh",
  "value.number": "number",
  "value.plan": "plan",
  "value.problem": "problem",
  "value.quantity": "quantity",
  "value.range": "path=from..to",
  "value.recording": "recording",
  "value.rig": "rig",
  "value.which": "which",
  "value.shard": "i/n",
  "value.spread": "input=spread",
  "value.text": "text",
  "value.unit": "unit",
  "value.answer": "name=value",

  // Options of several commands
  "option.accuracy": "how fine the mesh is",
  "option.estimate": "repeat the draws of the worst what-ifs on a second mesh; the verdict counts both",
  "option.json": "print data as JSON",
  "option.wear": "take the state of the rig from this wear record; needs --on",
  "option.on": "judge the rig on this day, YYYY-MM-DD, and tell its take-down date",
  "option.tests": "use your own break tests (CSV) in place of the built-in factors",
  "option.jobs": "runs to make at a time; default: one for each core",
  "option.cache": "keep the results of runs in this folder, for the next call",
  "option.set": "which what-ifs to run",
  "option.judge":
    'give your own judgement of a part, as in "leash=0.7: looks furry"; without =FACTOR a cautious factor counts; repeatable',
  "option.judge.none": "none",
  "option.overwriteFile": "overwrite the file when it exists",
  "option.overwriteFiles": "overwrite these files when they exist",
  "option.htmlFile": "HTML file to write",
  "argument.rig": "rig document (JSON)",
  "argument.rigs": "rig documents (JSON)",
  events:
    "repeatable. fall@0.5: a leash fall in the middle. fails@0,hanging@0.25: the main line fails at anchor A while the walker hangs at a quarter of the span; also standing or caught. leg@A1,caught@0.5: the first leg of anchor A fails; also hanging",

  "check.does":
    "simulate what can go wrong with a rig; tell what every part carries and holds, and which part goes first",
  "check.require": "exit with status 1 unless the rig holds; needs the whole search, not a quick look",
  "check.whatIf": "run only this what-if, and judge nothing else; {events}",
  "check.runs": "runs to spend; more runs settle margins that lie near a limit (default: {default})",
  "check.all": "list every what-if, not only those that govern; also every single failure and the middle values",
  "check.why": "print the factors of each strength, and how each factor is known",
  "check.singles": "take away every part, one at a time, and tell what then carries the walker",

  "new.does": "begin a rig: ask eight questions and write its file; values that you did not give are marked in it",
  "new.file": "rig document (JSON) to write",
  "new.answers": "take the answers from this file (JSON) instead of asking",
  "new.set": 'give one answer, as in --set "span=60 m"; it counts before the file of answers; repeatable',
  "new.ground": "take the ground from a table of distance and height (CSV) instead of its lowest point",
  "new.groundUnit": "the unit of that table, where it does not say it",
  "new.template": "ask nothing: take every value that is not given from the template",

  "compare.does": "put two to four layouts side by side",

  "sweep.does":
    "change one number of the rig step by step; tell where the least margin, the drop, the height or a load meets a limit",
  "sweep.over":
    "the number, by its path in the rig's file, and its range: backup.slack=2%..14%, connection.1.at=0.3..0.6; also connections=0..5, and with --on months=0..24; give it twice for a map of two numbers",
  "sweep.what": "what to tell: margin, drop, height or load:PART",
  "sweep.limit": "add a limit of your own to what the rig requires: 1.2, 3m or 8kN",
  "sweep.points": "values along the range; default: 13, or 7 along each of two; of connections every count",
  "sweep.whatIf": "draw this what-if instead of those that govern; {events}",
  "sweep.out": "write to this file instead of standard output",

  "chances.does": "tell how likely each part is to fail, and to fail first, when strengths and falls scatter",
  "chances.whatIf": "look at this what-if; default: the worst of a quick look; {events}",
  "chances.runs": "draws of each what-if; more draws make the intervals narrower (default: 64)",
  "chances.seed": "seed of the random numbers; the same seed gives the same answer",
  "chances.spread":
    "how far an input may be off, in place of the assumed spread, as in mass=5%; 0: it is known exactly; repeatable",

  "study.does":
    "make the runs of a plan of many rigs, ranges and draws; called again after it was stopped or killed, it makes the runs that are missing",
  "study.plan": "plan (JSON)",
  "study.out": "write every finished run into this folder, as a line of JSON",
  "study.shard": "make only every n-th run, beginning with the i-th; other machines make the rest",
  "study.status": "tell how many of the runs the folder has, and make none",
  "study.cost": "tell how long the runs will take, and make none",
  "study.yes": "begin, however long the runs will take",
  "merge.does": "join the results of a study into one file: one line for each run, by its number",
  "merge.folders": "folders with results",
  "merge.out": "file to write",
  "merge.partial": "join them even if runs are missing",

  "report.does": "write a report of a rig, to print on A4",
  "report.chances": "add the chances in the worst what-if",
  "report.sweep": "add a sweep of this number, written as for the command sweep; may be given again for other numbers",
  "report.sweepWhat": "of the sweeps: margin, drop, height or load:PART",

  "card.does": "write a site card, one page to hang at the line: who may walk, until when, for how many falls",
  "card.require": "exit with status 1 unless the card gives permission",
  "card.wear": "take the state of the rig from this wear record; without one the card gives no permission",
  "card.on": "the day of the card, YYYY-MM-DD; default: today",

  "strength.does": "tell from break tests what a part still holds",
  "strength.log": "break log (CSV)",
  "strength.content": "tell the load that this share of parts reaches: 95 or 90",
  "strength.columns": "read a table with other column names by this matching (JSON), which the page saves",
  "strength.plot": "write plots of fit, residuals and retention (SVG)",
  "strength.table": "write the numbers of these plots (CSV)",
  "strength.figure": "write only this plot: fit, residuals or retention; repeatable",
  "strength.dark": "draw on a dark ground",

  "wear.does": "tell what a rig's webbing still holds along its length, from its wear record",

  "teardown.does": "choose which pieces of a line to pull when it comes down; tell what their results taught",
  "teardown.pulls": "pulls that you have at the machine (default: 12)",
  "teardown.sheet": "write the plan as HTML to print, with drawings and labels",
  "teardown.log": "write a break log (CSV) to fill in at the machine",
  "teardown.results": "read the filled-in log, and tell what it taught",
  "teardown.share": "with --results: tell how many days the next line holds this share of new (default: 75)",

  "measured.does": "compare a load cell's recording of a fall with the model: alignment, peak, impulse, spread",
  "measured.recording": "recording (CSV; docs/MEASURED.md has the format)",
  "measured.runs": "draws of the model (default: 16)",
  "measured.spread": "how far an input may be off, in place of the assumed spread; repeatable",

  "validate.does": "tell every fault in a rig, problem, wear record or break log",
  "validate.file": "JSON or CSV",

  "solve.does": "solve one problem with the engine alone",
  "solve.problem": "problem file (JSON, SI units)",
} as const;
