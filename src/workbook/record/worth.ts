/**
 * What a result is worth, in a word, and why: the same for the pane, for the row (its formula under
 * Worth is made of these words), and for every dose made from it.
 */
import { namespace } from "../../functions/names";
import { computed } from "../../core/exact/exact";
import { useWords } from "../../core/replicates/verdict-words";

export interface Worth {
  readonly word: "Good" | "Usable" | "Near zero" | "Not yet";
  /** What keeps it from the better word; a sentence each. */
  readonly why: readonly string[];
}

export interface OfResult {
  /** What VERDICT says of the titres. */
  readonly verdict: string;
  /** How many titres count. */
  readonly titres: number;
  /** A usual scatter from the record stands beside them. */
  readonly hasRecord: boolean;
  /** % FFA and its ±; undefined while the ± is not known. */
  readonly doubt: { readonly ffa: number; readonly halfWidth: number } | undefined;
  /** The titrant's own ± is filled in. */
  readonly hasTitrantPercent: boolean;
  readonly isByVolume: boolean;
}

export const byVolumeWord = "by volume";

/** A ± that is more of its result than this is too wide to be called good (common practice, no source). */
const mostDoubt = 0.2;

/** Its ± reaches zero: oil of hardly any acid, or too little of it. It holds no dose back. */
const nearZero = {
  word: "Near zero",
  between: " % FFA ± ",
  end: " cannot be told from zero: titrate a larger sample.",
  places: 2,
} as const;

/** What keeps a result from being good. */
const lessWords = {
  noDoubt: "Its ± is not known yet.",
  wide: "Its ± is more than a fifth of it: titrate again before a large batch.",
  noTitrantPercent: "The ± does not count how sure the titrant is: say that in step 1 of Titrate.",
  byVolume: "The sample was measured, not weighed.",
  oneTitre: "One titre, and nothing beside it but your record.",
} as const;

/** The titres agree. */
const isAgreed = (verdict: string): boolean => verdict.includes(useWords);

export function worthOf(of: OfResult): Worth {
  const isLone = of.titres === 1 && of.hasRecord;
  if (!isLone && !isAgreed(of.verdict)) return { word: notYet, why: [of.verdict] };
  const { doubt } = of;
  const isNearZero = doubt !== undefined && doubt.halfWidth >= doubt.ffa;
  const isWide = doubt !== undefined && doubt.halfWidth > mostDoubt * doubt.ffa;
  const why = [
    ...(doubt === undefined ? [lessWords.noDoubt] : []),
    ...(isNearZero ? [nearZeroWords(doubt)] : isWide ? [lessWords.wide] : []),
    // of a ± that is not there nothing more is said
    ...(of.hasTitrantPercent || doubt === undefined ? [] : [lessWords.noTitrantPercent]),
    ...(of.isByVolume ? [lessWords.byVolume] : []),
    ...(isLone ? [lessWords.oneTitre] : []),
  ];
  return { word: isNearZero ? nearZero.word : why.length > 0 ? "Usable" : "Good", why };
}

function nearZeroWords({ ffa, halfWidth }: NonNullable<OfResult["doubt"]>): string {
  const [value, half] = [ffa, halfWidth].map((each) => computed(each).toFixed(nearZero.places));
  return `${value ?? ""}${nearZero.between}${half ?? ""}${nearZero.end}`;
}

const notYet = "Not yet";
const used = "Used all the same";

/** What a row's note or a sheet keeps of a result that was used although it was not worth a dose yet. */
export const usedAllTheSameWords = (why: string): string => `${used}: ${why}`;

/** Of a row's cells, as a formula: no dose is to be made of it, and nobody has said that it is to be used. */
export const heldBackFormula = (worth: string, note: string): string =>
  `AND(ISNUMBER(SEARCH("${notYet}",${worth})),NOT(ISNUMBER(SEARCH("${used}",${note}))))`;

/** "Usable: Its ± is not known yet." */
export const worthText = ({ word, why }: Worth): string =>
  why.length === 0 ? word : `${word}: ${why.join(" ")}`;

/** The cells that the row's formula goes by, as it names them. */
export interface WorthCells {
  readonly acidValue: string;
  readonly verdict: string;
  /** How many titres count. */
  readonly titres: string;
  readonly usualScatter: string;
  readonly usualFreedom: string;
  readonly ffa: string;
  readonly doubt: string;
  readonly titrantPercent: string;
  readonly sampleBy: string;
}

/** Said of a batch whose lots do not all say what their titrations are worth. It holds no dose back. */
export const unknownWorthIn = (table: string): string => `Worth is not known yet: see ${table}.`;

/** Said where the acid value is an error, so that no dose stands there without a word. */
const noAcidValue = {
  unknown: "No acid value: this program does not know the function, since it has no add-in.",
  reading: "No acid value: a reading is no figure, or is beyond its limits.",
} as const;

/** A function of ours with nothing of the row in it: an error only where its name is not known. */
const probe = `${namespace}.FFAFROMACIDVALUE(1)`;

/** The same as a formula of plain functions (and the probe), without its equals sign: "" while there is no result. */
export function worthFormula(cells: WorthCells): string {
  const isLone = `AND(${cells.titres}=1,${cells.usualScatter}>0,${cells.usualFreedom}>0)`;
  const isAgreed = `ISNUMBER(SEARCH("${useWords}",IF(ISTEXT(${cells.verdict}),${cells.verdict},"")))`;
  const hasDoubt = `ISNUMBER(${cells.doubt})`;
  const isWide = `IF(${hasDoubt},${cells.doubt}>${mostDoubt}*${cells.ffa},FALSE)`;
  const isNearZero = `IF(${hasDoubt},${cells.doubt}>=${cells.ffa},FALSE)`;
  // rounded first: on which way a half goes in FIXED programs do not agree
  const fixed = (cell: string): string =>
    `FIXED(ROUND(${cell},${nearZero.places}),${nearZero.places},TRUE)`;
  const near = `" "&${fixed(cells.ffa)}&"${nearZero.between}"&${fixed(cells.doubt)}&"${nearZero.end}"`;
  const hasPercent = `${cells.titrantPercent}>0`;
  const isByVolume = `${cells.sampleBy}="${byVolumeWord}"`;
  const isGood = `AND(${hasDoubt},NOT(${isWide}),${hasPercent},NOT(${isByVolume}),NOT(${isLone}))`;
  const why = [
    `IF(${hasDoubt},""," ${lessWords.noDoubt}")`,
    `IF(${isNearZero},${near},IF(${isWide}," ${lessWords.wide}",""))`,
    `IF(OR(${hasPercent},NOT(${hasDoubt})),""," ${lessWords.noTitrantPercent}")`,
    `IF(${isByVolume}," ${lessWords.byVolume}","")`,
    `IF(${isLone}," ${lessWords.oneTitre}","")`,
  ].join("&");
  const words = `IF(OR(${isLone},${isAgreed}),IF(${isGood},"Good",IF(${isNearZero},"${nearZero.word}:","Usable:")&${why}),"${notYet}: "&${cells.verdict})`;
  const error = `IF(ISERROR(${probe}),"${noAcidValue.unknown}","${noAcidValue.reading}")`;
  const none = `IF(ISNA(${cells.acidValue}),"",IF(ISERROR(${cells.acidValue}),${error},""))`;
  return `IF(ISNUMBER(${cells.acidValue}),${words},${none})`;
}
