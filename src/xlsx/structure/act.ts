/** What can be done to the rows, columns and sheets of a workbook. Places count from 0. */
export type StructuralAct = LinesAct | SheetAct;

export type LinesAct =
  | {
      readonly do: "insert-rows" | "insert-columns";
      readonly sheet: string;
      readonly before: number;
      readonly count: number;
    }
  | {
      readonly do: "delete-rows" | "delete-columns";
      readonly sheet: string;
      readonly first: number;
      readonly count: number;
    };

export type SheetAct =
  | { readonly do: "rename-sheet"; readonly sheet: string; readonly name: string }
  /** `to` is its place among the sheets that have cells. */
  | { readonly do: "move-sheet"; readonly sheet: string; readonly to: number }
  | { readonly do: "delete-sheet"; readonly sheet: string };
