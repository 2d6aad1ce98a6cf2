import type { Services } from "../inHand/state.ts";

type Runner = Services["runner"];

/** The fall that is looked at comes first; the search for a layout's verdict gives way to that of the open rig. */
export const layoutRunner = (eye: Runner, aside: Runner): Runner => ({
  run: (request, onProgress) => eye.run(request, onProgress),
  study: (request, onProgress) => aside.study(request, onProgress),
  async cancel(id) {
    await Promise.all([eye.cancel(id), aside.cancel(id)]);
  },
});
