/** A sling. The document does not say what it is made of: of the usual fibres polyamide loses most in the sun and in the wet. */
import { textileMake } from "../../derating/make.ts";
import { riggedFactors } from "../../derating/rigged.ts";
import { conditionFactors } from "../textileCondition.ts";
import type { AnchorKind } from "./anchorKind.ts";

export const sling: AnchorKind = {
  kind: "sling",
  factors: ({ part, at }) => [
    textileMake(part.name),
    ...conditionFactors({
      condition: part.condition,
      fibre: "polyamide",
      what: "the sling",
      at: `${at}.condition`,
    }),
    ...riggedFactors(part.rigged, `${at}.rigged`),
  ],
};
