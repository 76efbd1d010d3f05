/** Figures that hold for all rows: those that stand beside the logbook, and those still wanted. */
import { lacks } from "../../../workbook/recognising/mapping";
import type { RoleId } from "../../../workbook/recognising/roles";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import { nameOf } from "../column-words";
import type { Action, FoundTable } from "../state";

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

export function Constants({ table, act }: { table: FoundTable; act: (action: Action) => void }) {
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
