/** The site card as a file, and on paper. Its code comes only when it is asked for. */
import { siteCardPage } from "@secondline/report";
import type { Assessed, Outcome, SiteCard } from "@secondline/scenarios";
import { sayCard } from "@secondline/words/page/card";
import { fileName } from "@secondline/workbench";
import { download } from "../device/download.ts";
import { printPage } from "../device/printPage.ts";

interface Made {
  readonly assessed: Assessed;
  readonly outcome: Outcome;
  readonly card: SiteCard;
  readonly date: string;
}

const pageOf = ({ assessed, outcome, card, date }: Made): string => siteCardPage(assessed, outcome, card, { date });

export function saveCard(made: Made): void {
  download(pageOf(made), fileName(sayCard("saveCard.siteCard", { rigName: made.card.rigName }), "html"), "text/html");
}

export const printCard = (made: Made): void => printPage(pageOf(made), sayCard("saveCard.siteCardPrint"));
