/** What a task goes by now, as settings of My bench: only what is filled in. */
import { amountUnitNamed } from "../../core/quantity/units";
import { type BenchValues, chargeIsWords, chargeUnitWords } from "../../workbook/tables/bench";
import type { View as BatchView } from "../batch/view-of";
import type { View as FuelView } from "../fuel/view-of";
import type { View as TitrationView } from "../titrate/view-of";
import type { View as WhatIfView } from "../what-if/view-of";

type Texts = Readonly<Record<string, string | undefined>>;

const filled = (all: Texts): BenchValues =>
  Object.fromEntries(Object.entries(all).filter(([, text]) => (text ?? "") !== ""));

export const ofTitration = ({ draft, figures }: TitrationView): BenchValues =>
  filled({
    titrantBase: draft.picked.base,
    molarity: draft.picked.way === "molarity" ? figures.value("molarity")?.toString() : undefined,
    strengthPercent: figures.value("strengthPercent")?.toString(),
    titreStep: figures.value("titreStep")?.toString(),
    massStep: figures.value("massStep")?.toString(),
  });

/** Without the amount of oil: that is another each time. */
export function ofBatch({ draft, figures }: BatchView): BenchValues {
  const { base, chargeUnit, chargeIs } = draft.picked;
  const charge = figures.value(chargeUnit === "%" ? "chargePercent" : "chargeGrams")?.toString();
  const isCharged = charge !== undefined && chargeIs !== "";
  return filled({
    base,
    [`lot${base}`]: draft.words.lyeLot.trim(),
    [`assay${base}`]: figures.value("assay")?.toString(),
    [`charge${base}`]: isCharged ? charge : undefined,
    chargeUnit: isCharged ? chargeUnitWords[chargeUnit] : undefined,
    chargeIs: isCharged ? chargeIsWords[chargeIs] : undefined,
    ratio: figures.value("ratio")?.toString(),
    limit: figures.value("limit")?.toString(),
  });
}

/** Without its charge, which is pure here whatever My bench gives it in. */
export const ofWhatIf = ({ draft, figures }: WhatIfView): BenchValues =>
  filled({
    base: draft.picked.base,
    [`assay${draft.picked.base}`]: figures.value("assay")?.toString(),
    limit: figures.value("limit")?.toString(),
    unit: amountUnitNamed(draft.picked.unit)?.shown,
  });

/** Its base is that of its batch. */
export const ofFuel = ({ figures }: FuelView): BenchValues =>
  filled({
    molarity: figures.value("acidMolarity")?.toString(),
    strengthPercent: figures.value("acidPercent")?.toString(),
    titreStep: figures.value("titreStep")?.toString(),
    massStep: figures.value("massStep")?.toString(),
  });
