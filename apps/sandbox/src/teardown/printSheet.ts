/** Prints the sheet of a teardown: a page of its own in a frame out of sight. */
import type { Rig } from "@secondline/rig";
import type { Teardown } from "@secondline/strength";

export async function printSheet(rig: Rig, plan: Teardown): Promise<void> {
  // Its code comes only when it is asked for.
  const { teardownSheet } = await import("@secondline/report");
  const frame = document.createElement("iframe");
  frame.title = "Sheet to print";
  // Out of sight, and out of hearing.
  frame.ariaHidden = "true";
  frame.tabIndex = -1;
  frame.style.cssText = "position:fixed;width:0;height:0;border:0";
  // The page allows no styles in line, and what is framed has its policy: they go in as a sheet.
  const [, before = "", style = "", after = ""] =
    /^(.*)<style>(.*)<\/style>(.*)$/s.exec(teardownSheet(rig, plan)) ?? [];
  frame.addEventListener("load", () => {
    const { contentWindow, contentDocument } = frame as {
      contentWindow: (Window & typeof globalThis) | null;
    } & typeof frame;
    if (contentWindow && contentDocument) {
      const sheet = new contentWindow.CSSStyleSheet();
      sheet.replaceSync(style);
      contentDocument.adoptedStyleSheets = [sheet];
    }
    frame.contentWindow?.addEventListener("afterprint", () => frame.remove());
    frame.contentWindow?.print();
  });
  frame.srcdoc = before + after;
  document.body.append(frame);
}
