/**
 * Which workbook the pane stands beside, as a count: it rises when another is opened there. What a task
 * found, agreed, planned or wrote belongs to one workbook, and is not shown beside another.
 */
import { createContext, useContext, useEffect, useState } from "react";
import type { Host } from "../sheet/port";

export const WorkbookTurn = createContext(0);

/** For whatever is drawn inside the pane. */
export const useWorkbookTurn = (): number => useContext(WorkbookTurn);

/** For the pane itself. */
export function useOpenedWorkbooks(host: Host | undefined): number {
  const [turn, setTurn] = useState(0);
  useEffect(
    () =>
      host?.watch(({ event }) => {
        if (event === "workbook") setTurn((count) => count + 1);
      }),
    [host],
  );
  return turn;
}
