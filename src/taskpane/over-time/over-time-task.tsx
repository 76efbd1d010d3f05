/**
 * Over time: what the workbook's own tables say of hand, solvent, titrant, a kept oil, batches and fuel, in the
 * order of time. A sentence each first, then a chart; on a sheet when asked.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./over-time.css";
import { Button } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { Found } from "../../workbook/over-time/series";
import { planOverTime, writeOverTime } from "../../workbook/planning/plan-over-time";
import { keepRead, useRead } from "../lots/use-read";
import { PlannedSheet } from "../planned/planned-sheet";
import { machineClock, type TaskProps } from "../task-props";
import { localDay, sheetDay } from "../widgets/day";
import { PickList } from "../widgets/pick-list";
import { Say } from "../widgets/say";
import { decimalMarkOf, withMark } from "../widgets/typed-number";
import { AgainstPlotView } from "./against-plot";
import { chartsOf, type Charts, type Chosen, drawable, nothingChosen } from "./charts";
import { looking, readRecord } from "./read-record";
import { SeriesPlotView } from "./series-plot";
import { SeriesTable } from "./series-table";

type InMark = (text: string) => string;

function Part({ found, inMark }: { found: Found; inMark: InMark }) {
  if (found.kind === "too few") {
    return (
      <>
        <p>{inMark(found.sentence)}</p>
        <LeftOut found={found} />
      </>
    );
  }
  return (
    <>
      <Say tone={found.isOdd ? "check" : "know"}>{inMark(found.sentence)}</Say>
      <SeriesPlotView series={found} inMark={inMark} />
      {found.points.some(({ isOut }) => isOut) ? (
        <p className="legend soft">Large diamonds: look at these.</p>
      ) : null}
      {found.against === undefined ? null : (
        <AgainstPlotView series={found} against={found.against} inMark={inMark} />
      )}
      <LeftOut found={found} />
      <SeriesTable series={found} inMark={inMark} />
    </>
  );
}

function LeftOut({ found }: { found: Found }) {
  return found.leftOut.length === 0 ? null : <p className="soft">{found.leftOut.join(" ")}</p>;
}

interface ChooseProps {
  readonly label: string;
  readonly words: readonly string[];
  readonly value: string;
  readonly onPick: (word: string) => void;
}

/** Nothing to choose between one and none. */
function Choose({ label, words, value, onPick }: ChooseProps) {
  if (words.length < 2) return null;
  const options = words.map((word) => [word, word] as const);
  return <PickList label={label} value={value} options={options} onPick={onPick} />;
}

interface DrawnProps {
  readonly charts: Charts;
  readonly inMark: InMark;
  readonly onChoose: (chosen: Chosen) => void;
}

function Drawn({ charts, inMark, onChoose }: DrawnProps) {
  const { scatter, blanks, strength, oil, made, charge, fuels, titrants, oils, chosen } = charts;
  return (
    <>
      <section>
        <h3>{scatter.title}</h3>
        <Part found={scatter} inMark={inMark} />
      </section>
      <section>
        <h3>{blanks.title}</h3>
        <Part found={blanks} inMark={inMark} />
      </section>
      <section>
        <h3>{strength.title}</h3>
        <Choose
          label="Bottle"
          words={titrants}
          value={chosen.titrant}
          onPick={(titrant) => {
            onChoose({ ...chosen, titrant });
          }}
        />
        <Part found={strength} inMark={inMark} />
      </section>
      <section>
        <h3>{oil.title}</h3>
        <Choose
          label="Kept oil"
          words={oils}
          value={chosen.oil}
          onPick={(lot) => {
            onChoose({ ...chosen, oil: lot });
          }}
        />
        <Part found={oil} inMark={inMark} />
      </section>
      {[made, charge, ...fuels].map((found) => (
        <section key={found.title}>
          <h3>{found.title}</h3>
          <Part found={found} inMark={inMark} />
        </section>
      ))}
    </>
  );
}

export type OverTimeTaskProps = Pick<TaskProps, "host" | "locale" | "clock">;

export function OverTimeTask({ host, locale, clock = machineClock }: OverTimeTaskProps) {
  const { found, again } = useRead(host, readRecord, looking, keepRead);
  const [chosen, setChosen] = useState<Chosen>(nothingChosen);
  const today = sheetDay(localDay(clock()));
  const mark = decimalMarkOf(locale);
  const inMark: InMark = (text) => withMark(text, mark);
  const charts = useMemo(
    () => (found.state === "read" ? chartsOf(found, chosen, today) : undefined),
    [found, chosen, today],
  );
  const series = charts === undefined ? [] : drawable(charts);
  return (
    <div className="task">
      <h2>Over time</h2>
      <p>How hand, solvent, titrant, batches and fuel change, by the tables of this workbook.</p>
      {found.state === "looking" ? <p role="status">Looking at the workbook.</p> : null}
      {found.state === "refused" ? (
        <>
          <Say tone="check">{found.sentence}</Say>
          <Button size="large" className="wide" onClick={again}>
            Look again
          </Button>
        </>
      ) : null}
      {charts ? (
        <>
          <Drawn charts={charts} inMark={inMark} onChoose={setChosen} />
          {series.length === 0 ? null : (
            <PlannedSheet
              words="Put these figures on a sheet"
              closeWords="Close"
              host={host}
              asked={{ series, today }}
              plan={planOverTime}
              write={writeOverTime}
              inMark={inMark}
              undoTakes="takes all of it back"
            />
          )}
        </>
      ) : null}
    </div>
  );
}
