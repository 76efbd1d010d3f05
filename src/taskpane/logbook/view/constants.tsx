/** Figures that hold for all rows: those that stand beside the logbook, and those still wanted. */
import type { Base } from "../../../core/reference/bases";
import { lacks } from "../../../adopt/recognising/lacks";
import { isKnown, type LogbookMapping } from "../../../adopt/recognising/mapping";
import { type RoleId, roleOf } from "../../../adopt/recognising/roles";
import { baseChoices } from "../../fields/bases";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import type { DecimalMark } from "../../widgets/typed-number";
import { WordField } from "../../widgets/word-field";
import { nameOf } from "../column-words";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";
import { figureOf } from "../typed-figures";
import { OnSheet } from "./on-sheet";
import { Typed } from "./typed";

interface WordProps {
  readonly role: RoleId;
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
}

const notSaid: readonly ["", string] = ["", "Not said"];

/** A word or a plain figure for all rows that no column holds. */
function Word({ role, table, act }: WordProps) {
  const known = table.mapping.constants.find((each) => each.role === role);
  const value = known?.from.kind === "typed" ? known.from.value : "";
  const onText = (text: string): void => {
    act({ do: "constant", role, value: text });
  };
  const { units } = roleOf(role);
  const name = nameOf(role);
  const unit = units.length === 1 && !name.includes(",") ? `, ${units[0] ?? ""}` : "";
  const label = `${name}${unit}, for all rows`;
  return role === "base" || role === "titrantBase" ? (
    <PickList
      label={label}
      value={value as Base["name"] | ""}
      options={[notSaid, ...baseChoices]}
      onPick={onText}
    />
  ) : (
    <WordField label={label} value={value} onText={onText} />
  );
}

/** Oil that is measured and not weighed: its mass hangs on a density. */
const countsLitres = (mapping: LogbookMapping): boolean =>
  isKnown(mapping, "sampleVolume") ||
  mapping.columns.some(
    ({ role, unit }) => role === "oilAmount" && !["kg", "g", "lb"].includes(unit ?? ""),
  );

interface ConstantsProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
  readonly mark: DecimalMark;
}

export function Constants({ table, act, mark }: ConstantsProps) {
  const { constants } = table.mapping;
  const wanted = lacks(table.mapping, table.cells);
  const typed = constants.flatMap(({ role, from }) => (from.kind === "typed" ? [role] : []));
  const toType = wanted.filter(({ isChoice }) => isChoice !== true).flatMap(({ roles }) => roles);
  const isFree = !isKnown(table.mapping, "density") && countsLitres(table.mapping);
  const all = [
    ...new Set<RoleId>([...typed, ...toType, ...(isFree ? (["density"] as const) : [])]),
  ];
  const figures = [...new Set(all.map(figureOf))].filter((each) => each !== undefined);
  const words = all.filter((role) => figureOf(role) === undefined);
  return (
    <>
      <OnSheet table={table} act={act} />
      {wanted.map(({ sentence, isChoice }) => (
        <Say key={sentence} tone="check">
          {sentence} {isChoice ? null : "Say which column holds it, or type it here."}
        </Say>
      ))}
      {isFree ? (
        <Say tone="know">
          Where no density is typed, a litre of oil is taken to weigh 0.915 kg, or what books say of
          its kind.
        </Say>
      ) : null}
      {figures.map((figure) => (
        <Typed key={figure} figure={figure} table={table} mark={mark} act={act} />
      ))}
      {words.map((role) => (
        <Word key={role} role={role} table={table} act={act} />
      ))}
    </>
  );
}
