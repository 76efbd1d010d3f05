/** Understand: what each column is taken to be and why, to be put right and agreed to. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Host } from "../../../host/port";
import { planRemembering } from "../../../workbook/planning/remember-columns";
import { carryOut } from "../../../workbook/planning/carry-out";
import { lacks } from "../../../workbook/recognising/mapping";
import type { ColumnGuess } from "../../../workbook/recognising/guess-columns";
import { type RoleId, roleOf } from "../../../workbook/recognising/roles";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import { columnName, nameOf, reasonWords, roleOptions } from "../column-words";
import { type Action, type FoundTable, type LogbookState, shownTable } from "../state";

export interface StepProps {
  readonly host: Host;
  readonly state: LogbookState;
  readonly act: (action: Action) => void;
  readonly inMark: (text: string) => string;
}

interface ColumnProps {
  readonly guess: ColumnGuess;
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
  readonly inMark: (text: string) => string;
}

function Column({ guess, table, act, inMark }: ColumnProps) {
  const mapped = table.mapping.columns.find(({ column }) => column === guess.column);
  const role = mapped?.role ?? "other";
  const isAsGuessed = role === guess.role;
  const { units } = roleOf(role);
  return (
    <li className="column-guess">
      <PickList
        label={columnName(guess)}
        value={role}
        options={roleOptions(guess)}
        onPick={(picked) => {
          act({ do: "column", column: guess.column, role: picked });
        }}
      />
      {units.length > 1 ? (
        <PickList
          label={`Unit of ${columnName(guess)}`}
          value={mapped?.unit ?? units[0] ?? ""}
          options={units.map((unit) => [unit, unit] as const)}
          onPick={(unit) => {
            act({ do: "column", column: guess.column, role, unit });
          }}
        />
      ) : null}
      <p className="soft">
        {isAsGuessed
          ? inMark(reasonWords(guess))
          : `Put right by you; it was taken for: ${nameOf(guess.role)}.`}
      </p>
    </li>
  );
}

/** A figure for all rows that no column holds. */
function Typed({
  role,
  table,
  act,
}: {
  role: RoleId;
  table: FoundTable;
  act: (action: Action) => void;
}) {
  const known = table.mapping.constants.find((each) => each.role === role);
  const value = known?.from.kind === "typed" ? known.from.value : "";
  return (
    <WordField
      label={`${nameOf(role)}, for all rows`}
      value={value}
      onText={(text) => {
        act({ do: "constant", role, value: text });
      }}
    />
  );
}

function Constants({ table, act }: { table: FoundTable; act: (action: Action) => void }) {
  const { constants } = table.mapping;
  const wanted = lacks(table.mapping);
  const typed = constants.flatMap(({ role, from }) => (from.kind === "typed" ? [role] : []));
  const fields = [...new Set<RoleId>([...typed, ...wanted.flatMap(({ roles }) => roles)])].filter(
    (role) => role !== "oilAmount",
  );
  const onSheet = constants.flatMap(({ role, from }) =>
    from.kind === "cell" ? [{ role, from }] : [],
  );
  return (
    <>
      {onSheet.length === 0 ? null : (
        <>
          <h3>For all rows</h3>
          <ul>
            {onSheet.map(({ role, from }) => (
              <li key={role}>
                {nameOf(role)}: beside “{from.label}”
              </li>
            ))}
          </ul>
        </>
      )}
      {wanted.map(({ sentence }) => (
        <Say key={sentence} tone="mind">
          {sentence} Say which column holds it, or type it here.
        </Say>
      ))}
      {fields.map((role) => (
        <Typed key={role} role={role} table={table} act={act} />
      ))}
    </>
  );
}

function Remember({
  host,
  table,
  inMark,
}: {
  host: Host;
  table: FoundTable;
  inMark: (text: string) => string;
}) {
  const planned = usePlanned({
    key: JSON.stringify(table.mapping),
    plan: () => planRemembering(host, table.mapping),
    write: (confirmed, pause) =>
      carryOut(
        host,
        "Remember the logbook's columns",
        () => planRemembering(host, table.mapping),
        confirmed,
        pause,
      ),
  });
  return (
    <PlannedChange
      planned={planned}
      command="Write it on a sheet"
      busyWords="Writing."
      inMark={inMark}
      afterwards={<p>Undo in the spreadsheet takes it back.</p>}
    />
  );
}

export function RecogniseStep({ host, state, act, inMark }: StepProps) {
  const [isRemembering, setRemembering] = useState(false);
  const table = shownTable(state);
  if (!table) {
    return (
      <>
        <Say tone="know">
          No sheet of this workbook looks like a logbook of titrations or batches: headings over
          rows of figures.
        </Say>
        <Button
          size="large"
          className="wide"
          onClick={() => {
            act({ do: "look" });
          }}
        >
          Look again
        </Button>
      </>
    );
  }
  const { guess } = table;
  const rows = `${String(guess.place.firstRow + 1)} to ${String(guess.place.lastRow + 1)}`;
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
        The sheet {guess.sheet}: headings in row {guess.place.headingRow + 1}, rows {rows}.
        {guess.commaIsDecimal ? " Its typed figures have decimal commas." : ""}
      </p>
      <ol className="columns" aria-label="Columns">
        {guess.columns.map((each) => (
          <Column key={each.column} guess={each} table={table} act={act} inMark={inMark} />
        ))}
      </ol>
      <Constants table={table} act={act} />
      <div role="status">
        {table.isRemembered ? (
          <Say tone="know">This was agreed to before and stands on a sheet of the workbook.</Say>
        ) : null}
        {table.isAgreed ? (
          <Say tone="done">Agreed: the columns are used as they stand here.</Say>
        ) : null}
      </div>
      {table.isAgreed ? null : (
        <Button
          size="large"
          appearance="primary"
          className="wide"
          onClick={() => {
            act({ do: "agree" });
          }}
        >
          These are right
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
      {table.isAgreed && isRemembering ? (
        <Remember host={host} table={table} inMark={inMark} />
      ) : null}
    </>
  );
}
