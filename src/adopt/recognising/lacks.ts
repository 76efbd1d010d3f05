/** What the arithmetic still needs to be told, in words. */
import { isBare } from "../../core/quantity/measures";
import { andList } from "../../sheet/and-list";
import { columnLetters } from "../../sheet/cell-name";
import { amountWord } from "./answers";
import { assayCancels, basisOf, mayBeOneLye } from "./basis";
import { columnOf, isKnown, type LogbookMapping, type MappedColumn } from "./mapping";
import { withoutLeft } from "./by-hand/left-out";
import { type RoleId, roleOf } from "./roles";
import { heldCell, type SheetCells } from "./sheet-cells";
import { figureAndWords } from "./typed-number";
import { measured } from "./measures/measured";
import { needsUnit } from "./measures/units-of-roles";
import { baseWritten, soleBase } from "./written-units";

export interface Lack {
  /** Any one of these would do. */
  readonly roles: readonly RoleId[];
  readonly sentence: string;
  /** What is asked is a choice beside the column or the figure itself, not a figure to type. */
  readonly isChoice?: boolean;
  /** Whose gallons they are: one choice for the whole table. */
  readonly isOfNations?: boolean;
}

/** No unit is named, or one that is two: a US gallon and an imperial one. */
const isUnsaid = (role: RoleId, unit: string | undefined): boolean =>
  isBare(unit) || (unit === undefined && needsUnit(role));

const bareWords: Readonly<Record<string, string>> = { gal: "gallon", "fl oz": "fluid ounce" };

/** Of an amount whose rows say it, or of a titrant in a table that titrates nothing, none is needed. */
function unitLacks(
  { columns, constants }: LogbookMapping,
  saysUnits: boolean,
  titrates: boolean,
): Lack[] {
  const saysItself = (role: RoleId): boolean =>
    (role === "oilAmount" && saysUnits) || (role === "strength" && !titrates);
  const unsaid = columns.filter(({ role, unit }) => isUnsaid(role, unit) && !saysItself(role));
  const named = ({ column, heading }: MappedColumn): string =>
    `${columnLetters(column)}: ${heading}`;
  const bare = unsaid.filter(({ unit }) => isBare(unit));
  const [{ unit: measure = "" } = { unit: "" }] = bare;
  const which = `${bareWords[measure] ?? measure}${bare.length === 1 ? "" : "s"}`;
  // one nation's for all of them: asked once
  const ofGallons: Lack[] =
    bare.length === 0
      ? []
      : [
          {
            roles: bare.map(({ role }) => role),
            sentence: `Which ${which} ${bare.length === 1 ? "is" : "are"} ${andList(bare.map(named))} in: US or imperial?`,
            isChoice: true,
            isOfNations: true,
          },
        ];
  const ofColumns = unsaid
    .filter(({ unit }) => !isBare(unit))
    .map((each): Lack => ({
      roles: [each.role],
      sentence: `In which unit is ${named(each)}?`,
      isChoice: true,
    }));
  const ofFigures = constants
    .filter(({ role, unit }) => isUnsaid(role, unit) && !saysItself(role))
    .map(({ role }): Lack => ({
      roles: [role],
      sentence: `In which unit is the ${roleOf(role).words.replace(/,.*/, "")}?`,
      isChoice: true,
    }));
  return [...ofGallons, ...ofColumns, ...ofFigures];
}

/** By what is said for the whole logbook. */
function needsNoAssay(mapping: LogbookMapping): boolean {
  const word = (role: RoleId): string => {
    const from = mapping.constants.find((each) => each.role === role)?.from;
    return from?.kind === "typed" ? from.value : "";
  };
  const named = soleBase(mapping);
  const titrant = baseWritten(word("titrantBase")) ?? named.titrant;
  const catalyst = baseWritten(word("base")) ?? named.catalyst;
  return assayCancels(
    mayBeOneLye(titrant, catalyst),
    basisOf(mapping, "strength"),
    basisOf(mapping, "baseCharge"),
  );
}

/** Do the rows, or a word of the heading that is asked about, say what an amount is counted in? */
function saysUnits(mapping: LogbookMapping, cells: SheetCells | undefined): boolean {
  const column = columnOf(mapping, "oilAmount");
  if (isKnown(mapping, "amountUnit") || amountWord(mapping) !== "") return true;
  if (!column || !cells) return false;
  const { firstRow, lastRow } = mapping.place;
  const words = Array.from({ length: lastRow - firstRow + 1 }, (_, at) => {
    const { value } = heldCell(cells, firstRow + at, column.column);
    if (typeof value === "string") return figureAndWords(value)?.words;
    return "";
  }).filter((each) => each !== undefined);
  return words.length > 0 && words.every((each) => each !== "");
}

/** What is asked of a figure, or a word, for all rows. */
export const asked: Readonly<Partial<Record<RoleId, string>>> = {
  strength: "How strong was the titrant?",
  titrantBase: "Which base was in the burette?",
  blank: "What did the blank take, in mL? It is 0 where the solvent was neutralised.",
  sampleMass: "How much oil was titrated: g or mL?",
  base: "Which base is the catalyst?",
  baseCharge: "What is the base charge?",
  assay: "What is the assay of the lye?",
};

/** @param cells where the rows' own words stand, once they are known */
export function lacks(given: LogbookMapping, all?: SheetCells): Lack[] {
  const mapping = measured(given);
  const cells = all && withoutLeft(mapping, all);
  const named = soleBase(mapping);
  // "ml KOH" says what the burette held, "KOH g" what was dosed.
  const isNamed = (role: RoleId): boolean =>
    (role === "titrantBase" && named.titrant !== undefined) ||
    (role === "base" && named.catalyst !== undefined);
  const knows = (...roles: RoleId[]): boolean =>
    roles.some((role) => isKnown(mapping, role) || isNamed(role));
  const titrates = knows("titre", "meanTitre", "correctedTitre");
  const found: Lack[] = unitLacks(mapping, saysUnits(mapping, cells), titrates);
  const lacking = (roles: readonly RoleId[], sentence: string, isChoice = false): void => {
    found.push({ roles, sentence, ...(isChoice ? { isChoice } : {}) });
  };
  const lacksFigure = (role: RoleId, ...orElse: RoleId[]): void => {
    lacking([role, ...orElse], asked[role] ?? "");
  };
  const basisLacks = (role: RoleId, what: string): void => {
    if (knows(role) && basisOf(mapping, role) === undefined)
      lacking([role], `Is ${what} of pure lye, or as weighed?`, true);
  };
  if (titrates) {
    if (!knows("molarity", "strength")) lacksFigure("strength");
    if (!knows("molarity")) {
      if (!knows("titrantBase") && knows("strength")) lacksFigure("titrantBase");
      basisLacks("strength", "the titrant's strength");
    }
    if (knows("titre", "meanTitre") && !knows("blank")) lacksFigure("blank");
    if (!knows("sampleMass", "sampleVolume")) lacksFigure("sampleMass", "sampleVolume");
  }
  if (knows("acidDose", "catalyst", "catalystRate", "weighed")) {
    if (!knows("base")) lacksFigure("base");
    if (knows("catalyst", "catalystRate") && !knows("baseCharge")) lacksFigure("baseCharge");
    basisLacks("baseCharge", "the base charge");
    if (!knows("assay") && !needsNoAssay(mapping)) lacksFigure("assay");
  }
  return found;
}
