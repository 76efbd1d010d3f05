/** The pane, the same in the spreadsheet program and in the workbench: one task at a time. */
import "./explain/explain.css";
import "./tasks.css";
import { type ReactNode, Suspense, useCallback, useEffect, useState } from "react";
import { CellExplanation } from "./explain/cell-explanation";
import type { ShownCell } from "./explain/shown-cell";
import { RunChecksAgain } from "./healing/run-checks-again";
import { type Given, LastOpening, type Opening, OpenTask } from "./open-task";
import { tasks } from "./tasks";
import type { TaskProps } from "./task-props";
import { TaskBoundary } from "./task-boundary";
import { PaneTheme } from "./theme";
import { useUnderWay } from "./under-way";
import { useOpenedWorkbooks, WorkbookTurn } from "./workbook-turn";

const cellTask = "cell";
const buttons = [{ id: cellTask, name: "This cell" }, ...tasks];

export interface PaneProps {
  readonly cell: ShownCell | undefined;
  /** Undefined until a workbook can be reached: then the pane only explains. */
  readonly bench: TaskProps | undefined;
  /** Another workbook is being laid out: no task may write into it what belongs to the one before. */
  readonly isBetween?: boolean;
  /** What the program around it has to say, above the tasks, until one is opened. */
  readonly notice?: ReactNode;
  /** A task that something outside opens; asked for anew where `turn` is another. */
  readonly wanted?: { readonly task: string; readonly turn: number } | undefined;
  /** What is asked of the program around it, below the help. */
  readonly below?: ReactNode;
}

export function Pane(props: PaneProps) {
  const { cell, bench, isBetween = false, notice, below, wanted } = props;
  const [open, setOpen] = useState(cellTask);
  /** Kept once opened, though hidden: nothing typed is lost. */
  const [opened, setOpened] = useState<readonly string[]>([]);
  const show = (id: string): void => {
    setOpen(id);
    setOpened((was) => (was.includes(id) ? was : [...was, id]));
  };
  const [opening, setOpening] = useState<Opening | undefined>();
  const openFor = useCallback((task: string, about: string, given: Given = {}): void => {
    setOpening((was) => ({ task, about, given, turn: (was?.turn ?? 0) + 1 }));
    show(task);
  }, []);
  useEffect(() => {
    if (wanted) show(wanted.task);
  }, [wanted]);
  // what was asked of a task beside one workbook is not done beside the next
  useEffect(() => {
    if (isBetween) setOpening(undefined);
  }, [isBetween]);
  const workbook = useOpenedWorkbooks(bench?.host);
  const begun = useUnderWay(isBetween ? undefined : bench, open);
  const isUnderWay = (id: string): boolean => begun.has(id) && id !== open;
  if (!bench) return <CellExplanation cell={cell} />;
  return (
    <PaneTheme>
      {open === cellTask ? notice : null}
      <nav className="tasks" aria-label="Tasks">
        {buttons.map(({ id, name }) => (
          <div key={id}>
            <button
              type="button"
              aria-current={id === open ? "page" : undefined}
              aria-describedby={isUnderWay(id) ? `under-way-${id}` : undefined}
              onClick={() => {
                show(id);
              }}
            >
              {name}
            </button>
            {isUnderWay(id) ? <span id={`under-way-${id}`}>under way</span> : null}
          </div>
        ))}
      </nav>
      <div hidden={open !== cellTask}>
        <TaskBoundary name="This cell">
          <CellExplanation cell={cell} />
        </TaskBoundary>
        <RunChecksAgain host={bench.host} cell={cell} />
        <p className="pane-help">
          <a href="help/index.html" target="_blank" rel="noreferrer">
            Help and guides
          </a>
        </p>
        {below}
      </div>
      <WorkbookTurn.Provider value={workbook}>
        <OpenTask.Provider value={openFor}>
          <LastOpening.Provider value={opening}>
            {isBetween && open !== cellTask ? <p role="status">One moment.</p> : null}
            {tasks
              .filter(({ id }) => opened.includes(id) && !isBetween)
              .map(({ id, name, isOfWorkbook, Component }) => (
                <div
                  key={`${id} ${isOfWorkbook ? String(workbook) : bench.memory.workbook}`}
                  hidden={open !== id}
                >
                  <TaskBoundary name={name}>
                    <Suspense fallback={<p role="status">One moment.</p>}>
                      <Component {...bench} />
                    </Suspense>
                  </TaskBoundary>
                </div>
              ))}
          </LastOpening.Provider>
        </OpenTask.Provider>
      </WorkbookTurn.Provider>
    </PaneTheme>
  );
}
