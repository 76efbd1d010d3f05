/** What a person may put right or answer about a logbook: each changes what was agreed that it is. */
import { type Answer, withAnswer } from "../../adopt/recognising/answers";
import { type Basis, withBasis } from "../../adopt/recognising/basis";
import {
  type LogbookMapping,
  withColumn,
  withConstant,
  withUnit,
} from "../../adopt/recognising/mapping";
import { withLeft } from "../../adopt/recognising/by-hand/left-out";
import type { RoleId } from "../../adopt/recognising/roles";
import type { DateOrder } from "../../adopt/recognising/typed-date";
import { type FigureId, type TypedFigure, withTyped } from "./typed-figures";

export type MappingAction =
  | {
      readonly do: "column";
      readonly column: number;
      readonly role: RoleId;
      readonly unit?: string;
    }
  /** A figure for all rows in the one unit it can have, or a word. */
  | { readonly do: "constant"; readonly role: RoleId; readonly value: string }
  /** A figure for all rows whose unit is said beside it: what is left out stays as it was. */
  | ({ readonly do: "typed"; readonly figure: FigureId } & Partial<TypedFigure>)
  /** The unit of a figure that stands on the sheet. */
  | { readonly do: "unit"; readonly role: RoleId; readonly unit: string }
  | { readonly do: "basis"; readonly role: RoleId; readonly basis: Basis }
  | { readonly do: "answer"; readonly answer: Answer }
  | { readonly do: "dates"; readonly order: DateOrder }
  /** Rows left out by hand, counted from 0. */
  | { readonly do: "leave"; readonly rows: readonly number[] };

export function changed(mapping: LogbookMapping, action: MappingAction): LogbookMapping {
  switch (action.do) {
    case "column":
      return withColumn(mapping, action.column, action.role, action.unit);
    case "constant":
      return withConstant(mapping, action.role, action.value);
    case "typed":
      return withTyped(mapping, action.figure, action);
    case "unit":
      return withUnit(mapping, action.role, action.unit);
    case "basis":
      return withBasis(mapping, action.role, action.basis);
    case "answer":
      return withAnswer(mapping, action.answer);
    case "dates":
      return { ...mapping, dates: action.order };
    case "leave":
      return withLeft(mapping, action.rows);
  }
}
