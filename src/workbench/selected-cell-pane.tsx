/** The pane beside the sheet: it follows the selected cell. */
import { useSyncExternalStore } from "react";
import { Pane } from "../taskpane/pane";
import type { Selection } from "./selection";

export function SelectedCellPane({ selection }: { selection: Selection }) {
  return <Pane cell={useSyncExternalStore(selection.subscribe, selection.current)} />;
}
