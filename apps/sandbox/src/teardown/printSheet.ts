/** Prints the sheet of a teardown. */
import type { Rig } from "@secondline/rig";
import type { Teardown } from "@secondline/strength";
import { sayTeardown } from "@secondline/words/page/teardown";
import { printPage } from "../device/printPage.ts";

export async function printSheet(rig: Rig, plan: Teardown): Promise<void> {
  // Its code comes only when it is asked for.
  const { teardownSheet } = await import("@secondline/report");
  printPage(teardownSheet(rig, plan), sayTeardown("printSheet.sheetPrint"));
}
