// What a user does to get to every view. A tour starts from the first visit and is walked once for each screen size;
// at every stop the page is taken in both themes. Stops build on one another, so that nothing is computed twice.

const click =
  (name, role = "button") =>
  (page) =>
    page.getByRole(role, { name }).first().click();
const pressEscape = (page) => page.keyboard.press("Escape");
const choose = (label, option) => async (page) => {
  await page.getByRole("combobox", { name: label }).first().click();
  await page.getByRole("option", { name: option }).click();
};
const fill = (field, text) => async (page) => {
  const box = page.getByRole("textbox", { name: field }).first();
  // The page's own way of bringing it into sight.
  await box.focus();
  await box.fill(text);
};
const toView = (locator) => (page) => locator(page).first().scrollIntoViewIfNeeded();
const toTop = (locator) => (page) =>
  locator(page)
    .first()
    .evaluate((element) => element.scrollIntoView());

/** The fall and the verdict are there, or the page says why they are not. */
export async function ready(page) {
  await page.waitForFunction(
    () =>
      document.querySelectorAll("[role=progressbar]").length === 0 &&
      document.querySelector("[aria-label='Parts from harness to rock'], [role=alert]") !== null,
    undefined,
    { timeout: 300_000 },
  );
}

/** The fall is there, and the search for the verdict is on its way. */
export async function begun(page) {
  await page.waitForFunction(
    () =>
      document.querySelector("[role=progressbar]:not([data-search] *)") === null &&
      document.querySelector("[aria-label='Parts from harness to rock']") !== null,
    undefined,
    { timeout: 300_000 },
  );
}

/** After a change that is computed anew: the change has been taken up, and what came of it is there. */
const anew = async (page) => {
  await page
    .getByRole("progressbar")
    .first()
    .waitFor({ timeout: 3000 })
    .catch(() => undefined);
  await ready(page);
};
const openFile = (entry) => async (page) => {
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: entry }).click();
  await anew(page);
};
const openPlace = (place) => async (page, size) => {
  if (size === "phone")
    await page.getByRole("navigation", { name: "Pages" }).getByRole("button", { name: place }).click();
  else if (place === "Rig") await page.getByRole("button", { name: "Rig", exact: true }).click();
};
/** The last group of the rig sheet, opened and at the sheet's head. */
const openLastGroup = async (page) => {
  const group = page.getByRole("button", { name: "Anchor B", exact: true });
  await group.click();
  await group.evaluate((one) => one.scrollIntoView());
};
const openView = (name) => async (page, size) => {
  if (size === "wide") await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name }).click();
  else {
    await page.getByRole("button", { name: "Views" }).click();
    await page.getByRole("menuitem", { name }).click();
  }
};
/** The cursor by keys from the start of the run, in steps of 0.05 s. */
const goTo = (steps) => async (page, size) => {
  await openPlace("Time")(page, size);
  await page.getByRole("slider", { name: "Time in the run" }).focus();
  await page.keyboard.press("Home");
  for (let i = 0; i < steps; i++) await page.keyboard.press("ArrowRight");
};
/** Only of the layouts of the page: no sign that a run is still to come. */
const compared = (page) =>
  page.waitForFunction(
    () =>
      document.querySelectorAll("[role=progressbar]").length === 0 &&
      !/Appears when|before the last change/.test(document.querySelector("main").textContent),
    undefined,
    { timeout: 90_000 },
  );
const beginRig = async (page) => {
  await page.getByRole("button", { name: "File", exact: true }).click();
  await page.getByRole("menuitem", { name: /^New rig/ }).click();
  await page.locator("[aria-label^='The rig from the side']").waitFor();
};
const cardMade = (page) => page.locator("[data-permission]").waitFor({ timeout: 300_000 });
const beginLesson = async (page) => {
  await click(/One connection/)(page);
  await page.getByRole("heading", { name: "Your prediction" }).waitFor({ timeout: 60_000 });
};
const predict = async (page) => {
  await page.locator("form").getByRole("slider").focus();
  for (let i = 0; i < 12; i++) await page.keyboard.press("ArrowRight");
  await page.getByRole("radio").nth(1).click();
};
const runLesson = async (page) => {
  await click("Run it")(page);
  await page.getByRole("heading", { name: "The run" }).waitFor({ timeout: 60_000 });
};
const changeCopy = async (page) => {
  await click("Copy this rig and change it")(page);
  await fill("Slack of the backup", "12 %")(page);
};
const frontier = (page) => page.getByRole("region", { name: "Load, drop and weight" });
/** Both layouts have their whole verdict. */
const frontierMade = (page) => frontier(page).locator("svg").waitFor({ timeout: 300_000 });
/** A sweep of few runs, from the button to its curve or map. */
const sweep = async (page) => {
  await page.getByText(/Some \d+ runs: about/).waitFor();
  await page.getByRole("button", { name: /^Run it/ }).click();
  // A curve from before stands there meanwhile.
  await page.getByRole("button", { name: "Stop", exact: true }).waitFor();
  await page.getByRole("button", { name: "Run it anew" }).waitFor({ timeout: 300_000 });
};
const addLayout = (entry) => async (page) => {
  await click("Add a layout")(page);
  await page.getByRole("menuitem", { name: entry }).click();
};

/**
 * Stops: their picture's name, and what is done there. `underWay`: does not wait for the whole verdict. `flat`: no scene in space is seen, and a browser without WebGL,
 * which is much quicker here, walks it.
 */
export const TOURS = [
  {
    flat: false,
    underWay: true,
    stops: [
      { name: "begun" },
      {
        name: "opened",
        steps: [
          async (page) => {
            await click("File")(page);
            await page.getByRole("menuitem", { name: "Demo: an old rig" }).click();
            await page
              .getByText(/what-ifs so far/)
              .first()
              .waitFor();
            await begun(page);
          },
        ],
      },
    ],
  },
  {
    flat: true,
    stops: [
      { name: "day-verdict", steps: [openFile("Demo: an old rig")] },
      { name: "day-wear", steps: [openView(/Wear/)] },
    ],
  },
  {
    flat: false,
    stops: [
      { name: "first" },
      { name: "file", steps: [click("File")] },
      { name: "place", steps: [pressEscape, click(/^The walker's place/)] },
      {
        name: "reasons",
        steps: [pressEscape, click(/^Leash, knot/), toView((page) => page.getByText(/^Leash, knot/))],
      },
      { name: "whatifs", steps: [click(/^Leash, knot/), click(/^The \d+ what-ifs/)] },
      { name: "cautions", steps: [click(/^The \d+ what-ifs/), click(/more cautions/)] },
      { name: "forces", steps: [click("Fewer"), click("Forces")] },
      { name: "overview", steps: [choose("View", "The whole line")] },
      { name: "anchor", steps: [choose("View", "From anchor A")] },
      { name: "elevation-forces", steps: [choose("View", "Drawing from the side")] },
      { name: "elevation", steps: [click("Forces")] },
      { name: "time", steps: [openPlace("Time")] },
      { name: "energy", steps: [click("Energy", "tab")] },
      { name: "numbers", steps: [click("Numbers", "tab")] },
      { name: "whipping-elevation", steps: [click("Forces", "tab"), goTo(5)] },
      { name: "whipping", steps: [choose("View", "Close to the fall")] },
      { name: "whipping-overview", steps: [choose("View", "The whole line"), goTo(9)] },
      { name: "rig", steps: [choose("View", "Close to the fall"), openPlace("Rig")] },
      { name: "rig-foot", steps: [openLastGroup] },
      { name: "fault", steps: [fill("Length of the leash", "1.2 parsecs")] },
      {
        name: "compare",
        steps: [fill("Length of the leash", "1.5 m"), fill("Slack of the backup", "9 %"), anew, openPlace("Time")],
      },
    ],
  },
  {
    flat: false,
    stops: [
      { name: "loose", steps: [openFile("Demo: a loose backup")] },
      { name: "loose-elevation", steps: [choose("View", "Drawing from the side")] },
      { name: "old", steps: [openFile("Demo: an old rig"), choose("View", "Close to the fall")] },
      { name: "card", steps: [click("File"), click("Site card…", "menuitem"), cardMade] },
    ],
  },
  {
    flat: true,
    underWay: true,
    stops: [
      { name: "new-rig", steps: [beginRig] },
      {
        name: "new-rig-measured",
        steps: [
          click("From what you measured"),
          fill("From A to B, straight", "62.4 m"),
          fill("Angle from A to B", "3.5 deg"),
        ],
      },
      { name: "new-rig-fault", steps: [fill("Span", "70"), fill("Connections", "90 m")] },
      {
        name: "new-rig-webbing",
        steps: [click("Write 70 m"), click("Write every 15 m"), click("Webbing", "combobox")],
      },
      {
        name: "own-webbing",
        steps: [pressEscape, click(/^Enter your own webbing/), fill("Strength", "28"), click("Keep it")],
      },
      {
        name: "new-rig-foot",
        steps: [pressEscape, toTop((page) => page.getByRole("heading", { name: "How old it is" }))],
      },
      { name: "new-rig-made", steps: [click("All of it is new"), click("Make this rig"), begun] },
    ],
  },
  {
    flat: true,
    stops: [
      { name: "wear", steps: [openFile("Demo: an old rig"), openView(/Wear/)] },
      { name: "wear-calendar", steps: [toTop((page) => page.getByLabel("Calendar of entries"))] },
      { name: "wear-take-down", steps: [toTop((page) => page.getByRole("region", { name: "Take-down date" }))] },
      { name: "wear-entries", steps: [toTop((page) => page.getByRole("region", { name: "Entries" }))] },
      { name: "break-log", steps: [click("Break log")] },
      {
        name: "break-log-group",
        steps: [
          (page) =>
            page
              .locator("main section")
              .nth(1)
              .evaluate((one) => one.scrollIntoView()),
        ],
      },
      {
        name: "break-log-foot",
        steps: [
          (page) =>
            page
              .locator("main section, main figure")
              .last()
              .evaluate((one) => one.scrollIntoView({ block: "end" })),
        ],
      },
    ],
  },
  {
    flat: true,
    stops: [
      { name: "layout-first", steps: [openView(/Layouts/), compared] },
      { name: "layout-changing", steps: [changeCopy] },
      { name: "layouts-two", steps: [click("Done"), compared] },
      { name: "layouts-frontier", steps: [frontierMade, toTop(frontier)] },
      {
        name: "layouts-three",
        steps: [
          toTop((page) => page.getByRole("heading", { name: "Layouts side by side" })),
          addLayout("Demo: a loose backup"),
          compared,
        ],
      },
      { name: "layouts-four", steps: [addLayout("Demo: an old rig"), compared] },
      { name: "layouts-table", steps: [toTop((page) => page.locator("table"))] },
    ],
  },
  {
    flat: true,
    underWay: true,
    stops: [
      { name: "how-far", steps: [openView(/How far/)] },
      { name: "how-far-fault", steps: [fill("to", "2 parsecs")] },
      { name: "how-far-curve", steps: [click("How loose may the backup be?"), fill("Values along it", "4"), sweep] },
      { name: "how-far-values", steps: [click("The values"), toTop((page) => page.locator("table"))] },
      {
        name: "how-far-point",
        steps: [
          click("Show its run"),
          async (page) => {
            await page
              .getByText(/caught you/)
              .first()
              .waitFor();
          },
        ],
      },
      {
        name: "how-far-map",
        steps: [
          click("Back to the curve"),
          choose("And a second one", "Walker: mass"),
          fill("Values along each", "3"),
          sweep,
          toTop((page) => page.locator("figure")),
        ],
      },
    ],
  },
  {
    flat: false,
    stops: [
      { name: "lessons", steps: [openView(/Lessons/)] },
      { name: "lesson-given", steps: [beginLesson] },
      { name: "lesson-predicted", steps: [predict] },
      { name: "lesson-result", steps: [runLesson] },
      { name: "lessons-closing", steps: [click("All lessons"), click("What you said, and what came of it")] },
      { name: "lessons-class", steps: [click("All lessons"), click("For a class"), beginLesson] },
    ],
  },
];
