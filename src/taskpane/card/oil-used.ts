/** How much oil really went in, by what was typed of each lot on the card. */
import { type Exact, exact, one } from "../../core/exact/exact";
import type { RecordedBatch } from "../../workbook/planning/read-batches";
import type { DecimalMark } from "../widgets/typed-number";
import type { AmountShown } from "./card";
import type { Held } from "./draft";
import { weighedBox } from "./fields";
import { typedIn } from "./typed";

export interface OilUsed {
  /** kg; undefined while nothing of it is typed, or a lot has no mass. */
  readonly kilograms: Exact | undefined;
  /** Lots beside weighed ones for which nothing was typed. */
  readonly asWorkedOut: readonly string[];
  /** Of what was planned: 1 while nothing is typed. */
  readonly share: Exact;
}

const sum = (all: readonly Exact[]): Exact => all.reduce((one, each) => one.plus(each), exact(0));

export function oilUsed(
  batch: RecordedBatch,
  amounts: readonly AmountShown[],
  held: Held,
  mark: DecimalMark,
): OilUsed {
  const oils = amounts
    .filter(({ weighs }) => weighs === "oil")
    .map((amount, at) => {
      const { value } = typedIn(held, weighedBox(amount), mark);
      const { part } = amount.scale;
      const kilograms = batch.oils[at]?.kilograms;
      // of a volume: as much more or less in mass
      return value === undefined || kilograms === undefined
        ? undefined
        : value.div(part.value.times(part.source.times)).times(kilograms);
    });
  const isWeighed = oils.some((oil) => oil !== undefined);
  const planned = batch.oils.map(({ kilograms }) => kilograms);
  // a lot that was not weighed went in as worked out: what was weighed is never dropped for it
  const known = oils.flatMap((oil, at) => {
    const asWorked = planned[at];
    return oil ?? (asWorked === undefined ? [] : exact(asWorked));
  });
  const isKnown = isWeighed && known.length === oils.length;
  const kilograms = isKnown ? sum(known) : undefined;
  const all = sum(planned.map((each) => exact(each ?? 0)));
  return {
    kilograms,
    asWorkedOut: isWeighed
      ? batch.oils.flatMap(({ lot }, at) => (oils[at] === undefined ? [String(lot)] : []))
      : [],
    share: kilograms && all.gt(0) ? kilograms.div(all) : one,
  };
}
