/**
 * Figures that hold for all rows and stand in no column: each question right above what answers it. They stand in
 * one order, so that none moves away while somebody is at it.
 */
import type { Base } from "../../../core/reference/bases";
import { asked, lacks } from "../../../adopt/recognising/lacks";
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

/** From the burette to the vessel. */
const inOrder: readonly RoleId[] = [
  "molarity",
  "strength",
  "titrantBase",
  "blank",
  "sampleMass",
  "sampleVolume",
  "base",
  "baseCharge",
  "assay",
];

/** What is typed for all rows, or wanted: the first role of each figure. */
function typedOrWanted(
  { constants }: LogbookMapping,
  wanted: ReturnType<typeof lacks>,
): readonly RoleId[] {
  const typed = constants.flatMap(({ role, from }) => (from.kind === "typed" ? [role] : []));
  const toType = wanted.filter(({ isChoice }) => isChoice !== true).flatMap(({ roles }) => roles);
  const all = [...new Set([...typed, ...toType])].filter((role) => role !== "density");
  const place = (role: RoleId): number => inOrder.indexOf(role);
  const sorted = [...all].sort((one, other) => place(one) - place(other));
  const seen = new Set<string>();
  return sorted.filter((role) => {
    const figure = figureOf(role) ?? role;
    return seen.has(figure) ? false : Boolean(seen.add(figure));
  });
}

interface QuestionsProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
  readonly mark: DecimalMark;
}

export function Questions({ table, act, mark }: QuestionsProps) {
  const { mapping } = table;
  const wanted = lacks(mapping, table.cells);
  const roles = typedOrWanted(mapping, wanted);
  const isFree = !isKnown(mapping, "density") && countsLitres(mapping);
  const hasDensity = mapping.constants.some(
    ({ role, from }) => role === "density" && from.kind === "typed",
  );
  // of the rest the label says all
  const sentenceOf = (role: RoleId): string | undefined =>
    role === "blank" || role === "sampleMass" ? asked[role] : undefined;
  return (
    <>
      {wanted
        .filter(({ isChoice, isOfNations }) => isChoice === true && isOfNations !== true)
        .map(({ sentence }) => (
          <Say key={sentence} tone="check">
            {sentence}
          </Say>
        ))}
      {roles.length === 0 ? null : (
        <p className="soft">No column says these. Type each once, or pick its column above.</p>
      )}
      {roles.map((role) => {
        const figure = figureOf(role);
        const sentence = sentenceOf(role);
        return (
          <div key={figure ?? role} className="asked-figure">
            {sentence === undefined ? null : <p>{sentence}</p>}
            {figure === undefined ? (
              <Word role={role} table={table} act={act} />
            ) : (
              <Typed figure={figure} table={table} mark={mark} act={act} />
            )}
          </div>
        );
      })}
      {isFree || hasDensity ? (
        <div className="asked-figure">
          <Word role="density" table={table} act={act} />
          <p className="soft">
            Left empty, a litre of oil weighs 0.915 kg, or what books say of its kind.
          </p>
        </div>
      ) : null}
    </>
  );
}
