/** The pane inside the spreadsheet program: the only part of it that knows which program that is. */
import "./pane.css";
import { useEffect, useMemo, useState } from "react";
import { createRoot } from "react-dom/client";
import { excelHost } from "../host/excel";
import { ExcelProgram } from "../host/excel/checked-program";
import { paneShowing } from "../host/excel/showing";
import { surroundings } from "../host/excel/surroundings";
import type { Host } from "../sheet/port";
import { resting } from "../sheet/port/resting";
import { OfferCheck } from "./check/offer-check";
import { hearRefusals } from "./check/refusals";
import { followSelection } from "./explain/follow-selection";
import type { ShownCell } from "./explain/shown-cell";
import { HealingNotice } from "./healing/healing-notice";
import { keptHere } from "./kept-here";
import { Pane } from "./pane";
import { useWhose } from "./unsaved/use-whose";

/** Milliseconds the program's runtime may take before the pane says that it does not answer. */
const patience = 8000;

/** From the first moment on: what is refused before anybody asks counts too. */
const program = new ExcelProgram(hearRefusals(), navigator.userAgent);

function Live({ host }: { host: Host }) {
  const [cell, setCell] = useState<ShownCell | undefined>();
  useEffect(() => followSelection(host, setCell), [host]);
  const { kept, locale, named } = useMemo(() => {
    const around = surroundings();
    const all = keptHere(around.partition, Date.now);
    return { kept: all, locale: around.locale, named: around.workbook };
  }, []);
  const { workbook, question } = useWhose(kept, named);
  const bench = useMemo(
    () => ({ host, ...kept.of(workbook), locale }),
    [host, kept, workbook, locale],
  );
  return (
    <Pane
      cell={cell}
      bench={bench}
      notice={
        <>
          {question}
          <HealingNotice host={host} />
        </>
      }
      below={<OfferCheck host={host} program={program} />}
    />
  );
}

const root = createRoot(document.getElementById("pane") ?? document.body);
root.render(<p>Waiting for the spreadsheet program.</p>);

const answering = await excelHost(patience);
const host = answering && resting(answering, paneShowing(document));
root.render(
  host ? (
    <Live host={host} />
  ) : (
    <p>
      The spreadsheet program does not answer. This page is a pane inside it: close the pane and
      open it again from the Home tab. To try Titrebook without that program, run{" "}
      <code>npm start</code>.
    </p>
  ),
);
