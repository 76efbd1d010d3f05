/** Which cells have a list of words to choose from: by the file, or by columns of ours that are new. */
import type { CellPlace } from "../../sheet/area";
import type { Area, Validation } from "../../xlsx";
import { SharedFormula } from "../../xlsx/formulas/shared";
import type { GivenCell } from "../engine/cells";
import type { WorkbookCells } from "../engine/workbook-cells";

/** By the names of sheets. */
export type ListsOfFile = ReadonlyMap<string, readonly Validation[]>;

const isWithin = ({ row, column, rows, columns }: Area, at: CellPlace): boolean =>
  row <= at.row && at.row < row + rows && column <= at.column && at.column < column + columns;

const isList = ({ words, refersTo }: Validation): boolean =>
  words !== undefined || refersTo !== undefined;

export interface Choices {
  readonly words: readonly (string | number | boolean)[];
  /** The program that made the file lets nothing else be typed. */
  readonly isStrict: boolean;
}

type Word = Choices["words"][number];

const isWord = (value: GivenCell): value is Word =>
  value !== null && value !== "" && typeof value !== "object";

export class Lists {
  ofFile: ListsOfFile = new Map();

  constructor(private readonly cells: WorkbookCells) {}

  private own(place: CellPlace): readonly string[] | undefined {
    const cell = this.cells.names.sheet(place.sheet)?.getCellRaw(place.row, place.column);
    const words: unknown = cell?.custom?.words;
    return Array.isArray(words) ? (words as string[]) : undefined;
  }

  private found(place: CellPlace): Validation | undefined {
    const words = this.own(place);
    if (words) return { areas: [], words, isStrict: false };
    return this.ruleAt(place, isList);
  }

  /** What the file says may be typed into a cell. */
  ruleAt(
    place: CellPlace,
    counts: (rule: Validation) => boolean = () => true,
  ): Validation | undefined {
    return this.ofFile
      .get(place.sheet)
      ?.find((each) => counts(each) && each.areas.some((area) => isWithin(area, place)));
  }

  /** Rows that a table has grown by choose from what the rows above them do. */
  private at(place: CellPlace): Validation | undefined {
    const { sheet, column } = place;
    const table = this.cells.names
      .tables(sheet)
      .find(
        ({ top, left, bottom, right }) =>
          top < place.row && place.row <= bottom && left <= column && column <= right,
      );
    for (let row = place.row; row > (table?.top ?? place.row - 1); row -= 1) {
      const found = this.found({ sheet, row, column });
      if (found) return found;
    }
    return undefined;
  }

  has(place: CellPlace): boolean {
    return this.at(place) !== undefined;
  }

  /** Undefined where there is no list, or where what it stands in cannot be read now. */
  choices(place: CellPlace): Choices | undefined {
    const found = this.at(place);
    if (!found) return undefined;
    const { isStrict, areas, refersTo } = found;
    if (found.words) return { words: found.words, isStrict };
    const [first] = areas;
    if (refersTo === undefined || !first) return undefined;
    const seen = new SharedFormula(refersTo, first.row, first.column).at(place.row, place.column);
    const words = this.cells.lookup(seen.slice(1), place)?.flat().filter(isWord);
    return words && words.length > 0 ? { words, isStrict } : undefined;
  }
}

export const listsIn = (
  sheets: readonly { readonly name: string; readonly validations: readonly Validation[] }[],
): ListsOfFile => new Map(sheets.map(({ name, validations }) => [name, validations]));
