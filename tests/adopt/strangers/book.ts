/** Logbooks of strangers: ordinary, untidy, in other languages, oddly laid out; each with the truth. */
import type { SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { type Chance, chanceOf } from "../habits/chance";
import { type Column, columnsOf, withUnit } from "./columns";
import { makerOf, rowsOf } from "./figures";
import type { Content, Laid, Truth } from "./laid";
import { layouts } from "./layouts";
import { type Nonsense, withNonsense } from "./nonsense";
import { meaningsOf } from "./plans";
import { dutch } from "./words/dutch";
import { english } from "./words/english";
import { french } from "./words/french";
import { german } from "./words/german";
import { italian } from "./words/italian";
import { portuguese } from "./words/portuguese";
import type { Language, Meaning } from "./words/role-words";
import { spanish } from "./words/spanish";
import { dutch as dutch2 } from "./words/another-hand/dutch";
import { english as english2 } from "./words/another-hand/english";
import { french as french2 } from "./words/another-hand/french";
import { german as german2 } from "./words/another-hand/german";
import { italian as italian2 } from "./words/another-hand/italian";
import { portuguese as portuguese2 } from "./words/another-hand/portuguese";
import { spanish as spanish2 } from "./words/another-hand/spanish";
import { dutch as dutch3 } from "./words/third-hand/dutch";
import { english as english3 } from "./words/third-hand/english";
import { french as french3 } from "./words/third-hand/french";
import { german as german3 } from "./words/third-hand/german";
import { italian as italian3 } from "./words/third-hand/italian";
import { portuguese as portuguese3 } from "./words/third-hand/portuguese";
import { spanish as spanish3 } from "./words/third-hand/spanish";
import { dutch as dutch4 } from "./words/fourth-hand/dutch";
import { english as english4 } from "./words/fourth-hand/english";
import { french as french4 } from "./words/fourth-hand/french";
import { german as german4 } from "./words/fourth-hand/german";
import { italian as italian4 } from "./words/fourth-hand/italian";
import { portuguese as portuguese4 } from "./words/fourth-hand/portuguese";
import { spanish as spanish4 } from "./words/fourth-hand/spanish";
import { dutch as dutch5 } from "./words/fifth-hand/dutch";
import { english as english5 } from "./words/fifth-hand/english";
import { french as french5 } from "./words/fifth-hand/french";
import { german as german5 } from "./words/fifth-hand/german";
import { italian as italian5 } from "./words/fifth-hand/italian";
import { portuguese as portuguese5 } from "./words/fifth-hand/portuguese";
import { spanish as spanish5 } from "./words/fifth-hand/spanish";
import { dutch as dutch6 } from "./words/sixth-hand/dutch";
import { english as english6 } from "./words/sixth-hand/english";
import { french as french6 } from "./words/sixth-hand/french";
import { german as german6 } from "./words/sixth-hand/german";
import { italian as italian6 } from "./words/sixth-hand/italian";
import { portuguese as portuguese6 } from "./words/sixth-hand/portuguese";
import { spanish as spanish6 } from "./words/sixth-hand/spanish";
import { dutch as dutch7 } from "./words/seventh-hand/dutch";
import { english as english7 } from "./words/seventh-hand/english";
import { french as french7 } from "./words/seventh-hand/french";
import { german as german7 } from "./words/seventh-hand/german";
import { italian as italian7 } from "./words/seventh-hand/italian";
import { portuguese as portuguese7 } from "./words/seventh-hand/portuguese";
import { spanish as spanish7 } from "./words/seventh-hand/spanish";
import { type Hand, misspelt, written } from "./written";

export const kinds = ["ordinary", "untidy", "other languages", "odd layouts"] as const;
export type BookKind = (typeof kinds)[number];

export interface Book {
  readonly seed: number;
  readonly kind: BookKind;
  readonly language: string;
  readonly layout: string;
  readonly sheets: readonly SheetCells[];
  readonly truth: readonly Truth[];
}

/** Who wrote the headings: those the words in use were measured by, or somebody after them. */
export type HandId = "first" | "another" | "third" | "fourth" | "fifth" | "sixth" | "seventh";
const inEnglish: Readonly<Record<HandId, Language>> = {
  first: english,
  another: english2,
  third: english3,
  fourth: english4,
  fifth: english5,
  sixth: english6,
  seventh: english7,
};
const inOthers: Readonly<Record<HandId, readonly Language[]>> = {
  first: [german, spanish, portuguese, french, italian, dutch],
  another: [german2, spanish2, portuguese2, french2, italian2, dutch2],
  third: [german3, spanish3, portuguese3, french3, italian3, dutch3],
  fourth: [german4, spanish4, portuguese4, french4, italian4, dutch4],
  fifth: [german5, spanish5, portuguese5, french5, italian5, dutch5],
  sixth: [german6, spanish6, portuguese6, french6, italian6, dutch6],
  seventh: [german7, spanish7, portuguese7, french7, italian7, dutch7],
};

function contentOf(
  chance: Chance,
  kind: BookKind,
  language: Language,
  replaced: (columns: readonly Column[]) => readonly Column[],
): Content {
  const isUntidy = kind === "untidy";
  const maker = makerOf(chance, language.name === "English");
  const meanings = meaningsOf(chance, isUntidy ? 0.25 : 0.06);
  const inOrder: Meaning[] = isUntidy && chance.yes(0.3) ? shuffled(chance, meanings) : meanings;
  const plain = columnsOf(chance, language, maker, inOrder, isUntidy ? 0.4 : 0.85);
  const style = chance.of(["brackets", "after", "comma", "square"] as const);
  const upper = chance.of(["as is", "as is", "as is", "upper", "lower"] as const);
  const spelled = plain.map((column) => {
    const spelt = isUntidy && chance.yes(0.12) ? misspelt(chance, column.heading) : column.heading;
    const cased =
      isUntidy && upper === "upper"
        ? spelt.toUpperCase()
        : isUntidy && upper === "lower"
          ? spelt.toLowerCase()
          : spelt;
    return { ...column, heading: cased };
  });
  const columns = replaced(spelled);
  const hand: Hand = {
    commaTexts: language.commas && chance.yes(0.5),
    dates: language.commas
      ? chance.of(["serial", "dots", "slashes"] as const)
      : chance.of(["serial", "serial", "slashes", "words"] as const),
    untidy: isUntidy ? 0.05 : 0,
    isPercentFormat: chance.yes(0.1),
  };
  const rows = rowsOf(chance, maker, chance.whole(6, 24));
  return {
    chance,
    language,
    columns,
    rows,
    hand,
    style,
    heading: (column) => withUnit(column.heading, column.unitWord, style),
    cell: (column, row) => {
      if (column.meaning !== "titre")
        return written(chance, hand, column.meaning, row.get(column.meaning) ?? "");
      return written(chance, hand, "titre", row.titres[column.which] ?? "");
    },
  };
}

function shuffled<T>(chance: Chance, list: readonly T[]): T[] {
  const left = [...list];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(chance.whole(0, left.length - 1), 1));
  return out;
}

export function bookOf(
  kind: BookKind,
  seed: number,
  by: HandId = "first",
  nonsense?: Nonsense,
): Book {
  const chance = chanceOf(seed * 31 + kinds.indexOf(kind) * 1009 + 5);
  const isOther = kind === "other languages" || (kind === "odd layouts" && chance.yes(0.4));
  const language = isOther ? chance.of(inOthers[by]) : inEnglish[by];
  const content = contentOf(chance, kind, language, (columns) =>
    nonsense ? withNonsense(columns, seed, nonsense) : columns,
  );
  const names = Object.keys(layouts).filter((name) =>
    kind === "odd layouts" ? name.startsWith("odd") : !name.startsWith("odd"),
  );
  const fitting =
    kind === "ordinary" || kind === "other languages"
      ? names.filter((name) => !name.startsWith("untidy"))
      : names;
  const layout = chance.of(fitting);
  const { pages, truth } = (layouts[layout] as (content: Content) => Laid)(content);
  return {
    seed,
    kind,
    language: language.name,
    layout,
    sheets: pages.map(([sheet, page]) => page.cells(sheet)),
    truth,
  };
}
