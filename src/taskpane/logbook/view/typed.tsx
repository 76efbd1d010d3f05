/** A figure for all rows: typed with its unit and, where it is grams of lye, what they are of. */
import type { Basis } from "../../../adopt/recognising/basis";
import { hasBasis } from "../../../adopt/recognising/basis";
import { Choice } from "../../widgets/choice";
import { judge } from "../../widgets/judged";
import { NumberField } from "../../widgets/number-field";
import type { DecimalMark } from "../../widgets/typed-number";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";
import { askedFigures, factOf, type FigureId, typedIn } from "../typed-figures";

export const basisChoices: readonly (readonly [Basis, string])[] = [
  ["pure", "Pure lye"],
  ["as weighed", "As weighed"],
];

interface TypedProps {
  readonly figure: FigureId;
  readonly table: FoundTable;
  readonly mark: DecimalMark;
  readonly act: (action: Action) => void;
}

export function Typed({ figure, table, mark, act }: TypedProps) {
  const { value = "", unit, basis } = typedIn(table.mapping, figure);
  const { label, units } = askedFigures[figure];
  const fact = factOf(figure, unit);
  const picked = units.find((each) => each.unit === unit);
  return (
    <section aria-label={label}>
      <NumberField
        fact={{ ...fact, label: `${label}, for all rows` }}
        text={value}
        judged={judge(value, fact, mark)}
        onText={(text) => {
          act({ do: "typed", figure, value: text });
        }}
      />
      {units.length > 1 && value.trim() !== "" ? (
        <Choice
          label={`${label}: in`}
          value={unit ?? ""}
          options={units.map((each) => [each.unit, each.words] as const)}
          onPick={(chosen) => {
            act({ do: "typed", figure, unit: chosen });
          }}
        />
      ) : null}
      {picked && hasBasis(picked.role) ? (
        <Choice
          label={`${label}: of`}
          value={basis ?? ""}
          options={basisChoices}
          onPick={(chosen) => {
            act({ do: "typed", figure, basis: chosen });
          }}
        />
      ) : null}
    </section>
  );
}
