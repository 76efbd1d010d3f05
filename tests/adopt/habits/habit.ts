/**
 * How one maker keeps a logbook: units, conventions, what is written down and where. Nothing here is a
 * mistake. Every choice is one that makers are known to make.
 */
import type { Chance } from "./chance";

/** Where a figure stands that is the same for all rows. */
export type Place = "column" | "beside" | "asked";
export type BaseName = "KOH" | "NaOH" | "NaOCH3";

export interface Habit {
  readonly titrant: {
    readonly base: "KOH" | "NaOH";
    readonly unit: "mol/L" | "g/L" | "% w/v";
    readonly value: number;
    /** The figure is of the flake as it was weighed, so that its assay still has to be taken off. */
    readonly isAsWeighed: boolean;
    readonly place: Place;
    readonly basePlace: Place | "heading";
  };
  readonly sample: {
    readonly by: "g" | "mL";
    readonly size: number;
    readonly place: Place;
    /** Each titre has a sample of its own. */
    readonly isOwn: boolean;
  };
  readonly titres: number;
  /** Which readings are written down: each titre, their mean alone, or only what is left without the blank. */
  readonly reads: "titres" | "mean" | "net";
  readonly blank:
    "column" | "two columns" | "once a day" | "beside" | "word" | "zero" | "neutralised";
  /** Titrations on one day, and whether the day is sometimes not written down. */
  readonly days: { readonly rows: 1 | 2 | 3; readonly isSometimesMissing: boolean };
  /** The oil's temperature is written down, and used for nothing. */
  readonly hasTemperature: boolean;
  /** Some batches are of two lots. */
  readonly blends: boolean;
  readonly hasMean: boolean;
  readonly hasNet: boolean;
  readonly hasAcidValue: boolean;
  readonly hasFfa: boolean;
  readonly ffaIn: "%" | "fraction" | "percent format";
  /** What % FFA is worked out with. */
  readonly acidMass: number;
  readonly acidConstant: number;
  readonly density: {
    readonly sample: number;
    readonly oil: number;
    readonly place: Place | "nowhere";
  };
  readonly oilUnit: "L" | "kg" | "US gal" | "imp gal" | "lb";
  readonly hasUnitColumn: boolean;
  readonly hasOilMass: boolean;
  readonly base: BaseName;
  readonly basePlace: Place | "heading";
  readonly assay: number;
  readonly assayPlace: Place;
  readonly charge: {
    readonly value: number;
    readonly per: "g/L" | "%" | "percent format" | "g/kg";
    readonly isAsWeighed: boolean;
    readonly place: Place;
  };
  /** What the lye for the acid starts from. */
  readonly acidFrom: "acid value" | "ffa" | "ffa coefficient" | "titre";
  readonly parts: "none" | "for all" | "for a litre";
  readonly partsAre: "pure" | "as weighed";
  readonly hasRate: boolean;
  readonly hasTotal: boolean;
  readonly doseUnit: "g" | "kg" | "lb" | "oz";
  readonly isWeighedWritten: boolean;
  readonly sheets: 1 | 2;
  /** The batch's sheet repeats its lot's acid figure. */
  readonly copiesAcid: boolean;
  readonly cells: "typed" | "formulas";
  /** Every figure is rounded before the next is worked out from it. */
  readonly roundsOnTheWay: boolean;
  readonly digits: { readonly titre: number; readonly acid: number; readonly dose: number };
  readonly extras: {
    readonly totals: boolean;
    readonly subtotals: boolean;
    readonly stock: boolean;
    readonly notes: boolean;
    readonly methanol: "L" | "kg" | "none";
  };
}

const charges: Readonly<Record<BaseName, Readonly<Record<string, readonly number[]>>>> = {
  KOH: { "g/L": [7, 7.8, 8, 9], "g/kg": [8, 10], "%": [0.8, 1] },
  NaOH: { "g/L": [3.5, 5, 5.5], "g/kg": [5.5, 10], "%": [0.6, 1] },
  NaOCH3: { "g/L": [4, 5], "g/kg": [5], "%": [0.5] },
};

function titrantOf(chance: Chance, base: "KOH" | "NaOH", isSameFlake: boolean): Habit["titrant"] {
  const unit = chance.of(["g/L", "g/L", "mol/L", "% w/v"] as const);
  const value =
    unit === "mol/L"
      ? chance.of([0.1, 0.1, 0.0987, 0.05])
      : unit === "g/L"
        ? chance.of([1, 1, 1, 2, 5.6])
        : 0.1;
  return {
    base,
    unit,
    value,
    // The assay of the batch's flake says something about the burette only where it is the same flake.
    isAsWeighed: unit !== "mol/L" && isSameFlake && chance.yes(0.6),
    place: chance.of(["column", "beside", "asked"] as const),
    basePlace: chance.of(["column", "beside", "asked", "heading"] as const),
  };
}

function sampleOf(chance: Chance, titrant: Habit["titrant"]): Habit["sample"] {
  const isStrong = titrant.unit === "mol/L" || titrant.value > 5;
  const by = isStrong
    ? chance.of(["g", "g", "mL"] as const)
    : chance.of(["mL", "mL", "g"] as const);
  const size = isStrong ? chance.of([5, 10]) : chance.of([1, 1, 2]);
  const isOwn = by === "g" && chance.yes(0.3);
  return {
    by,
    size,
    isOwn,
    place: by === "g" || isOwn ? "column" : chance.of(["column", "beside", "asked"] as const),
  };
}

export function habitOf(chance: Chance): Habit {
  const inBurette = chance.of(["KOH", "KOH", "NaOH"] as const);
  const base: BaseName = chance.yes(0.75)
    ? inBurette
    : chance.of(["KOH", "NaOH", "NaOCH3"] as const);
  const titrant = titrantOf(chance, inBurette, base === inBurette);
  const sample = sampleOf(chance, titrant);
  const per = chance.of(["g/L", "g/L", "g/L", "%", "g/kg", "percent format"] as const);
  const hasAcidValue = chance.yes(0.35);
  const hasFfa = chance.yes(0.65);
  const sheets = (hasAcidValue || hasFfa) && chance.yes(0.3) ? 2 : 1;
  const oilUnit = chance.of(["L", "L", "L", "kg", "US gal", "imp gal", "lb"] as const);
  const isByVolume = oilUnit !== "kg" && oilUnit !== "lb";
  const isTraded = sample.by === "mL" && isByVolume && sheets === 1;
  const written = chance.of(["typed", "formulas"] as const);
  const parts = chance.of(["none", "for all", "for a litre"] as const);
  const hasRate = parts !== "for a litre" && isByVolume && chance.yes(0.3);
  const place = chance.of(["nowhere", "nowhere", "column", "beside"] as const);
  const sampleDensity = chance.of([0.915, 0.915, 0.9, 0.91, 0.92]);
  const reads = sample.isOwn
    ? "titres"
    : chance.of(["titres", "titres", "titres", "titres", "mean", "net"] as const);
  const titres =
    reads !== "titres" ? 1 : sample.isOwn ? chance.of([2, 3]) : chance.of([1, 1, 2, 3, 3]);
  const assay =
    base === "KOH" ? chance.of([90, 85, 88, 91.5]) : base === "NaOH" ? chance.of([97, 98, 99]) : 99;
  const blank: Habit["blank"] =
    reads === "net"
      ? "neutralised"
      : chance.of([
          "column",
          "column",
          "column",
          "two columns",
          "once a day",
          "beside",
          "word",
          "zero",
          "neutralised",
        ] as const);
  // One blank a day is seldom in a sheet of formulas: each would have to look for it.
  const cells = blank === "once a day" ? "typed" : written;
  return {
    titrant,
    sample,
    titres,
    reads,
    blank,
    days: {
      rows: blank === "once a day" ? chance.of([2, 3] as const) : chance.of([1, 1, 2] as const),
      isSometimesMissing: chance.yes(0.2),
    },
    hasTemperature: chance.yes(0.2),
    blends: chance.yes(0.4),
    hasMean: titres > 1 && !sample.isOwn && chance.yes(0.5),
    hasNet: reads !== "net" && !sample.isOwn && chance.yes(0.4),
    hasAcidValue,
    hasFfa,
    ffaIn: chance.of(["%", "%", "%", "fraction", "percent format"] as const),
    acidMass: chance.of([282, 282, 282.5, 282.468, 282.47]),
    acidConstant: chance.of([56.1, 56.1053, 56.11]),
    density: {
      sample: sampleDensity,
      oil: place === "nowhere" && chance.yes(0.3) ? chance.of([0.9, 0.915, 0.92]) : sampleDensity,
      place,
    },
    oilUnit,
    hasUnitColumn: chance.yes(0.3),
    hasOilMass: chance.yes(0.35),
    base,
    basePlace: chance.of(["column", "beside", "asked", "heading"] as const),
    assay,
    assayPlace: chance.of(["column", "beside", "asked"] as const),
    charge: {
      value: chance.of(charges[base][per === "percent format" ? "%" : per] as readonly number[]),
      per,
      isAsWeighed: chance.yes(0.5),
      place:
        per === "percent format"
          ? chance.of(["column", "beside"] as const)
          : chance.of(["column", "beside", "asked"] as const),
    },
    acidFrom: isTraded
      ? chance.of(["titre", "titre", "acid value", "ffa"] as const)
      : chance.of(["acid value", "ffa", "ffa coefficient"] as const),
    parts,
    partsAre: chance.of(["pure", "as weighed"] as const),
    hasRate,
    hasTotal: true,
    doseUnit: chance.of(["g", "g", "g", "g", "kg", "lb", "oz"] as const),
    isWeighedWritten: chance.yes(0.2),
    sheets,
    copiesAcid: chance.yes(0.6),
    cells,
    roundsOnTheWay: cells === "typed" && chance.yes(0.6),
    digits: { titre: 2, acid: chance.of([2, 2, 3]), dose: chance.of([0, 0, 1]) },
    extras: {
      totals: chance.yes(0.3),
      subtotals: chance.yes(0.2),
      stock: chance.yes(0.2),
      notes: chance.yes(0.4),
      methanol: chance.of(["L", "kg", "none"] as const),
    },
  };
}
