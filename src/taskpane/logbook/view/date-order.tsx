/** Days that may be two ("03/04/2026"), asked about once where nothing in the book tells. */
import { useMemo } from "react";
import { dateHabit } from "../../../adopt/recognising/date-habit";
import { dateFromText, type DateOrder } from "../../../adopt/recognising/typed-date";
import { dayInWords } from "../../../workbook/over-time/day-words";
import { Choice } from "../../widgets/choice";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";

const orders: readonly DateOrder[] = ["day first", "month first"];

interface OrderProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
}

export function DateOrderAsked({ table: { mapping, cells }, act }: OrderProps) {
  const { asked, order } = useMemo(() => dateHabit(mapping, cells), [mapping, cells]);
  if (asked === undefined) return null;
  return (
    <Choice
      label={`${asked} is`}
      value={order}
      options={orders.map((each) => [each, dayInWords(dateFromText(asked, each) ?? 0)] as const)}
      onPick={(picked) => {
        act({ do: "dates", order: picked });
      }}
    />
  );
}
