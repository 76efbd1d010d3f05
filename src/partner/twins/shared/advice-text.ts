/** What to improve first, as the core advises: each change worked out, and the best one in words. */
import {
  adviceWords as words,
  digitsOfStandardised,
  largestSample,
  largestTitre,
  worthwhile,
} from "../../../core/uncertainty/advice";
import {
  checkTitre,
  phthalatePerMolarity,
  phthalatePurityLimits,
} from "../../../core/uncertainty/phthalate";
import { normal95 } from "../../../core/uncertainty/standard-uncertainty";
import { type BenchText, expanded, ifBlank, pooledFreedom } from "./bench-text";
import type { Reading } from "./reading";
import { shown } from "./shown-text";
import { always, never, significant, spoken, text, when } from "./text";

interface Change {
  /** Text of its words. */
  readonly words: string;
  /** When it is open to this bench. */
  readonly isOpen: string;
  readonly bench: BenchText;
}

/** Digits of a figure in the words. */
const digits = 4;

/** What a check against KHP reaches on this bench, percent. */
const standardisedText = ({ molarity, massStep, titreStep }: BenchText): string =>
  `${normal95}*100*SQRT((${massStep})^2/6/(${phthalatePerMolarity}*${molarity})^2+2*(${titreStep})^2/6/${checkTitre}^2+(${phthalatePurityLimits}/100)^2/3)`;

function changes(reading: Reading, bench: BenchText): Change[] {
  const { titres, blanks, weighings, mass, net } = bench;
  const plain = (value: string): string => shown(reading, value, digits);
  const massStep = `${bench.massStep}/10`;
  const titreStep = `${bench.titreStep}/2`;
  const oneMore = (more: string, moreBlanks: string): BenchText => ({
    ...bench,
    titres: more,
    blanks: moreBlanks,
    freedom:
      bench.usualFreedom === "0"
        ? pooledFreedom(more, moreBlanks)
        : `${pooledFreedom(more, moreBlanks)}+${bench.usualFreedom}`,
    weighings: weighings === "1" ? "1" : when(`${weighings}>1`, more, weighings),
  });
  const standardised = reading.call.helper(
    "± % of a titrant standardised against KHP",
    standardisedText(bench),
  );
  const [moreTitres, moreBlanks] = [`(${titres}+1)`, `(${blanks}+1)`];
  return [
    {
      words: spoken(words.balance, plain(`(${massStep})`)),
      isOpen: always,
      bench: { ...bench, massStep },
    },
    {
      words: spoken(words.burette, plain(`(${titreStep})`)),
      isOpen: always,
      bench: { ...bench, titreStep },
    },
    { words: text(words.titre), isOpen: always, bench: oneMore(moreTitres, blanks) },
    {
      words: text(words.blank),
      isOpen: ifBlank(blanks, always, never),
      bench: oneMore(titres, moreBlanks),
    },
    {
      words: spoken(words.sample, plain(`(${mass}*10)`)),
      isOpen: `AND(${mass}*10<=${largestSample},${net}*10+${bench.blank}<=${largestTitre})`,
      bench: {
        ...bench,
        mass: `(${mass}*10)`,
        net: `(${net}*10)`,
        samplePercent: `${bench.samplePercent}/10`,
      },
    },
    {
      words: spoken(words.titrant, shown(reading, standardised, digitsOfStandardised)),
      isOpen: `${bench.molarityPercent}>${standardised}`,
      bench: { ...bench, molarityPercent: standardised },
    },
  ];
}

/** Decimals that show two digits of a figure. */
function placesOf(reading: Reading, value: string): string {
  const short = reading.call.helper("that, to two digits", significant(value, 2));
  const isOneDigit = `AND(${short}>=10,${short}=${significant(short, 1)})`;
  const places = `MAX(0,1-INT(LOG10(${short})))+IF(${isOneDigit},1,0)`;
  return reading.call.helper("decimals shown in the advice", places);
}

/** Changes that come to the same within a rounding error: the first counts. */
const tie = "1.000000000001";

/** @param before the expanded uncertainty as it is, a helper cell */
export function adviceText(
  reading: Reading,
  bench: BenchText,
  before: string,
): { readonly words: string; readonly after: string } {
  const { helper, helperColumn } = reading.call;
  const open = changes(reading, bench);
  const each = helperColumn(
    "± % FFA with one thing improved",
    open.map(({ isOpen, bench: changed }) => when(isOpen, expanded(changed), '""')),
  );
  const said = helperColumn(
    "one thing improved, in words",
    open.map((change) => change.words),
  );
  const lowest = helper("the lowest of them, % FFA", `MIN(${each.text})`);
  const isLowest = helperColumn(
    "is it the lowest?",
    open.map(
      (_, place) =>
        `AND(ISNUMBER(${each.cell(place, 0)}),${each.cell(place, 0)}<=${lowest}*${tie})`,
    ),
  );
  const place = `MATCH(TRUE,${isLowest.text},0)`;
  const change = helper("the change that helps most", `INDEX(${said.text},${place})`);
  const places = placesOf(reading, lowest);
  const toPlaces = (value: string): string => `FIXED(${value},${places},TRUE)`;
  const capital = `UPPER(LEFT(${change},1))&MID(${change},2,LEN(${change}))`;
  const bring = (start: string): string =>
    spoken(words.bring, start, toPlaces(before), toPlaces(lowest));
  return {
    after: lowest,
    words: when(
      `${before}-${lowest}<${worthwhile}*${before}`,
      spoken(words.helpsLittle, bring(change)),
      spoken(words.helpsMost, bring(capital)),
    ),
  };
}
