/** Below a cell that runs CHECKS: run them again. */
import "../widgets/widgets.css";
import "./healing.css";
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Host } from "../../sheet/port";
import { callsChecks, writeAgain } from "../../workbook/healing/checks-again";
import { healingFault } from "../../workbook/healing/wording";
import { readCellName } from "../../xlsx/cell-address";
import type { ShownCell } from "../explain/shown-cell";

export function RunChecksAgain({ host, cell }: { host: Host; cell: ShownCell | undefined }) {
  const [says, setSays] = useState("");
  if (!cell) return null;
  const { address, formula } = cell.spilledFrom ?? cell;
  const place = callsChecks(formula) ? readCellName(address) : undefined;
  if (!place) return null;

  const run = async (): Promise<void> => {
    setSays("");
    const block = { sheet: cell.sheet, ...place, rows: 1, columns: 1 };
    const stopped = await writeAgain(host, block, formula);
    setSays(stopped ? healingFault(stopped) : "The checks were run again.");
  };

  return (
    <section className="healing" aria-label="Checks">
      <div className="healing-acts">
        <Button size="large" onClick={() => void run()}>
          Run the checks again
        </Button>
      </div>
      <p role="status">{says}</p>
    </section>
  );
}
