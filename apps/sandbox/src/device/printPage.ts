/** Prints a page of its own, as the report package makes them, in a frame out of sight. */
export function printPage(html: string, title: string): void {
  const frame = document.createElement("iframe");
  frame.title = title;
  // Out of sight, and out of hearing.
  frame.ariaHidden = "true";
  frame.tabIndex = -1;
  frame.style.cssText = "position:fixed;width:0;height:0;border:0";
  // The page allows no styles and scripts in line, and what is framed has its policy: styles go in as a sheet.
  const [, before = "", style = "", after = ""] = /^(.*)<style>(.*)<\/style>(.*)$/s.exec(html) ?? [];
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
  frame.srcdoc = before + after.replace(/<script>.*<\/script>/s, "");
  document.body.append(frame);
}
