/** The pane, the same in the spreadsheet program and in the workbench: one task at a time. */
import "./explain/explain.css";
import "./tasks.css";
import { useState } from "react";
import { CellExplanation } from "./explain/cell-explanation";
import type { ShownCell } from "./explain/shown-cell";
import { PaneTheme } from "./theme";
import { TitrateTask, type TitrateTaskProps } from "./titrate/titrate-task";

type Task = "cell" | "titrate";

const tasks: readonly { readonly task: Task; readonly name: string }[] = [
  { task: "cell", name: "This cell" },
  { task: "titrate", name: "Titrate" },
];

export interface PaneProps {
  readonly cell: ShownCell | undefined;
  /** Undefined until a workbook can be reached: then the pane only explains. */
  readonly bench: TitrateTaskProps | undefined;
}

export function Pane({ cell, bench }: PaneProps) {
  const [open, setOpen] = useState<Task>("cell");
  if (!bench) return <CellExplanation cell={cell} />;
  return (
    <PaneTheme>
      <nav className="tasks" aria-label="Tasks">
        {tasks.map(({ task, name }) => (
          <button
            key={task}
            type="button"
            aria-current={task === open ? "page" : undefined}
            onClick={() => {
              setOpen(task);
            }}
          >
            {name}
          </button>
        ))}
      </nav>
      <div hidden={open !== "cell"}>
        <CellExplanation cell={cell} />
      </div>
      {/* kept while hidden: nothing typed is lost */}
      <div hidden={open !== "titrate"}>
        <TitrateTask {...bench} />
      </div>
    </PaneTheme>
  );
}
