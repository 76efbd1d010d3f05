/**
 * The `Titrations` table: one row for each titration. Readings are values, results are live formulas,
 * one for each calculated column. An omitted reading leaves its cell empty and stands in words under
 * Omitted.
 */
import { neutralisedWord } from "../../core/titration/neutralised";
import { isExact } from "../../core/exact/exact";
import { stageNames } from "../../core/titration/stages";
import { omittedWords } from "../record/omitted-words";
import { waysKnown } from "../record/titrant-record";
import { byVolumeWord } from "../record/worth";
import type { TitrationRecord } from "../record/titration-record";
import {
  baseChoices,
  type Column,
  emptyUntilBegun,
  oilChoices,
  type RecordTable,
  typed,
} from "./column";
import {
  headlineHeadings,
  readingHeadings,
  sampleByHeading,
  titrationsName,
  usualHeadings,
} from "./titration-cells";
import { titrationResults } from "./titration-results";

type OfRecord = NonNullable<Column<TitrationRecord>["of"]>;
type More = Partial<Pick<Column<TitrationRecord>, "width" | "choices" | "tells" | "isEssential">>;

const words = (
  heading: string,
  width: number,
  note: string,
  of: OfRecord,
  more: More = {},
): Column<TitrationRecord> => typed(heading, width, note, { of, ...more });
const reading = (
  heading: string,
  format: string,
  note: string,
  of: OfRecord,
  { width = 10, ...more }: More = {},
): Column<TitrationRecord> => typed(heading, width, note, { format, of, ...more });

const each = (
  headings: readonly string[],
  column: (heading: string, place: number) => Column<TitrationRecord>,
): Column<TitrationRecord>[] => headings.map(column);

const blankOf = ({ blanks: given }: TitrationRecord, place: number) =>
  given !== neutralisedWord ? given[place] : place === 0 ? given : undefined;

/** What a row is looked at for: beside its lot and what is read at the burette, seen without scrolling. */
const headline = titrationResults.filter(({ heading }) => headlineHeadings.includes(heading));

export const titrations: RecordTable<TitrationRecord> = {
  name: titrationsName,
  title: "Titrations",
  guidance:
    "One row for each titration. Type the readings; the columns of results work themselves out.",
  what: "titration",
  tellingWords: "same date, same lot, same readings",
  columns: emptyUntilBegun(titrationsName, [
    reading("Date", "yyyy-mm-dd", "Day of the titration.", ({ date }) => date, {
      width: 12,
      tells: true,
    }),
    words("Lot", 14, "The lot of oil, as it is marked on its drum.", ({ lot }) => lot, {
      tells: true,
      isEssential: true,
    }),
    ...headline,
    ...each(readingHeadings.titres, (heading, place) =>
      reading(heading, "0.00", "Volume used, mL.", (record) => record.titres[place], {
        tells: true,
        isEssential: place === 0,
      }),
    ),
    ...each(readingHeadings.blanks, (heading, place) =>
      reading(
        heading,
        "0.00",
        "Solvent alone, mL; or the word neutralised.",
        (record) => blankOf(record, place),
        { width: 12, tells: true },
      ),
    ),
    reading(
      "Mass g",
      "0.00",
      "Grams of oil, when one mass serves all titres.",
      ({ masses: given }) => (isExact(given) ? given : undefined),
    ),
    words("Stage", 15, "What had been done to the oil.", ({ stage }) => stage, {
      choices: stageNames,
    }),
    words("Oil", 17, "Kind of oil, by name.", ({ oil }) => oil, { choices: oilChoices }),
    words("Operator", 12, "Who titrated.", ({ operator }) => operator),
    words("Titrant base", 12, "What the burette held.", ({ titrantBase }) => titrantBase, {
      choices: baseChoices,
    }),
    reading(
      "Molarity mol/L",
      "0.0000",
      "Strength of the titrant, mol/L (not g/L).",
      ({ molarity }) => molarity,
    ),
    words(
      "Strength set by",
      15,
      "How that strength is known.",
      ({ strengthSetBy }) => strengthSetBy,
      { choices: waysKnown },
    ),
    words("Indicator", 16, "Indicator used.", ({ indicator }) => indicator),
    reading(
      "Seconds held",
      "0",
      "How long the colour stayed: 15 or 30 s.",
      ({ secondsHeld }) => secondsHeld,
    ),
    ...each(readingHeadings.ownMasses, (heading, place) =>
      reading(heading, "0.00", "Grams of oil in this titre alone.", ({ masses: given }) =>
        Array.isArray(given) ? given[place] : undefined,
      ),
    ),
    reading(
      "Read to mL",
      "0.00",
      "Smallest difference you read on the burette or syringe, mL.",
      ({ titreStep }) => titreStep,
    ),
    reading(
      "Weighed to g",
      "0.00",
      "Smallest difference the balance shows, g.",
      ({ massStep }) => massStep,
    ),
    words(
      sampleByHeading,
      11,
      "by volume, where the sample was measured. Left empty: weighed.",
      ({ isByVolume }) => (isByVolume ? byVolumeWord : undefined),
      { choices: ["weighed", byVolumeWord] },
    ),
    reading(
      "Titrant ± %",
      "0.0",
      "How far off the titrant's strength may be, in percent.",
      ({ titrantPercent }) => titrantPercent,
    ),
    reading(
      "Burette ± %",
      "0.0",
      "How far off the burette or syringe may be, percent of what it delivers. Left empty: not counted.",
      ({ burettePercent }) => burettePercent,
    ),
    reading(
      usualHeadings[0],
      "0.0000",
      "Your usual scatter on that day, from the rows before, mL: the pane writes it. Left empty: not used.",
      ({ usual }) => usual?.scatter,
    ),
    reading(
      usualHeadings[1],
      "0",
      "How many earlier readings stand behind that scatter (degrees of freedom): both or neither.",
      ({ usual }) => usual?.freedom,
    ),
    ...titrationResults.filter((column) => !headline.includes(column)),
    words(
      "Omitted",
      26,
      "A reading taken out, and why. It leaves its column.",
      ({ omitted, titreStep }) => omittedWords(omitted, titreStep),
    ),
    words("Note", 40, "Anything else.", ({ note }) => note),
  ]),
};
