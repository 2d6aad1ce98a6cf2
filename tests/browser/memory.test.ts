/** Memory stays flat, whatever is done to the page. */
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { type App, computed, sharedApp } from "./app.ts";
import { type Held, heldBy, watchGraphics } from "./memory.ts";
import { act, randomFrom, tidy } from "./monkey.ts";

/** Use for so long [s] where somebody asks for it (ten minutes, say), else a few hundred actions. */
const SECONDS = Number(process.env["SECONDLINE_MONKEY_SECONDS"] ?? 0);
const ACTIONS = 100;
const SEED = Number(process.env["SECONDLINE_MONKEY_SEED"] ?? 20_240_917);
/** [s] */
const ROUND = 60;
/** Flat as a rule: where the rasteriser is a software one, the scene in space leaves time for little use. */
const FLAT = process.env["SECONDLINE_MONKEY_SPACE"] === undefined;

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: FLAT });
});

it(
  "holds no more after random use than before it, and warns of nothing",
  async () => {
    const { page, problems } = await app.visit({
      untouched: true,
      viewport: { width: 1000, height: 680 },
      before: watchGraphics,
    });
    // The handle of a chooser's field would keep alive what the field's listeners know, every recording of that time.
    page.on("filechooser", (chooser) => chooser.element().dispose());
    await computed(page);
    const random = randomFrom(SEED);
    const use = async (seconds: number) => {
      const end = Date.now() + seconds * 1000;
      for (let done = 0; seconds > 0 ? Date.now() < end : done < ACTIONS; done++) await act(page, random);
      await tidy(page).catch(async (error) => {
        throw new Error(`${error}\nThe page says: ${await saidBy(page)}`);
      });
      const held = await heldBy(page);
      if (SECONDS > 0) console.log(JSON.stringify(held));
      return held;
    };
    // The first round loads every view's code, and fills what is kept on purpose.
    const history: Held[] = [await use(Math.min(ROUND, SECONDS / 2))];
    const rounds = Math.max(1, Math.round(SECONDS / ROUND) - 1);
    for (let round = 0; round < rounds; round++) history.push(await use(Math.min(ROUND, SECONDS / 2)));
    const [before, after] = [history[0]!, history.at(-1)!];
    const words = `seed ${SEED}, after each round:\n${history.map((held) => JSON.stringify(held)).join("\n")}`;
    expect(problems, words).toEqual([]);
    expect(after.heapMB - before.heapMB, words).toBeLessThan(GROWTH.heapMB);
    expect(after.bufferMB - before.bufferMB, words).toBeLessThan(GROWTH.bufferMB);
    expect(after.nodes - before.nodes, words).toBeLessThan(GROWTH.nodes);
    expect(after.listeners - before.listeners, words).toBeLessThan(GROWTH.listeners);
    expect(after.contexts, words).toBe(FLAT ? 0 : 1);
    expect(after.graphicsObjects - before.graphicsObjects, words).toBeLessThan(GROWTH.graphicsObjects);
    // What computes falls, its two threads, and the one for statistics, which stays once a record has been looked at.
    expect(after.workers, words).toBeLessThanOrEqual(4);
  },
  600_000 + 4000 * SECONDS,
);

/** What the page shows, for whoever looks for what went wrong; or that it does not answer. */
function saidBy(page: Page): Promise<string> {
  const text = page.evaluate(() => document.body.textContent.slice(0, 3000));
  const silence = new Promise<string>((resolve) => setTimeout(resolve, 10_000, "nothing, for ten seconds"));
  return Promise.race([text, silence]);
}

/**
 * What may come on top of the first round. Heap: the engine compiles more of the program the longer it runs, and there
 * are undo steps and the browser's own records of its work. Buffers, up to 15 MB a recording: over ten minutes of use
 * they lay between 33 and 56 MB, without a trend. A recording forgotten with every run passes the bound within one round,
 * a forgotten scene or listener its own.
 */
const GROWTH = { heapMB: 8, bufferMB: 60, nodes: 700, listeners: 200, graphicsObjects: 60 };
