/** The pane beside the sheet: it follows the selected cell, and titrates once the grid is there. */
import { useEffect, useMemo, useSyncExternalStore } from "react";
import type { Host } from "../sheet/port";
import type { KeptHere } from "../taskpane/kept-here";
import { Pane } from "../taskpane/pane";
import type { Selection } from "./selection";
import type { WantedTask } from "./wanted-task";
import type { Welcome } from "./welcome";
import { WelcomeCard } from "./welcome-card";

export interface WorkbenchPaneProps {
  readonly selection: Selection;
  readonly wanted: WantedTask;
  readonly welcome: Welcome;
  readonly kept: KeptHere;
  readonly host?: Host;
  /** Whose drafts are offered; undefined while another workbook is being laid out. */
  readonly workbook?: string | undefined;
}

export function WorkbenchPane(props: WorkbenchPaneProps) {
  const { selection, wanted, welcome, kept, host, workbook } = props;
  const cell = useSyncExternalStore(selection.subscribe, selection.current);
  const bench = useMemo(
    () =>
      host && {
        host,
        ...kept.of(workbook ?? ""),
        locale: navigator.language,
      },
    [host, kept, workbook],
  );
  const task = useSyncExternalStore(wanted.subscribe, wanted.current);
  const ways = useSyncExternalStore(welcome.subscribe, welcome.current);
  useEffect(
    () =>
      host?.watch(({ event }) => {
        if (event === "workbook") welcome.set(undefined);
      }),
    [host, welcome],
  );
  return (
    <Pane
      cell={cell}
      bench={bench}
      isBetween={workbook === undefined}
      wanted={task}
      notice={ways ? <WelcomeCard ways={ways} /> : null}
    />
  );
}
