/** What people type into the search, each with its short answer and where more is said. */
import { indicators, whenDark } from "../../core/reference/indicators";
import { type Guide, heading, points, text } from "./guide";

export const answers: Guide = {
  file: "answers.html",
  title: "Short answers",
  lead: "What people ask most, each in a sentence or two, and where to read on.",
  parts: [
    heading("How much lye do I need?"),
    text(
      "As much as the acid of this oil takes, and the base charge on top. [Titrate](first-titration.html) the lot, record it, then press _Batch of this lot_: the weigh-out says the grams as weighed. In a cell it is [CATALYST](catalyst.html), or [DOSE](dose.html) from the readings.",
    ),
    heading("How much methanol do I need?"),
    text(
      "Six moles to one of triglyceride is common (Freedman 1984, commonly cited): about a quarter of the oil's volume. _Batch_ works it out for your oil; in a cell it is [METHANOL](methanol.html).",
    ),
    heading("How much oil do I weigh for a titration?"),
    text(
      "So much that the titre is at least twenty of the smallest marks of your burette: ten grams is a good first try. The pane says how much once you type the acid you expect; in a cell it is [SAMPLETOWEIGH](sampletoweigh.html).",
    ),
    heading("Can I use turmeric as the indicator?"),
    text(
      "Yes. It turns from yellow to red-brown at about pH 8 (commonly cited). Steep ground turmeric in alcohol and use the clear part (common practice, no source). Use it for the blank too, the same drops, and choose it under _Indicator_.",
    ),
    heading("Start a new logbook"),
    text(
      "In the browser page press _Begin my own logbook_, or _New_ in the bar. In a spreadsheet program the first recorded titration makes its sheet. [Day by day](browser-page.html).",
    ),
    heading("Fill in my bench once"),
    text(
      "Open _My bench_: titrant, burette, balance, each lye with its lot, assay and charge, vessel, limit. Titrate, Batch and What if begin from it and show it in one line; there it is changed for this time or for good.",
    ),
    heading("Keep each lot of lye"),
    text(
      "In Batch, at step _Lye_, press _Keep this lot of lye_: the first makes the table _LyeLots_, a row for each container with its lot and assay. Batch then offers those of its base, the latest first. A partner copy holds the table as it is.",
    ),
    heading("Several lots in one day"),
    text(
      "Record a lot, press _Next lot_: titrant and blanks stay, and you begin at its oil. Enter goes to the next field that wants something.",
    ),
    heading("The pink colour fades"),
    text(
      "The end point is the first pink that stays 15 seconds (EN 14104) or 30 (AOCS Ca 5a-40); after that air may take it away. Same seconds, same shade, for blank and oil.",
    ),
    heading("My oil is too dark to see the colour"),
    text(
      "Take more alcohol and more indicator, or a smaller sample. For dark fats ISO 660 asks for thymolphthalein or alkali blue:",
    ),
    {
      kind: "table",
      head: ["Indicator", "Turns", "At pH (commonly cited)"],
      rows: indicators.map(({ name, turns, at }) => [name, turns, at]),
    },
    points(...whenDark),
    text(
      "Or let a pH probe decide (ISO 660): in _Replicates_ press _A probe for dark oil_, paste mL and pH or mV, a pair a line; the end point is where the curve is steepest ([ENDPOINT](endpoint.html)).",
    ),
    heading("The oil has too much acid"),
    text(
      "Blend it with an oil of less, pretreat it with acid, or pass it to someone who can treat it. [ROUTE](route.html) says which; [BLEND](blend.html) how much of each. _Batch_ chooses lots from store, by their acid.",
    ),
  ],
};
