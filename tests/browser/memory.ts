/** What a page holds on to, after its rubbish has been collected. */
import type { Page } from "playwright-core";

export interface Held {
  /** Objects of the script [MB]. */
  readonly heapMB: number;
  /** Typed arrays [MB]. */
  readonly bufferMB: number;
  /** DOM nodes, the ones outside of the document included, and those of them that are within it. */
  readonly nodes: number;
  readonly shown: number;
  readonly listeners: number;
  readonly workers: number;
  /** Graphics contexts that were not given back. */
  readonly contexts: number;
  /** Buffers, textures, programs and the like on the graphics card. */
  readonly graphicsObjects: number;
}

/** Counts graphics objects from the first one on; runs in the page, before the app. */
export function watchGraphics(): void {
  // Held weakly: counting must not keep alive what it counts.
  const contexts: { readonly context: WeakRef<WebGL2RenderingContext>; live: number }[] = [];
  (globalThis as { graphics?: typeof contexts }).graphics = contexts;
  const entryOf = (context: WebGL2RenderingContext) => {
    const known = contexts.find((entry) => entry.context.deref() === context);
    if (known) return known;
    const entry = { context: new WeakRef(context), live: 0 };
    contexts.push(entry);
    return entry;
  };
  const pen = WebGL2RenderingContext.prototype as unknown as Record<string, (...what: unknown[]) => unknown>;
  for (const kind of ["Buffer", "Texture", "Program", "Shader", "VertexArray", "Framebuffer", "Renderbuffer"]) {
    for (const [verb, step] of [
      ["create", 1],
      ["delete", -1],
    ] as const) {
      const real = pen[`${verb}${kind}`]!;
      pen[`${verb}${kind}`] = function (this: WebGL2RenderingContext, ...what: unknown[]) {
        if (verb === "create" || what[0]) entryOf(this).live += step;
        return real.apply(this, what);
      };
    }
  }
}

export async function heldBy(page: Page): Promise<Held> {
  const session = await page.context().newCDPSession(page);
  // A second round takes what finalisers of the first one let go.
  for (let round = 0; round < 3; round++) await session.send("HeapProfiler.collectGarbage");
  const heap = (await session.send("Runtime.getHeapUsage")) as { usedSize: number; backingStorageSize?: number };
  const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
  await session.detach();
  const shown = await page.evaluate(() => {
    const walker = document.createTreeWalker(document, NodeFilter.SHOW_ALL);
    let count = 1;
    while (walker.nextNode()) count++;
    return count;
  });
  const graphics = await page.evaluate(() => {
    const contexts =
      (globalThis as { graphics?: { context: WeakRef<WebGL2RenderingContext>; live: number }[] }).graphics ?? [];
    const open = contexts.filter(({ context }) => context.deref()?.isContextLost() === false);
    return { contexts: open.length, objects: open.reduce((sum, { live }) => sum + live, 0) };
  });
  return {
    heapMB: Math.round(heap.usedSize / 1e5) / 10,
    bufferMB: Math.round((heap.backingStorageSize ?? 0) / 1e5) / 10,
    nodes,
    shown,
    listeners: jsEventListeners,
    workers: page.workers().length,
    contexts: graphics.contexts,
    graphicsObjects: graphics.objects,
  };
}
