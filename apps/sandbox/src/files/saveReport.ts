/** The report as a file. In a file of its own, so that its code comes only when it is asked for. */
import { inspectedIn, report } from "@secondline/report";
import type { Outcome } from "@secondline/scenarios";
import { longDay } from "@secondline/words/dates";
import { sayFiles } from "@secondline/words/page/files";
import { evidenceFor, fileName, type Sandbox } from "@secondline/workbench";
import { chancesOf } from "../desks/chancesHere.ts";
import { sweepsOf } from "../desks/howFarHere.ts";
import { download } from "../device/download.ts";
import { houseFaces } from "./houseFaces.ts";

/** Saves the report of the current state, with its chances and the sweeps of its numbers if they were worked out. */
export async function saveReport(sandbox: Pick<Sandbox, "store">, outcome: Outcome, date: Date): Promise<void> {
  const { assessment, document } = sandbox.store.getState();
  const { assessed, key, known, leftOut } = assessment;
  const written = longDay(date);
  const chances = chancesOf(key);
  const { wear, on } = leftOut ? { wear: undefined, on: undefined } : evidenceFor(document.rig, known);
  const html = report(assessed, outcome, {
    date: written,
    faces: await houseFaces(),
    sweeps: sweepsOf(sandbox),
    inspected: wear && on !== undefined ? inspectedIn(wear, document.rig, on) : [],
    ...(chances ? { chances: [chances] } : {}),
  });
  download(html, fileName(sayFiles("saveReport.report", { rigName: outcome.rigName }), "html"), "text/html");
}
