/** One column: what it is taken to be and why, and what else it may be said to be. */
import type { ColumnGuess } from "../../../adopt/recognising/guess-columns";
import { hasBasis } from "../../../adopt/recognising/basis";
import { isKnown } from "../../../adopt/recognising/mapping";
import { roleOf } from "../../../adopt/recognising/roles";
import { Choice } from "../../widgets/choice";
import { PickList } from "../../widgets/pick-list";
import { columnName, nameOf, reasonWords, roleOptions } from "../column-words";
import { stillToSay } from "../needs-you";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";
import { basisChoices } from "./typed";

interface ColumnProps {
  readonly guess: ColumnGuess;
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
  readonly inMark: (text: string) => string;
}

export function Column({ guess, table, act, inMark }: ColumnProps) {
  const mapped = table.mapping.columns.find(({ column }) => column === guess.column);
  const role = mapped?.role ?? "other";
  const name = columnName(guess, table.guess.isAcross);
  const isAsGuessed = role === guess.role;
  const { units } = roleOf(role);
  const lacks = stillToSay(
    { ...guess, role, unit: mapped?.unit, basis: mapped?.basis },
    table.guess.columns,
  );
  const isSaidByRow = role === "oilAmount" && isKnown(table.mapping, "amountUnit");
  return (
    <li className="column-guess">
      <PickList
        label={name}
        value={role}
        options={roleOptions(guess)}
        hint={
          isAsGuessed
            ? inMark(reasonWords(guess, lacks))
            : `Put right by you; it was taken for: ${nameOf(guess.role)}.`
        }
        onPick={(picked) => {
          act({ do: "column", column: guess.column, role: picked });
        }}
      />
      {units.length > 1 ? (
        <PickList
          label={`Unit of ${name}`}
          value={mapped?.unit ?? ""}
          options={[
            ...(mapped?.unit === undefined
              ? [["", isSaidByRow ? "As each row says" : "Which unit?"] as const]
              : []),
            ...units.map((unit) => [unit, unit] as const),
          ]}
          onPick={(unit) => {
            if (unit !== "") act({ do: "column", column: guess.column, role, unit });
          }}
        />
      ) : null}
      {hasBasis(role) ? (
        <Choice
          label={`${name}: of`}
          value={mapped?.basis ?? ""}
          options={basisChoices}
          onPick={(basis) => {
            act({ do: "basis", role, basis });
          }}
        />
      ) : null}
    </li>
  );
}
