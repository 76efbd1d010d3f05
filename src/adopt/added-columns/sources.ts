/** Where the formulas of a logbook's new columns take their figures: cells of the row, lone cells, typed figures. */
import { columnLetters } from "../../sheet/cell-name";
import { type Base, baseNamed } from "../../core/reference/bases";
import { oilNamed } from "../../core/reference/oils";
import { amountMeant } from "../recognising/answers";
import { basisOf } from "../recognising/basis";
import { hasDitto, withDittosRead } from "../recognising/ditto";
import { columnOf, columnsOf, type LogbookMapping } from "../recognising/mapping";
import {
  isInOtherThanOwn,
  isUnitUnsaid,
  measured,
  timesOwn,
} from "../recognising/measures/measured";
import { titresAsLaid } from "../layouts/plainly";
import { isNeutralised } from "../recognising/neutralised";
import { type RoleId, roleOf } from "../recognising/roles";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";
import { isUsable } from "../recognising/typed-limits";
import { typedFigure } from "../recognising/typed-number";
import { baseWritten, soleBase } from "../recognising/written-units";
import { amountParts } from "./amount-parts";
import { blankPart } from "./blank-part";
import { massParts } from "./mass-parts";
import type { Part } from "./part";
import type { Sources } from "./sources-shape";

export type { Sources } from "./sources-shape";
import { always, translated, wordsIn } from "./column-words";

/** "90" and "0,5" as a figure, anything else as a text. */
const literal = (typed: string): string =>
  String(typedFigure(typed) ?? `"${typed.replace(/"/g, '""')}"`);

/** A figure larger than any: what LOOKUP never finds, so that it answers the last figure. */
const beyondAll = "9.99E+307";

/** @param onSheet what stands before a cell seen from another sheet: "'Oil book'!" */
export function sourcesOf(given: LogbookMapping, cells: SheetCells, onSheet = ""): Sources {
  const mapping = measured(given);
  const unitOf = (role: RoleId): string | undefined =>
    columnOf(mapping, role)?.unit ?? mapping.constants.find((each) => each.role === role)?.unit;
  const read = withDittosRead(cells, mapping.place);
  const top = String(mapping.place.firstRow + 1);
  /** In the role's own unit; a cup may be one of oil as its maker's answer says. */
  const plain = (role: RoleId): Part | undefined => {
    const said = columnOf(mapping, role) ?? mapping.constants.find((each) => each.role === role);
    if (!said || roleOf(role).holds !== "number" || role === "oilAmount") return held(role);
    if (isUnitUnsaid(said)) return undefined;
    const isSample = role === "sampleMass" || role === "sampleVolume";
    const factor = isSample ? timesOwn(said) : 1;
    return factor === 1 ? held(role) : times(held(role), `*${String(factor)}`);
  };
  const held = (role: RoleId): Part | undefined => {
    const column = columnOf(mapping, role);
    if (column) {
      const letters = columnLetters(column.column);
      const own: Part = (row) => `${onSheet}${letters}${String(row)}`;
      if (!hasDitto(cells, mapping.place, column.column)) return own;
      // A ditto mark stands for the last figure above; for a word there is no such formula.
      if (roleOf(role).holds !== "number") return undefined;
      return (row) =>
        `IF(${own(row)}="","",LOOKUP(${beyondAll},${onSheet}${letters}$${top}:${letters}${String(row)}))`;
    }
    const constant = mapping.constants.find((each) => each.role === role);
    if (!constant || !isUsable(constant)) return undefined;
    const { from } = constant;
    const text =
      from.kind === "typed"
        ? literal(from.value)
        : `${onSheet}$${columnLetters(from.column)}$${String(from.row + 1)}`;
    return () => text;
  };
  const times = (part: Part | undefined, factor: string): Part | undefined =>
    part && ((row) => `${part(row)}${factor}`);
  const side = (role: RoleId): Part | undefined => {
    const columns = columnsOf(mapping, role).map(({ column }) => column);
    const [first] = columns;
    if (first === undefined) return plain(role);
    const last = columns[columns.length - 1] ?? first;
    if (columns.length === 1 && role !== "titre" && role !== "blank") return plain(role);
    if (isInOtherThanOwn(mapping, [role])) return undefined;
    if (role !== "blank" && columns.some((each) => hasDitto(cells, mapping.place, each)))
      return undefined;
    // A list is one range: columns that do not stand side by side are not one.
    if (last - first !== columns.length - 1) return undefined;
    return (row) => {
      const from = `${onSheet}${columnLetters(first)}${String(row)}`;
      return first === last ? from : `${from}:${columnLetters(last)}${String(row)}`;
    };
  };
  /** Do the cells show it with a percent sign? Some with and some without: it is neither. */
  const isPercent = (role: RoleId): boolean | "mixed" => {
    const column = columnOf(mapping, role)?.column;
    const from = mapping.constants.find((each) => each.role === role)?.from;
    const formats: boolean[] = [];
    const look = (row: number, at: number): void => {
      const { value, format } = heldCell(cells, row, at);
      if (typeof value === "number") formats.push(format.includes("%"));
    };
    if (column !== undefined)
      for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1)
        look(row, column);
    else if (from?.kind === "cell") look(from.row, from.column);
    const percents = formats.filter(Boolean).length;
    return percents > 0 && percents < formats.length ? "mixed" : percents > 0;
  };
  const inPercent = (role: RoleId): Part | undefined => {
    const percent = isPercent(role);
    if (percent === "mixed") return undefined;
    return unitOf(role) === "fraction" || percent ? times(plain(role), "*100") : plain(role);
  };
  const named = (role: RoleId, ours: (word: string) => string | undefined): Part | undefined => {
    const part = plain(role);
    const column = columnOf(mapping, role);
    return part && column ? translated(part, wordsIn(cells, mapping, column.column), ours) : part;
  };
  const isSaid = (role: RoleId): boolean =>
    columnOf(mapping, role) !== undefined || mapping.constants.some((each) => each.role === role);
  const baseIn = (role: RoleId, inHeading: Base | undefined): Part | undefined =>
    isSaid(role) ? named(role, ourBase) : always(inHeading?.name);
  const ourBase = (word: string): string | undefined =>
    baseNamed(word) ? undefined : baseWritten(word)?.name;
  // The name of a source is no kind of oil: it is left out, and the usual density holds.
  const ourOil = (word: string): string | undefined => (oilNamed(word) ? undefined : "");
  const inHeadings = soleBase(mapping);
  const only = (role: RoleId): Base | undefined => {
    const column = columnOf(mapping, role);
    const from = mapping.constants.find((each) => each.role === role)?.from;
    const lone = from?.kind === "cell" ? heldCell(cells, from.row, from.column).value : from?.value;
    const words = column
      ? wordsIn(read, mapping, column.column)
      : typeof lone === "string"
        ? [lone]
        : [];
    const found = new Set(words.map(baseWritten));
    return found.size === 1 ? [...found][0] : undefined;
  };
  const ofOil =
    columnOf(mapping, "oilAmount") ?? mapping.constants.find(({ role }) => role === "oilAmount");
  const chargePercent = isPercent("baseCharge");
  const charge = chargePercent === "mixed" ? undefined : plain("baseCharge");
  const chargePart = chargePercent === true ? times(charge, "*100") : charge;
  const titreColumns = columnsOf(mapping, "titre");
  const blank = mapping.constants.find(({ role }) => role === "blank")?.from;
  const isNeutral = blank?.kind === "typed" && isNeutralised(blank.value);
  const isCounted = isInOtherThanOwn(mapping, ["titre", "blank", "meanTitre", "correctedTitre"]);
  const asLaid = titresAsLaid({ mapping, cells });
  const isTitrated =
    titreColumns.length > 0 ||
    (isCounted &&
      (["meanTitre", "correctedTitre"] as const).some((role) => columnOf(mapping, role)));
  /** Read, not worked out: it goes before a corrected titre, where the blank to take off is known. */
  const mean = isNeutral || side("blank") ? plain("meanTitre") : undefined;
  const isWordIn = (column: number): boolean => wordsIn(cells, mapping, column).length > 0;
  return {
    ...amountParts(mapping, cells, plain, amountMeant(ofOil?.unit, ofOil?.times)),
    // a list is handed over as it stands: it cannot be multiplied on the way
    titres:
      isCounted || asLaid !== ""
        ? undefined
        : (side("titre") ?? mean ?? plain("correctedTitre") ?? plain("meanTitre")),
    titresLack: isCounted
      ? "the titres and blanks in mL: they stand in another unit"
      : asLaid || "the titres as figures in mL, in columns side by side",
    hasWordsInTitres: titreColumns.some(({ column }) => isWordIn(column)),
    blank:
      titreColumns.length === 0 && !mean && plain("correctedTitre")
        ? { part: undefined, isOne: true, lacks: "", lacksPlain: "" }
        : blankPart(mapping, cells, isNeutral ? undefined : side("blank"), onSheet),
    molarity: plain("molarity"),
    strength:
      unitOf("strength") === "% w/v" ? times(inPercent("strength"), "*10") : plain("strength"),
    strengthBasis: basisOf(mapping, "strength"),
    titrantBase: baseIn("titrantBase", inHeadings.titrant),
    ...massParts(mapping, side("sampleMass"), onSheet),
    sampleVolume: plain("sampleVolume"),
    oil: plain("density") ?? named("oil", ourOil),
    base: baseIn("base", inHeadings.catalyst),
    onlyBase: isSaid("base") ? only("base") : inHeadings.catalyst,
    onlyTitrantBase: isSaid("titrantBase") ? only("titrantBase") : inHeadings.titrant,
    assay: inPercent("assay"),
    charge: chargePart && {
      part: chargePart,
      per: chargePercent === true ? "%" : ((unitOf("baseCharge") ?? "%") as "%" | "g/L" | "g/kg"),
      basis: basisOf(mapping, "baseCharge"),
    },
    titreStep: plain("titreStep"),
    massStep: plain("massStep"),
    titrantDoubt: plain("titrantDoubt"),
    // What the row holds may be what is wrong: where there are titres, it is worked out from them or not at all.
    heldAcidValue: isTitrated ? undefined : plain("acidValue"),
    heldFfa: isTitrated ? undefined : inPercent("ffa"),
    heldFfaCell: isTitrated ? undefined : held("ffa"),
  };
}
