/** Add columns: which, spelled how, the exact cells, and only then the workbook. */
import { Button, Checkbox } from "@fluentui/react-components";
import { useMemo } from "react";
import type { Host } from "../../../sheet/port";
import { type Offer, offers } from "../../../adopt/added-columns/columns-to-add";
import { planColumns } from "../../../workbook/planning/logbook/add-columns";
import { withoutResults } from "../../../workbook/planning/logbook/no-results";
import { carryOut } from "../../../workbook/planning/carry-out";
import type { RoleId } from "../../../adopt/recognising/roles";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { Choice } from "../../widgets/choice";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import { shownTable } from "../state";
import type { FoundTable } from "../found-table";
import { wantsAgreeing } from "../wants-agreeing";
import type { StepProps } from "./step-props";

interface ChangeProps {
  readonly host: Host;
  readonly table: FoundTable;
  readonly chosen: readonly Offer[];
  readonly inMark: (text: string) => string;
  readonly onDone: () => void;
}

/** Mounted anew for each choice: another choice is another change. */
function Change({ host, table, chosen, inMark, onDone }: ChangeProps) {
  const plan = () => planColumns(host, table.mapping, chosen);
  const planned = usePlanned({
    key: "",
    plan,
    write: async (confirmed, pause) =>
      withoutResults(
        host,
        await carryOut(host, "Add columns to the logbook", plan, confirmed, pause),
      ),
  });
  return (
    <PlannedChange
      planned={planned}
      command={
        chosen.length === 1 ? "Add this column" : `Add these ${String(chosen.length)} columns`
      }
      busyWords="Writing the columns."
      inMark={inMark}
      undoTakes="takes all of them back"
      afterwards={
        <>
          <Button size="large" className="wide" autoFocus onClick={onDone}>
            Look at the logbook again
          </Button>
        </>
      }
    />
  );
}

/** What the uncertainty needs and a logbook seldom says. */
const stepRoles: readonly (readonly [RoleId, string])[] = [
  ["titreStep", "Smallest difference read, mL"],
  ["massStep", "Smallest difference weighed, g"],
];

export function AddStep({ host, state, act, inMark }: StepProps) {
  const table = shownTable(state);
  const all = useMemo(
    () => (table ? offers(table.mapping, table.cells, state.spelling) : []),
    [table, state.spelling],
  );
  if (!table?.isAgreed)
    return (
      <Say tone="check">In Check columns: {wantsAgreeing(state) ?? "no logbook was found."}</Say>
    );
  if (table.guess.isAcross === true)
    return (
      <Say tone="know">
        On the sheet {table.guess.sheet} each lot stands in a column of its own: no columns are
        added there. Re-check reads it as it is.
      </Say>
    );
  const chosen = all.filter(
    ({ id, formula }) => formula !== undefined && state.picked.includes(id),
  );
  const key = JSON.stringify([state.spelling, chosen.map(({ id }) => id), table.mapping]);
  return (
    <>
      <p>
        Each goes to the right end of the logbook, with one formula for all its rows. What stands
        there stays.
      </p>
      <Choice
        label="Written as"
        value={state.spelling}
        options={[
          ["functions", "TITRE functions"],
          ["plain", "Plain formulas"],
        ]}
        onPick={(spelling) => {
          act({ do: "spell", spelling });
        }}
      />
      {state.spelling === "plain" ? (
        <Say tone="know">
          Plain formulas work in any spreadsheet program and check nothing: a blank above its titre
          gives a negative figure, and no limit of acid holds a dose back.
        </Say>
      ) : null}
      <fieldset className="offers">
        <legend>Columns</legend>
        {all.map(({ id, heading, formula, lacks, isThere }) => (
          <div key={id} className="offer">
            <Checkbox
              size="large"
              label={heading}
              checked={formula !== undefined && state.picked.includes(id)}
              disabled={formula === undefined}
              onChange={(_, { checked }) => {
                act({ do: "pick", id, isPicked: checked === true });
              }}
            />
            {formula === undefined ? <p className="soft">Not yet. Still needed: {lacks}.</p> : null}
            {formula !== undefined && isThere ? (
              <p className="soft">You have one already; this makes a second.</p>
            ) : null}
          </div>
        ))}
      </fieldset>
      {state.spelling === "functions" ? (
        <details className="more">
          <summary>For the uncertainty</summary>
          {stepRoles.map(([role, label]) => {
            const known = table.mapping.constants.find((each) => each.role === role)?.from;
            return (
              <WordField
                key={role}
                label={label}
                value={known?.kind === "typed" ? known.value : ""}
                onText={(text) => {
                  act({ do: "step", role, value: text });
                }}
              />
            );
          })}
        </details>
      ) : null}
      {chosen.length === 0 ? null : (
        <Change
          key={key}
          host={host}
          table={table}
          chosen={chosen}
          inMark={inMark}
          onDone={() => {
            act({ do: "look" });
          }}
        />
      )}
    </>
  );
}
