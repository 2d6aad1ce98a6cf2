/** Sentences of the view of the site card. Not part of the first load. */
export const CARD_ENGLISH = {
  "cardView.siteCard": "Site card",
  "cardView.noCardYet": "No card yet",
  "cardView.needsWholeSearch": "A card rests on the whole search.",
  "cardView.computing": "Looking until when, and for how many falls…",
  "cardView.noCard": "No card",
  "cardView.notComputed": "Until when was not computed: {message}",
  "cardView.lookWearRecord": "Look at the wear record",
  "cardView.backToRig": "Back to the rig",
  "cardView.partMissing": "The part of Secondline that makes cards did not arrive. Try again.",
  "cardView.saveCard": "Save the card",
  "cardView.print": "Print it",
  "cardView.wearRecord": "To the wear record",

  "saveCard.siteCard": "{rigName} site card",
  "saveCard.siteCardPrint": "Site card to print",
} as const;
