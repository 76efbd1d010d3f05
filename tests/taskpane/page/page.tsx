/** The pane alone, over a workbook in memory: for screenshots and browser tests. */
import { createRoot } from "react-dom/client";
import { keptHere } from "../../../src/taskpane/kept-here";
import { Pane } from "../../../src/taskpane/pane";
import type { TaskProps } from "../../../src/taskpane/task-props";
import { PaneTheme } from "../../../src/taskpane/theme";
import { BatchTask } from "../../../src/taskpane/batch/batch-task";
import { CardTask } from "../../../src/taskpane/card/card-task";
import { FuelTask } from "../../../src/taskpane/fuel/fuel-task";
import { LogbookTask } from "../../../src/taskpane/logbook/logbook-task";
import { TitrateTask } from "../../../src/taskpane/titrate/titrate-task";
import { OverTimeTask } from "../../../src/taskpane/over-time/over-time-task";
import { OfferCheck } from "../../../src/taskpane/check/offer-check";
import { ShareTask } from "../../../src/taskpane/share/share-task";
import { WhatIfTask } from "../../../src/taskpane/what-if/what-if-task";
import type { Book } from "../../../src/sheet/book";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { programOver } from "./checked-program";
import { benchBook, smallVesselBook } from "./bench-book";
import { withFile } from "./file-host";
import { dropsBook } from "./drops-book";
import { oldBook } from "./old-book";

const asked = new URLSearchParams(location.search);
const task = asked.get("task") ?? "titrate";
const Check = () => <OfferCheck host={memory} program={programOver(memory)} />;
const WholePane = (bench: TaskProps) => <Pane cell={undefined} bench={bench} />;
const Task =
  {
    titrate: TitrateTask,
    pane: WholePane,
    batch: BatchTask,
    card: CardTask,
    fuel: FuelTask,
    "what-if": WhatIfTask,
    logbook: LogbookTask,
    share: ShareTask,
    "over-time": OverTimeTask,
    check: Check,
  }[task] ?? TitrateTask;
const books: Readonly<Record<string, () => Book>> = {
  sample: sampleLogbook,
  old: oldBook,
  bench: benchBook,
  "small-vessel": smallVesselBook,
  drops: dropsBook,
};
const memory = openMemory(books[asked.get("book") ?? ""]?.());
const host = asked.has("file") ? withFile(memory, asked.get("file") ?? "") : memory;

/** "today=2026-09-30": the clock stands still at noon of that day. */
const today = asked.get("today");
const clock = today === null ? {} : { clock: () => new Date(`${today}T12:00:00`) };

/** What a test may look at and do: the workbook, and its undo. */
Object.assign(window, { titrebook: { host } });

/** Once something had the focus, something must always have it. */
const noteUse = () => {
  document.documentElement.dataset.used = "yes";
};
addEventListener("focusin", noteUse, { once: true });

const root = document.getElementById("pane");
if (root) {
  createRoot(root).render(
    <PaneTheme>
      <main>
        <h1 className="unseen">{task}</h1>
        <Task
          host={host}
          {...keptHere("test", Date.now).of("")}
          {...clock}
          locale={asked.get("locale") ?? "en-GB"}
        />
      </main>
    </PaneTheme>,
  );
}
