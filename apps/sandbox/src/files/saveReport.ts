/** The report as a file. In a file of its own, so that its code comes only when it is asked for. */
import { report } from "@secondline/report";
import type { Assessed, Outcome } from "@secondline/scenarios";
import { chancesOf } from "../chances/chancesDesk.ts";
import { download, fileName } from "./download.ts";

/** `key`: of the state that is reported. */
export function saveReport(assessed: Assessed, outcome: Outcome, key: string, date: Date): void {
  const written = date.toLocaleDateString("en-GB", { dateStyle: "long" });
  const chances = chancesOf(key);
  const html = report(assessed, outcome, { date: written, ...(chances ? { chances: [chances] } : {}) });
  download(html, fileName(`${outcome.rigName} report`, "html"), "text/html");
}
