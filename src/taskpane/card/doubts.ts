/** What is said at a box of the card while the figure can still be put right. Nobody is stopped. */
import { oilLitres } from "../../core/batch/oil-mass";
import { oilLeft } from "../../core/batch/went";
import { shownIn } from "../../core/card/shown";
import type { CardUnits } from "../../core/card/units";
import { type Exact, exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { oilNotNamed } from "../../core/reference/oils";
import { countedValue } from "../../workbook/card/amounts";
import type { RecordedBatch } from "../../workbook/planning/read-batches";
import type { DecimalMark } from "../widgets/typed-number";
import type { AmountShown } from "./card";
import type { Held } from "./draft";
import { farFrom, madeBox, muchMade, weighedBox } from "./fields";
import { oilUsed } from "./oil-used";
import { type TypedBox, typedIn } from "./typed";

type OfCard = readonly [
  batch: RecordedBatch,
  amounts: readonly AmountShown[],
  held: Held,
  mark: DecimalMark,
];

/** Lye so much off is weighed again before it goes in (common practice, no source). */
const lyeOff = "0.05";

/** Lye that is more or less than the oil wants that really went in; undefined where it is about right. */
function offLye(
  amount: AmountShown,
  typed: TypedBox & { readonly value: Exact },
  share: Exact,
): string | undefined {
  const { form, part } = amount.scale;
  const wanted = countedValue(part).times(share);
  if (wanted.lte(0)) return undefined;
  const off = typed.value.div(wanted).minus(1);
  if (off.abs().lt(lyeOff)) return undefined;
  const percent = off.abs().times(100).toFixed(0);
  // in the unit it was typed in, whatever the card speaks in now
  const isHere = typed.form.unit === form.unit;
  const right = isHere && share.eq(1) ? amount.figure : shownIn(typed.form, wanted);
  const worked = `${right} ${share.eq(1) ? "was worked out" : "is right for the oil that went in"}`;
  return `${worked}, you typed ${typed.asTyped}: ${percent} % ${off.gt(0) ? "more" : "less"}. Weigh again before it goes into the methanol.`;
}

/** Of one amount: it is far from what was planned, or it is lye that is a little off. */
export function weighedDoubt(amount: AmountShown, ...of: OfCard): string | undefined {
  const [batch, amounts, held, mark] = of;
  const typed = typedIn(held, weighedBox(amount), mark);
  const { judged, value } = typed;
  if (judged.kind !== "figure" || value === undefined) return undefined;
  const far = farFrom(amount, typed);
  if (far !== undefined || amount.weighs !== "lye") return far;
  return offLye(amount, { ...typed, value }, oilUsed(batch, amounts, held, mark).share);
}

/** Oil that was weighed fills a can as common oils do. */
function litresIn({ scale: { part } }: AmountShown): Exact | undefined {
  if (part.counted === "L") return countedValue(part);
  const litres = oilLitres(as("kg", countedValue(part)), oilNotNamed);
  return isProblem(litres) ? undefined : litres;
}

/** Of the fuel: it is more than so much oil can give. */
export function madeDoubt(units: CardUnits, ...[batch, amounts, held, mark]: OfCard) {
  const made = typedIn(held, madeBox(units), mark).value;
  if (made === undefined) return undefined;
  const litres = amounts.filter(({ weighs }) => weighs === "oil").map(litresIn);
  const oil = litres.reduce<Exact | undefined>(
    (sum, each) => (sum && each ? sum.plus(each) : undefined),
    exact(0),
  );
  const { kilograms, share } = oilUsed(batch, amounts, held, mark);
  return muchMade(oil?.times(share), made, units, kilograms ? "went in" : "was planned");
}

/** What is seen in the methanol trial, where it means that the fuel is not done. */
export const trialDoubt = (trial: string | undefined): string | undefined =>
  trial === oilLeft
    ? "Not done yet: oil is left in it. Drain the glycerol, treat one litre again first, then the rest, before you wash."
    : undefined;
