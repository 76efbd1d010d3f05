/** The notice and the button for CHECKS alone, over a program that answers once it was written to twice. */
import { createRoot } from "react-dom/client";
import { MemoryHost } from "../../host/memory";
import { emptySheet } from "../../host/memory/book";
import { HealingNotice } from "../../../src/taskpane/healing/healing-notice";
import { RunChecksAgain } from "../../../src/taskpane/healing/run-checks-again";
import { PaneTheme } from "../../../src/taskpane/theme";

const answersAfter = Number(new URLSearchParams(location.search).get("after") ?? 2);
const sheet = emptySheet("Titrations");
for (const place of ["3,20", "4,20"]) {
  sheet.cells[place] = { value: "", formula: "=TITRE.DOSE(A1:C1)", format: "0" };
}
let writes = 0;
const host = new MemoryHost(
  { result: () => (writes < answersAfter ? { error: "#NAME?" } : 909) },
  { sheets: [sheet], tables: [], definedNames: {}, isReadOnly: false, isProtected: false },
);
const write = host.write.bind(host);
host.write = (label, steps) => {
  writes += 1;
  Object.assign(window, { writes });
  return write(label, steps);
};
/** The functions answer by themselves, and the program tells of it. */
const answer = () => {
  writes = answersAfter;
  host.change(() => undefined);
};
Object.assign(window, { answer });

const checks = {
  sheet: "Titrations",
  address: "U4",
  formula: "=TITRE.CHECKS()",
  shown: "check",
  note: "",
  lookup: () => undefined,
};
const delays = [100];

const root = document.getElementById("pane");
if (root) {
  createRoot(root).render(
    <PaneTheme>
      <main>
        <h1>Waiting cells</h1>
        <HealingNotice host={host} delays={delays} />
        <RunChecksAgain host={host} cell={checks} />
      </main>
    </PaneTheme>,
  );
}
