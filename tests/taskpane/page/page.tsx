/** The pane alone, over a workbook in memory: for screenshots and browser tests. */
import { createRoot } from "react-dom/client";
import { browserDrafts } from "../../../src/taskpane/drafts/browser";
import { PaneTheme } from "../../../src/taskpane/theme";
import { TitrateTask } from "../../../src/taskpane/titrate/titrate-task";
import { openMemory } from "../../host/memory-host";

const asked = new URLSearchParams(location.search);
const host = openMemory();

/** What a test may look at and do: the workbook, and its undo. */
Object.assign(window, { titrebook: { host } });

const root = document.getElementById("pane");
if (root) {
  createRoot(root).render(
    <PaneTheme>
      <main>
        <h1 className="unseen">Titrate</h1>
        <TitrateTask
          host={host}
          drafts={browserDrafts("test", Date.now)}
          locale={asked.get("locale") ?? "en-GB"}
        />
      </main>
    </PaneTheme>,
  );
}
