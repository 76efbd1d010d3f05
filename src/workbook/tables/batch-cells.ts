/** The cells of a row of `Batches`, as its formulas name them, and what its results are worked out by. */
import { methanolDensity } from "../../core/reference/liquids";
import { heldBackFormula } from "../record/worth";
import { cellOf } from "./column";
import { ofLastTitration } from "./last-titration";
import { worthHeading } from "./titration-cells";

export const batchesName = "Batches";
/** Several lots in a batch: a row each. */
export const blendsName = "Blends";
/** This row's cell in a column. */
export const one = (heading: string): string => cellOf(batchesName, heading);

/** A column of a lot's last row in `Titrations` up to the batch's day: a lot treated and titrated again counts anew. */
export const ofLot = (heading: string, lot = "Lots"): string =>
  ofLastTitration(heading, one(lot), one("Date"));

/** What stands under `Titrant lye` when the acid value was worked out as if the lye were pure. */
export const asIfPure = "same lye taken as pure";

export const acidValueHeading = "Acid value mg KOH/g";
export const worthColumn = "Acid value worth";
export const halfWidthHeading = "± acid value mg KOH/g";
const first = ofLot(acidValueHeading);
const second = ofLot(acidValueHeading, "Second lot");
const share = one("Second lot %");

/** Of one lot, or of two by their shares; a titrant taken as pure holds its assay's part of the base. */
const ofMix = (ofFirst: string, ofSecond: string): string =>
  `IF(${one("Second lot")}="",${ofFirst},IF(${share}>0,${ofFirst}*(1-${share}/100)+${ofSecond}*${share}/100,NA()))` +
  `*IF(${one("Titrant lye")}="${asIfPure}",${one("Assay %")}/100,1)`;
export const acidValue = ofMix(first, second);

/** The same of the half-widths: which way each lot is off is not known, so they add up. */
const halfOf = (lot?: string): string => `TITRE.ACIDVALUEFROMFFA(${ofLot("± FFA %", lot)})`;
export const halfWidth = ofMix(halfOf(), halfOf("Second lot"));

/** What the lot's result is worth, or those of both. */
export const worth =
  `IF(${one("Second lot")}="",${ofLot(worthHeading)},` +
  `${one("Lots")}&": "&${ofLot(worthHeading)}&" "&${one("Second lot")}&": "&${ofLot(worthHeading, "Second lot")})`;

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
