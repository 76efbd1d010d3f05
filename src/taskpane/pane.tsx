/** The pane, the same in the spreadsheet program and in the workbench. */
import "./explain/explain.css";
import { CellExplanation } from "./explain/cell-explanation";
import type { ShownCell } from "./explain/shown-cell";

export function Pane({ cell }: { cell: ShownCell | undefined }) {
  return <CellExplanation cell={cell} />;
}
