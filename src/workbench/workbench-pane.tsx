/** The pane beside the sheet: it follows the selected cell, and titrates once the grid is there. */
import { useEffect, useMemo, useSyncExternalStore } from "react";
import type { Host } from "../sheet/port";
import { browserDrafts } from "../taskpane/titrate/drafts/in-browser";
import { browserMemory } from "../taskpane/drafts/task-memory";
import { Pane } from "../taskpane/pane";
import type { Selection } from "./selection";
import type { WantedTask } from "./wanted-task";
import type { Welcome } from "./welcome";
import { WelcomeCard } from "./welcome-card";

/** The page has the browser's storage for itself. */
const partition = "";

export function WorkbenchPane({
  selection,
  wanted,
  welcome,
  host,
}: {
  selection: Selection;
  wanted: WantedTask;
  welcome: Welcome;
  host: Host | undefined;
}) {
  const cell = useSyncExternalStore(selection.subscribe, selection.current);
  const bench = useMemo(
    () =>
      host && {
        host,
        drafts: browserDrafts(partition, Date.now),
        memory: browserMemory(partition),
        locale: navigator.language,
      },
    [host],
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
      wanted={task}
      notice={ways ? <WelcomeCard ways={ways} /> : null}
    />
  );
}
