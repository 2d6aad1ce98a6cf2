/**
 * Times the engine and whole assessments, and prints tables. Nothing here passes or fails: figures belong to a machine and its mood.
 *   node go.mjs bench                 all tables
 *   node go.mjs bench --quick         fewer rounds, and of assessments a first look at one rig
 *   node go.mjs bench --engine        the engine alone
 *   node go.mjs bench --assessments   assessments alone
 *   node go.mjs bench --save          also keeps the figures in bench/baseline.json, which later runs compare with
 */
import { assessmentTables } from "./assessmentTables.ts";
import { machine, readBaseline, saveBaseline } from "./baseline.ts";
import { engineTables } from "./engineTables.ts";
import { takeNotes } from "./notes.ts";

const asked = (option: string): boolean => process.argv.includes(option);
const quick = asked("--quick");
const rounds = quick ? 3 : 12;
const baseline = readBaseline();
const notes = takeNotes();

console.log(`Node ${process.version}, ${machine()}`);
console.log(
  `Least time of each slice over ${rounds} rounds, summed. "to kept": ratio to bench/baseline.json, below 1 is faster.`,
);
if (baseline) console.log(`Kept figures: Node ${baseline.node}, ${baseline.machine}`);

if (!asked("--assessments")) await engineTables(rounds, notes);
if (!asked("--engine")) await assessmentTables(quick, notes);

if (asked("--save")) {
  saveBaseline({ ...baseline?.figures, ...notes.figures });
  console.log("\nKept these figures in bench/baseline.json.");
}
