/** Check columns: what each column is taken to be and why, to be put right and agreed to. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { openQuestions } from "../../../adopt/recognising/questions";
import { andList } from "../../../sheet/and-list";
import { counted } from "../../../sheet/counted";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { alsoFor } from "../same-headings";
import { shownTable } from "../state";
import { agreeWords } from "../wants-agreeing";
import type { ColumnGuess } from "../../../adopt/recognising/guess-columns";
import { partedColumns } from "../needs-you";
import { Column } from "./column-guess";
import { DateOrderAsked } from "./date-order";
import { Others } from "./others";
import { TablePicture } from "./table-picture";
import { WhichRows } from "./which-rows";
import { OnSheet } from "./on-sheet";
import { Questions } from "./questions";
import { WhichGallon } from "./which-gallon";
import { Learned } from "./learned";
import { LookAgain } from "./look-again";
import { OwnWords } from "./own-words";
import { Remember } from "./remember";
import type { StepProps } from "./step-props";

const agreedWords = (open: number): string =>
  open === 0
    ? "Agreed: the columns are used as they stand here."
    : `${counted(open, "question")} still open: what rests on ${open === 1 ? "it" : "them"} is not checked.`;

/** "6 columns understood, 2 to look at, 5 questions." */
const stateWords = (understood: number, toLook: number, open: number): string =>
  [
    `${counted(understood, "column")} understood`,
    ...(toLook === 0 ? [] : [`${String(toLook)} to look at`]),
    ...(open === 0 ? [] : [`${counted(open, "question")} below`]),
  ].join(", ") + ".";

export function RecogniseStep({ host, state, act, inMark, mark }: StepProps) {
  const [isRemembering, setRemembering] = useState(false);
  const table = shownTable(state);
  if (!table) {
    return (
      <>
        <Say tone="know">
          No sheet of this workbook looks like somebody’s logbook of titrations or batches: headings
          over rows of figures.
        </Say>
        <Others others={state.others} act={act} />
        <LookAgain act={act} />
      </>
    );
  }
  const { guess } = table;
  const also = alsoFor(state.tables, state.at);
  const open = openQuestions(table.mapping, table.cells);
  const { toLook, understood, unused } = partedColumns(table);
  const rows = `${String(guess.place.firstRow + 1)} to ${String(guess.place.lastRow + 1)}`;
  const listOf = (label: string, columns: readonly ColumnGuess[]) => (
    <ol className="columns" aria-label={label}>
      {columns.map((each) => (
        <Column key={each.column} guess={each} table={table} act={act} inMark={inMark} />
      ))}
    </ol>
  );
  const folded = (what: string, columns: readonly ColumnGuess[]) =>
    columns.length === 0 ? null : (
      <details className="more">
        <summary>
          {counted(columns.length, "column")} {what}
        </summary>
        {listOf(`Columns ${what}`, columns)}
      </details>
    );
  return (
    <>
      {state.tables.length > 1 ? (
        <PickList
          label="Logbook"
          value={String(state.at)}
          options={state.tables.map(
            ({ guess: each }, at) =>
              [
                String(at),
                `${each.sheet}, headings in row ${String(each.place.headingRow + 1)}`,
              ] as const,
          )}
          onPick={(at) => {
            act({ do: "show", at: Number(at) });
          }}
        />
      ) : null}
      <p>
        {guess.isAcross === true
          ? `The sheet ${guess.sheet}: headings one below the other, each lot in a column of its own.`
          : `The sheet ${guess.sheet}: headings in row ${String(guess.place.headingRow + 1)}, rows ${rows}.`}
        {guess.commas === "decimal" ? " Its typed figures have decimal commas." : ""}
      </p>
      <p>{stateWords(understood.length, toLook.length, open)}</p>
      <Learned table={table} act={act} />
      <TablePicture table={table} inMark={inMark} />
      <WhichRows key={`${guess.sheet} ${String(guess.place.headingRow)}`} table={table} act={act} />
      <WhichGallon table={table} act={act} />
      {toLook.length === 0 ? null : (
        <>
          <h3>{counted(toLook.length, "column")} to look at</h3>
          {listOf("Columns to look at", toLook)}
        </>
      )}
      {folded("understood", understood)}
      {folded("not used", unused)}
      <DateOrderAsked table={table} act={act} />
      <OwnWords table={table} act={act} mark={mark} />
      <OnSheet table={table} act={act} />
      <Questions table={table} act={act} mark={mark} />
      <div role="status">
        {table.isRemembered ? (
          <Say tone="know">This was agreed to before and stands on a sheet of the workbook.</Say>
        ) : null}
        {table.isAgreed ? (
          <Say tone={open === 0 ? "know" : "check"}>{agreedWords(open)}</Say>
        ) : null}
      </div>
      {table.isAgreed || also.length === 0 ? null : (
        <Say tone="know">Also for {andList(also)}, under the same headings.</Say>
      )}
      {table.isAgreed ? null : (
        <Button
          size="large"
          appearance="primary"
          className="wide"
          onClick={() => {
            act({ do: "agree" });
          }}
        >
          {agreeWords(open)}
        </Button>
      )}
      {table.isAgreed && !table.isRemembered && !isRemembering ? (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setRemembering(true);
          }}
        >
          Remember this in the workbook
        </Button>
      ) : null}
      <Others others={state.others} act={act} />
      {table.isAgreed && isRemembering ? (
        <Remember host={host} table={table} inMark={inMark} />
      ) : null}
    </>
  );
}
