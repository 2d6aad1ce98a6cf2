/** Sentences of files, links and pictures: opened, saved, printed. Not part of the first load. */
export const FILES_ENGLISH = {
  "earlierWork.title": "Earlier work on this device",
  "earlierWork.none": "There is none yet. A copy is kept whenever another rig takes the place of yours.",
  "earlierWork.open": "Open",
  "earlierWork.opened": "opened {name}",

  "issueLines.thingsWrong": "{count|one thing is wrong in it|{count} things are wrong in it}",

  "link.damaged": "The rig in this link cannot be read: the link is incomplete or was changed.",
  "link.rigLink": "The rig in this link",
  "link.tooLarge": "too large",

  "makeReport.computing": "Computing every what-if for the report. It is saved when they are done.",
  "makeReport.notToEnd": "its what-ifs were not computed to the end",
  "makeReport.rigChanged": "the rig was changed",
  "makeReport.reportNotMade": "The report was not made, because {why}.",
  "makeReport.reportSaved": "The report is saved.",

  "pictureWords.coarseMesh": "coarse mesh",
  "pictureWords.standardMesh": "standard mesh",
  "pictureWords.fineMesh": "fine mesh",
  "pictureWords.caution": "This is one what-if; others may be worse.",
  "pictureWords.foot": "Secondline {version}, {how}, {day}. Input {hash}",

  "printPictures.side": "{title}, from the side",
  "printPictures.forcesOverTime": "{title}, forces over time",

  "readFile.tooLarge": "{name} is {size}. A rig file is a few kilobytes of text, so this is something else.",
  "readFile.couldNotRead": "{name} could not be read from this device.",
  "readFile.notOpened": "{name} was not opened: {wrongInIt}.",

  "saveFigures.none": "there is no figure on this page",
  "saveFigures.wearRecord": "wear record",
  "saveFigures.figures": "{title} figures",

  "savePicture.noFall": "there is no fall to take a picture of",
  "savePicture.moment": "Seen {seconds} into the run.",
  "savePicture.noRun": "there is no run to draw a plot of",
  "savePicture.everySampleComputed": "every sample as computed",
  "savePicture.loadCellReports": "as a load cell reports them (CFC 60)",
  "savePicture.forcesOverTime": "Forces over time, {reading}",
  "savePicture.whereEnergyFall": "Where the energy of the fall is",
  "savePicture.to": "{what}, {from} to {to}.",

  "savePlots.plots": "{name} plots",
  "savePlots.breakLog": "break log",

  "saveReport.report": "{rigName} report",

  "savedWork.whatIfSight": "the what-if in sight",
  "savedWork.choiceMesh": "the choice of mesh",
  "savedWork.theme": "the theme",
  "savedWork.viewScene": "the view of the scene",
  "savedWork.whetherForcesShown": "whether forces are shown",
  "savedWork.wearAndLog": "the wear record and break log",
  "savedWork.saveWhatKept": "Save what was kept as a file",
  "savedWork.setAside": "It was set aside under File, Earlier work; here",
  "savedWork.here": "Here",
  "savedWork.unreadable": "The work kept on this device cannot be read by this version. {where} is the demo rig.",
  "savedWork.entriesBeingPut": "the entries that were being put right",
  "savedWork.partlyRead":
    "Not everything kept on this device could be read: {lost} {count|is|are} as on a first visit. Your rig is unharmed.",
  "savedWork.statePage": "the state of the page",
  "savedWork.seenAbove": "(seen above)",

  "shareLink.copied": "The link is copied. It holds the whole rig, the what-if and this moment; no server sees it.",
  "shareLink.copyByHand": "Copy this link:",

  "offline.newerVersion": "A newer version of Secondline is ready. Your work is kept when you change to it.",
  "offline.changeNow": "Change to it now",

  "encode.noCanvas": "this browser gives no canvas to draw the picture on",
  "encode.notMade": "this browser could not make a PNG of the picture",
} as const;
