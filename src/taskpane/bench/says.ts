/** What a task goes by, in the few words of its line. */
import { isProblem } from "../../core/problem/problem";
import type { View as BatchView } from "../batch/view-of";
import type { View as FuelView } from "../fuel/view-of";
import type { View as TitrationView } from "../titrate/view-of";
import type { View as WhatIfView } from "../what-if/view-of";
import type { BenchValues } from "../../workbook/tables/bench";
import { digits } from "../widgets/shown-number";
import { withMark } from "../widgets/typed-number";
import { benchCharge } from "./charge";

/** "0.05 mL"; "" while it is not filled in. */
const text = (before: string, typed: string | undefined, after: string): string =>
  (typed ?? "").trim() === "" ? "" : `${before}${typed ?? ""}${after}`;

export function titrationSays({ draft, working }: TitrationView): readonly string[] {
  const { strength } = working;
  const { typed, picked } = draft;
  if (strength === undefined) return [];
  return [
    `${picked.base} ${digits(strength.molarity, 4)} mol/L`,
    text("± ", typed.strengthPercent, " %"),
    text("burette ", typed.titreStep, " mL"),
    text("balance ", typed.massStep, " g"),
  ];
}

export function batchSays({ draft, working }: BatchView): readonly string[] {
  const { typed, picked, words } = draft;
  const { charge } = working;
  const isKnown = charge !== undefined && !isProblem(charge);
  const [figure, unit] =
    picked.chargeUnit === "%"
      ? [typed.chargePercent, " % of the oil"]
      : [typed.chargeGrams, " g/L"];
  const pure = picked.chargeIs === "pure" ? ", pure" : ", as weighed";
  if ((typed.assay ?? "") === "") return [];
  return [
    `${picked.base}${text(" lot ", words.lyeLot, "")} ${typed.assay ?? ""} %`,
    isKnown ? text("charge ", figure, `${unit}${pure}`) : "",
    picked.methanolBy === "ratio"
      ? text("methanol ", typed.ratio, " to 1")
      : text("methanol ", typed.volumePercent, " % by volume"),
    text("up to ", typed.limit, " % FFA"),
  ];
}

/** The charge as the bench says it, where it is that of the bench. */
export function whatIfSays(
  { draft, figures, mark }: WhatIfView,
  values: BenchValues,
): readonly string[] {
  const { typed, picked } = draft;
  if (picked.by === "base" || (typed.assay ?? "") === "") return [];
  const own = benchCharge(values, picked.base, picked.oil);
  const isOwn = own !== undefined && figures.value("charge")?.eq(own.percent) === true;
  return [
    `${picked.base} ${typed.assay ?? ""} %`,
    isOwn
      ? `charge ${withMark(own.words, mark)}`
      : text("charge ", typed.charge, " % of the oil, pure"),
    text("up to ", typed.limit, " % FFA"),
  ];
}

export const fuelSays = ({ draft: { typed } }: FuelView): readonly string[] => [
  text("alkali ", typed.acidMolarity, " mol/L"),
  text("burette ", typed.titreStep, " mL"),
  text("balance ", typed.massStep, " g"),
];
