/** Figures for all rows that stand on the sheet, each with the unit and the basis that nobody wrote there. */
import { hasBasis } from "../../../adopt/recognising/basis";
import type { MappedConstant } from "../../../adopt/recognising/mapping";
import { roleOf } from "../../../adopt/recognising/roles";
import { needsUnit } from "../../../adopt/recognising/measures/units-of-roles";
import { Choice } from "../../widgets/choice";
import { nameOf } from "../column-words";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";
import { basisChoices } from "./typed";

interface OneProps {
  readonly constant: MappedConstant;
  readonly act: (action: Action) => void;
}

function One({ constant: { role, unit, basis, from }, act }: OneProps) {
  if (from.kind !== "cell") return null;
  const name = nameOf(role);
  return (
    <li>
      {name}: found beside “{from.label}”
      {needsUnit(role) ? (
        <Choice
          label={`${name}: in`}
          value={unit ?? ""}
          options={roleOf(role).units.map((each) => [each, each] as const)}
          onPick={(picked) => {
            act({ do: "unit", role, unit: picked });
          }}
        />
      ) : null}
      {hasBasis(role) ? (
        <Choice
          label={`${name}: of`}
          value={basis ?? ""}
          options={basisChoices}
          onPick={(picked) => {
            act({ do: "basis", role, basis: picked });
          }}
        />
      ) : null}
    </li>
  );
}

export function OnSheet({ table, act }: Pick<OneProps, "act"> & { readonly table: FoundTable }) {
  const found = table.mapping.constants.filter(({ from }) => from.kind === "cell");
  if (found.length === 0) return null;
  return (
    <>
      <h3>For all rows</h3>
      <ul className="on-sheet">
        {found.map((constant) => (
          <One key={constant.role} constant={constant} act={act} />
        ))}
      </ul>
    </>
  );
}
