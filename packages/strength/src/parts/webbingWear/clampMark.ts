/** A place that sits or sat in a clamp. */
import { clampFactor, clampOfUnknownLoad } from "../../derating/clampMark.ts";
import { standIn } from "../../derating/unknown.ts";
import { aboutMiddle, type WearKind, type WearOf } from "./wearKind.ts";

export const clampMark: WearKind<WearOf<"clampMark">> = {
  kind: "clampMark",
  title: "clamp mark",
  extent: aboutMiddle,
  factor({ months, load }, { section, wearAt }) {
    if (load !== undefined) return clampFactor(months, load / section.stock.rated.strength);
    const why = "the load in the clamp is not written down; the heaviest that makes a difference is counted";
    const best = clampFactor(months, 0).value;
    return standIn(clampOfUnknownLoad(months), { field: `${wearAt}.load`, best }, why);
  },
};
