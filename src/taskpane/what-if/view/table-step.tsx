/** Table: every dose before anything is written, as figures and as lines. */
import { counted } from "../../../sheet/counted";
import { isProblem } from "../../../core/problem/problem";
import { say } from "../../../core/problem/wording";
import { placesFor } from "../../../workbook/what-if/format";
import type { WhatIfQuestion } from "../../../workbook/what-if/question";
import { usedAllTheSameWords } from "../../../workbook/record/worth";
import { unitNames } from "../../fields/units";
import { capital } from "../../widgets/shown-number";
import { Say } from "../../widgets/say";
import type { StepId } from "../what-if";
import { linesOf, plotWords } from "../plot";
import { previewOf } from "../preview";
import { useDoses } from "../use-doses";
import { useDesk, useMark, Wants } from "./desk";
import { BackToBatch } from "./back-to-batch";
import { DosePlotView } from "./dose-plot";
import { DoseTable } from "./dose-table";

function Doses({ question }: { question: WhatIfQuestion }) {
  const { view } = useDesk();
  const inMark = useMark();
  const doses = useDoses(question);
  if (isProblem(doses)) return <Say tone="check">{inMark(capital(say(doses)))}</Say>;
  const unit = unitNames[view.draft.picked.unit];
  const preview = previewOf(question, doses);
  const lines = linesOf(question, doses);
  const figures = doses.rows.flatMap((row) =>
    row.flatMap((dose) => (isProblem(dose) ? [] : [dose])),
  );
  const drawn = question.columns.length - preview.refusals.length;
  const inDoubt = [...new Set(question.columns.flatMap(({ acid }) => acid.usedAllTheSame ?? []))];
  return (
    <>
      {inDoubt.map((why) => (
        <Say key={why} tone="check">
          {inMark(usedAllTheSameWords(why))}
        </Say>
      ))}
      <DoseTable preview={preview} unit={unit} />
      {preview.left === "" ? null : <p className="soft">{preview.left}</p>}
      {preview.refusals.slice(0, 3).map((sentence) => (
        <Say key={sentence} tone="check">
          {inMark(sentence)}
        </Say>
      ))}
      {preview.refusals.length > 3 ? (
        <p>{`${counted(preview.refusals.length - 3, "more column")} above the limit as well.`}</p>
      ) : null}
      {lines.length === 0 ? null : (
        <>
          <DosePlotView
            lines={lines}
            unit={unit}
            words={plotWords(lines, unit, placesFor(figures))}
          />
          {lines.length < drawn ? (
            <p className="soft">{`${String(lines.length)} of ${String(drawn)} columns are drawn, the first and the last among them.`}</p>
          ) : null}
        </>
      )}
    </>
  );
}

export function TableStep({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const { question, wants } = view.working;
  return question ? (
    <>
      <Doses question={question} />
      <BackToBatch question={question} />
    </>
  ) : (
    <Wants title="For the table" wants={wants} onGo={onGo} />
  );
}
