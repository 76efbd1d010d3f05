/** What was typed on the card after the batch, as its row takes it: litres, kilograms, grams. */
import type { CardUnits } from "../../core/card/units";
import { type Exact, exact } from "../../core/exact/exact";
import type { WentRecord } from "../../workbook/planning/record/record-went";
import type { RecordedBatch } from "../../workbook/planning/read-batches";
import { judge, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { AmountShown } from "./card";
import { countedValue } from "../../workbook/card/amounts";
import type { Held } from "./draft";
import { farFrom, madeBox, minutesField, muchMade, washesField, weighedBox } from "./fields";
import { type Box, typedIn } from "./typed";

type Values = WentRecord["values"];

const one = <Id extends string>(id: Id, value: number | string | undefined) =>
  value === undefined || value === "" ? {} : { [id]: value };

/** @returns undefined while a figure is wrong, or nothing is typed */
export function wentOf(
  batch: RecordedBatch,
  amounts: readonly AmountShown[],
  held: Held,
  units: CardUnits,
  mark: DecimalMark,
): WentRecord | undefined {
  const { typed } = held;
  let isWrong = false;
  const figure = (id: string, fact: NumberFieldFact): Exact | undefined => {
    const judged = judge(typed[id] ?? "", fact, mark);
    isWrong ||= judged.kind === "wrong";
    return judged.kind === "figure" ? judged.value : undefined;
  };
  const doubts: string[] = [];
  const boxed = (box: Box): Exact | undefined => {
    const { judged, value } = typedIn(held, box, mark);
    isWrong ||= judged.kind === "wrong";
    return value;
  };
  /** As the amount is counted where it stands. */
  const countedOf = (amount: AmountShown): Exact | undefined => {
    const value = boxed(weighedBox(amount));
    const doubt = value && farFrom(amount, value.div(amount.scale.form.per));
    if (doubt !== undefined) doubts.push(`${amount.what}: ${doubt}`);
    return value;
  };
  const byId = (weighs: AmountShown["weighs"]) => amounts.filter((each) => each.weighs === weighs);
  const [methanol, lye] = [byId("methanol")[0], byId("lye")[0]];
  const oils = byId("oil").map((amount, at) => {
    const counted = countedOf(amount);
    const { part } = amount.scale;
    const kilograms = batch.oils[at]?.kilograms;
    // of a volume: as much more or less in mass
    return counted === undefined || kilograms === undefined
      ? undefined
      : counted.div(part.value.times(part.source.times)).times(kilograms);
  });
  const isWeighed = oils.some((oil) => oil !== undefined);
  // a lot that was not weighed went in as worked out: what was weighed is never dropped for it
  const known = oils.flatMap((oil, at) => {
    const asWorked = batch.oils[at]?.kilograms;
    return oil ?? (asWorked === undefined ? [] : exact(asWorked));
  });
  const oil =
    isWeighed && known.length === oils.length
      ? known.reduce((sum, each) => sum.plus(each)).toNumber()
      : undefined;
  const asWorkedOut = isWeighed
    ? batch.oils.flatMap(({ lot }, at) => (oils[at] === undefined ? [String(lot)] : []))
    : [];
  const made = boxed(madeBox(units));
  const ofOil = byId("oil").map(({ scale: { part } }) =>
    part.counted === "L" ? countedValue(part) : undefined,
  );
  const oilLitres = ofOil.reduce<Exact | undefined>(
    (sum, each) => (sum && each ? sum.plus(each) : undefined),
    exact(0),
  );
  const tooMuch = made && muchMade(oilLitres, made, units);
  const values: Values = {
    ...one("weighed", lye && countedOf(lye)?.toNumber()),
    ...one("methanol", methanol && countedOf(methanol)?.toNumber()),
    ...one("oil", oil),
    ...one("litres", made?.toNumber()),
    ...one("minutes", figure("minutes", minutesField)?.toNumber()),
    ...one("washes", figure("washes", washesField)?.toNumber()),
    ...one("trial", typed.trial),
    ...one("seen", typed.seen?.trim()),
  };
  if (isWrong || Object.keys(values).length === 0) return undefined;
  if (tooMuch !== undefined) doubts.push(`Fuel made: ${tooMuch}`);
  return { row: batch.row, batch: batch.batch, values, asWorkedOut, doubts };
}
