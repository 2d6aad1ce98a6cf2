/** What others would install is packed as a package should be. `tests/long/packed.long.ts` installs and uses it. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { afterAll, expect, it } from "vitest";
// @ts-expect-error a plain script of the build
import { PACKED, pack } from "../../scripts/pack.mjs";

const folder = mkdtempSync(join(tmpdir(), "secondline-publint-"));
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));

it.each(PACKED as readonly string[])("publint finds nothing to say of %s", async (name) => {
  pack(name, folder);
  const { messages, pkg } = await publint({ pkgDir: join(folder, name), level: "suggestion", strict: true });
  expect(messages.map((message) => formatMessage(message, pkg, { color: false }))).toEqual([]);
});
