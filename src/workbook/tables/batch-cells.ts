/** The cells of a row of `Batches`, as its formulas name them, and what its results are worked out by. */
import { methanolDensity } from "../../core/reference/liquids";
import { heldBackFormula, unknownWorthIn } from "../record/worth";
import { cellOf } from "./column";
import { ofLastTitration } from "./last-titration";
import { worthHeading } from "./titration-cells";

export const batchesName = "Batches";
/** Several lots in a batch: a row each. */
export const blendsName = "Blends";
/** This row's cell in a column. */
export const one = (heading: string): string => cellOf(batchesName, heading);

/** A column of a lot's last row in `Titrations` up to the batch's day: a lot treated and titrated again counts anew. */
const ofLot = (heading: string, lot = "Lots"): string =>
  ofLastTitration(heading, one(lot), one("Date"));

/** What stands under `Titrant lye` when the acid value was worked out as if the lye were pure. */
export const asIfPure = "same lye taken as pure";

export const acidValueHeading = "Acid value mg KOH/g";
export const worthColumn = "Acid value worth";
export const halfWidthHeading = "± acid value mg KOH/g";
const share = one("Second lot %");

/** A titrant taken as pure holds its assay's part of the base. */
const timesAssay = (figure: string): string =>
  `${figure}*IF(${one("Titrant lye")}="${asIfPure}",${one("Assay %")}/100,1)`;

/** Of one lot, or of two by their shares, where the workbook has no table `Blends`. */
const ofTwo = (ofFirst: string, ofSecond: string): string =>
  timesAssay(
    `IF(${one("Second lot")}="",${ofFirst},IF(${share}>0,${ofFirst}*(1-${share}/100)+${ofSecond}*${share}/100,NA()))`,
  );
/** The same of the half-widths: which way each lot is off is not known, so they add up. */
const halfOf = (lot?: string): string => `TITRE.ACIDVALUEFROMFFA(${ofLot("± FFA %", lot)})`;

/** How the results of a row come by its lots. */
export interface OfLots {
  readonly oilKilograms: string;
  readonly acidValue: string;
  readonly halfWidth: string;
  readonly worth: string;
  /** The kind of oil: the first lot's. */
  readonly oil: string;
}

const massOf = (oil: string): string =>
  `TITRE.OILMASS(${one("Amount")},${one("Unit")},${oil},${one("Oil temperature C")})`;

/** One lot, or a second in columns of its own. */
export const alone: OfLots = {
  oil: ofLot("Oil"),
  oilKilograms: massOf(ofLot("Oil")),
  acidValue: ofTwo(ofLot(acidValueHeading), ofLot(acidValueHeading, "Second lot")),
  halfWidth: ofTwo(halfOf(), halfOf("Second lot")),
  worth:
    `IF(${one("Second lot")}="",${ofLot(worthHeading)},` +
    `${one("Lots")}&": "&${ofLot(worthHeading)}&" "&${one("Second lot")}&": "&${ofLot(worthHeading, "Second lot")})`,
};

/** Rows of `Blends` that are of this batch, and the lot that stands first there. */
export const inBlends = "Lots in Blends";
export const firstLot = "First lot";

/** A name to be looked for: where there is none, one that nothing has, for programs do not agree on looking for nothing. */
export const sought = (cell: string): string => `IF(${cell}="","(none)",${cell})`;

const own = sought(one("Batch"));
export const countInBlends = `COUNTIF(${blendsName}[Batch],${own})`;
export const firstInBlends = `IF(${one(inBlends)}>0,INDEX(${blendsName}[Lot],MATCH(${own},${blendsName}[Batch],0)),${one("Lots")})`;

const blended = (ofBlend: string, otherwise: string): string =>
  `IF(${one(inBlends)}>0,${ofBlend},${otherwise})`;
const total = (heading: string): string =>
  `SUMIFS(${blendsName}[${heading}],${blendsName}[Batch],${own})`;
const rowsSaying = (word: string): string =>
  `COUNTIFS(${blendsName}[Batch],${own},${blendsName}[${worthHeading}],"${word}*")`;

/** Columns of `Blends` that a batch adds up. */
export const blendSums = {
  acid: "Acid g KOH",
  shared: "Shared ± g KOH",
  ownSquared: "Own ± squared",
} as const;

/** One lot, or any number in `Blends`, each by its mass; the half-widths by the law of propagation (core/batch/blend.ts). */
export const withBlends: OfLots = {
  oil: ofLot("Oil", firstLot),
  oilKilograms: blended(total("Oil kg"), massOf(ofLot("Oil", firstLot))),
  acidValue: timesAssay(
    blended(`${total(blendSums.acid)}/${total("Oil kg")}`, ofLot(acidValueHeading)),
  ),
  halfWidth: timesAssay(
    blended(
      `SQRT(${total(blendSums.shared)}^2+${total(blendSums.ownSquared)})/${total("Oil kg")}`,
      halfOf(),
    ),
  ),
  worth: blended(
    `IF(${rowsSaying("Not yet")}>0,"Not yet: a lot in ${blendsName}.",IF(${rowsSaying("Good")}=${one(inBlends)},"Good",IF(${rowsSaying("Good")}+${rowsSaying("Usable")}+${rowsSaying("Near zero")}=${one(inBlends)},"Usable: a lot in ${blendsName}.","${unknownWorthIn(blendsName)}")))`,
    ofLot(worthHeading),
  ),
};

/** The methanol in a litre of it. A methoxide of assay under 50 % is a solution in methanol. */
const gramsInLitre = methanolDensity.times(1000).toString();
const isMethoxide = `OR(ISNUMBER(SEARCH("OCH3",${one("Base")})),ISNUMBER(SEARCH("methoxide",${one("Base")})))`;
export const brought =
  `IF(${one("Assay %")}<50,IF(${isMethoxide},` +
  `IF(ISNUMBER(${one("Catalyst g")}),${one("Catalyst g")}*(100-${one("Assay %")})/100/${gramsInLitre},NA()),0),0)`;

/** Shown in place of a dose from readings that are apart. */
const notYetWords = `Not yet: see ${worthColumn}`;
export const unlessHeldBack = (dose: string): string =>
  `IF(${heldBackFormula(one(worthColumn), one("Note"))},"${notYetWords}",${dose})`;
