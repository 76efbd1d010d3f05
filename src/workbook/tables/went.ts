/**
 * How a batch went: columns of `Batches` that are typed after it, none of them needed for a dose, and what
 * the difference between weighed and worked out means (core/batch/went.ts, the same as formulas).
 */
import {
  methanolTrial,
  oilLeft,
  trialAnswers,
  trialMix,
  wentLimits,
  wentPlaces,
  wentWords,
} from "../../core/batch/went";
import { usual } from "../../core/reference/defaults";
import { one } from "./batch-cells";
import { calculated, type Column, typed } from "./column";

export const went = {
  weighed: "Weighed g",
  methanol: "Methanol used L",
  oil: "Oil used kg",
  litres: "Litres made",
  minutes: "Minutes to settle",
  washes: "Washes",
  trial: methanolTrial,
  seen: "Seen",
} as const;

export type WentId = keyof typeof went;
export const wentIds = Object.keys(went) as readonly WentId[];
export const wentHeadings: readonly string[] = Object.values(went);

export const chargeInFact = "Left for reaction %";
export const yieldHeading = "Yield %";
export const itWent = "It went";

const catalyst = one("Catalyst g");
const weighed = one(went.weighed);
const oil = one("Oil kg");
const used = `IF(${one(went.oil)}>0,${one(went.oil)},${oil})`;
const charge = one("Charge %");
const inFact = one(chargeInFact);

/** Rounded first: on which way a half goes in FIXED programs do not agree. */
const fixed = (figure: string, places: number): string =>
  `FIXED(ROUND(${figure},${String(places)}),${String(places)},TRUE)`;

/** Within the doubt of the dose, or a hundredth of it, whichever is more. */
const isAsMeant =
  `ABS(${weighed}/(${used})*${oil}-${catalyst})<=MAX(${catalyst}*${wentLimits.lye},` +
  `IF(ISNUMBER(${one("± catalyst g")}),${one("± catalyst g")},0))`;

const lye =
  `IF(${isAsMeant},"${wentWords.asMeant}",` +
  `IF(${inFact}<=0,"${wentWords.none}",` +
  `IF(${inFact}<${charge},"${wentWords.less}","${wentWords.more}")&${fixed(inFact, wentPlaces.charge)}&"${wentWords.meant}"&${fixed(charge, wentPlaces.charge)}&` +
  `IF(${inFact}<${charge},"${wentWords.lessMeans}","${wentWords.moreMeans}")))`;

const ratio = `IF(${one("Methanol ratio")}>0,${one("Methanol ratio")},${usual.molarRatio.toString()})`;
const methanolInFact =
  `(${ratio})*(${one(went.methanol)}+${one("Methanol L")}-${one("Methanol to add L")})/${one("Methanol L")}` +
  `*${oil}/(${used})`;
const isMethanolOff = `ABS(${methanolInFact}/(${ratio})-1)>${wentLimits.methanol}`;
const methanol =
  `IF(N(${one(went.methanol)})>0,IF(${isMethanolOff},"${wentWords.methanol}"&${fixed(methanolInFact, wentPlaces.ratio)}&` +
  `"${wentWords.toOne}"&${fixed(ratio, wentPlaces.ratio)}&"${wentWords.end}",""),"")`;

const yieldOf = one(yieldHeading);
const mostYield = `100*${wentLimits.made}`;
/** As the card says at its fields: too much fuel, and oil left in the trial. */
const seen =
  `IF(ISNUMBER(${yieldOf}),IF(${yieldOf}>${mostYield},"${wentWords.made}"&${fixed(yieldOf, 0)}&"${wentWords.tooMuch}",""),"")` +
  `&IF(TRIM(${one(went.trial)})="${oilLeft}","${wentWords.notDone}","")`;

const given = (heading: string, then: string): string => `IF(N(${one(heading)})>0,${then},"")`;

/** @param oilKind the batch's kind of oil, as a formula */
export const wentColumns = (oilKind: string): Column<unknown>[] => [
  typed(went.methanol, 10, "Methanol that was in fact measured out, L.", { format: "0.0" }),
  typed(went.oil, 10, "Oil that in fact went in, kg. Left empty: as under Oil kg.", {
    format: "0.00",
  }),
  typed(went.minutes, 10, "Minutes until the dark layer showed.", { format: "0" }),
  typed(went.washes, 8, "How often the fuel was washed.", { format: "0" }),
  typed(went.trial, 12, `${trialMix}. It is no measurement (common practice).`, {
    choices: trialAnswers,
  }),
  typed(went.seen, 30, "What was seen: colour, layers, soap."),
  calculated(
    chargeInFact,
    "0.00",
    "Pure base that the acid left for the reaction, percent of the oil, by what was really weighed.",
    given(
      went.weighed,
      `${charge}+${one("Assay %")}/1000*(${weighed}/(${used})-${catalyst}/${oil})`,
    ),
  ),
  calculated(
    yieldHeading,
    "0.0",
    "Litres of fuel for 100 litres of oil at 20 C.",
    given(
      went.litres,
      `100*${one(went.litres)}*IFERROR(TITRE.OILMASS(1,"l",${oilKind}),TITRE.OILMASS(1,"l"))/(${used})`,
    ),
  ),
  calculated(
    itWent,
    "General",
    "What the difference between weighed and worked out means.",
    `TRIM(IF(ISNUMBER(${inFact}),${lye}&${methanol},${methanol})&${seen})`,
    44,
  ),
];
