/** What was typed on the card after the batch, as its row takes it: litres, kilograms, grams. */
import type { CardUnits } from "../../core/card/units";
import type { WentRecord } from "../../workbook/planning/record/record-went";
import type { RecordedBatch } from "../../workbook/planning/read-batches";
import { judge } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { AmountShown } from "./card";
import { madeDoubt } from "./doubts";
import type { Held } from "./draft";
import { farFrom, madeBox, minutesField, washesField, weighedBox } from "./fields";
import { oilUsed } from "./oil-used";
import { othersOf, typedIn } from "./typed";

type Values = WentRecord["values"];

const one = <Id extends string>(id: Id, value: number | string | undefined) =>
  value === undefined || value === "" ? {} : { [id]: value };

const counts = { minutes: minutesField, washes: washesField } as const;
const countIn = ({ typed }: Held, id: keyof typeof counts, mark: DecimalMark) =>
  judge(typed[id] ?? "", counts[id], mark);

/** The fields with something wrong in them, by their labels: nothing is recorded before they are right. */
export function wrongIn(
  amounts: readonly AmountShown[],
  held: Held,
  units: CardUnits,
  mark: DecimalMark,
): readonly string[] {
  const boxes = [...amounts.map(weighedBox), madeBox(units)].map((box) => ({
    judged: typedIn(held, box, mark).judged,
    fact: box.fact,
  }));
  const counted = (["minutes", "washes"] as const).map((id) => ({
    judged: countIn(held, id, mark),
    fact: counts[id],
  }));
  return [...boxes, ...counted].flatMap(({ judged, fact }) =>
    judged.kind === "wrong" ? [fact.label] : [],
  );
}

/** @returns undefined while a figure is wrong, or nothing is typed */
export function wentOf(
  batch: RecordedBatch,
  amounts: readonly AmountShown[],
  held: Held,
  units: CardUnits,
  mark: DecimalMark,
): WentRecord | undefined {
  if (wrongIn(amounts, held, units, mark).length > 0) return undefined;
  const { typed } = held;
  const valueOf = (amount: AmountShown | undefined) =>
    amount && typedIn(held, weighedBox(amount), mark).value;
  const byId = (weighs: AmountShown["weighs"]) => amounts.find((each) => each.weighs === weighs);
  const count = (id: keyof typeof counts): number | undefined => {
    const judged = countIn(held, id, mark);
    return judged.kind === "figure" ? judged.value.toNumber() : undefined;
  };
  const { kilograms, asWorkedOut } = oilUsed(batch, amounts, held, mark);
  const values: Values = {
    ...one("weighed", valueOf(byId("lye"))?.toNumber()),
    ...one("methanol", valueOf(byId("methanol"))?.toNumber()),
    ...one("oil", kilograms?.toNumber()),
    ...one("litres", typedIn(held, madeBox(units), mark).value?.toNumber()),
    ...one("minutes", count("minutes")),
    ...one("washes", count("washes")),
    ...one("trial", typed.trial),
    ...one("seen", typed.seen?.trim()),
  };
  if (Object.keys(values).length === 0) return undefined;
  const far = amounts.flatMap((amount) => {
    const doubt = farFrom(amount, typedIn(held, weighedBox(amount), mark));
    return doubt === undefined ? [] : [`${amount.what}: ${doubt}`];
  });
  const made = madeDoubt(units, batch, amounts, held, mark);
  const doubts = made === undefined ? far : [...far, `Fuel made: ${made}`];
  return { row: batch.row, batch: batch.batch, values, asWorkedOut, doubts };
}

const ofWeighed: Readonly<Record<string, AmountShown["weighs"]>> = {
  weighed: "lye",
  methanol: "methanol",
  oil: "oil",
};

/** Under which the card keeps what goes into a column of the row, in whichever unit it was typed. */
export function keysOf(
  id: string,
  amounts: readonly AmountShown[],
  units: CardUnits,
): readonly string[] {
  const weighs = ofWeighed[id];
  const boxes =
    id === "litres"
      ? [madeBox(units)]
      : amounts.filter((each) => each.weighs === weighs).map(weighedBox);
  return boxes.length === 0 ? [id] : boxes.flatMap((box) => [box.key(box.form), ...othersOf(box)]);
}
