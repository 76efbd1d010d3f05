/**
 * What a result is worth, in a word, and why: the same for the pane, for the row (its formula under
 * Worth is made of these words), and for every dose made from it.
 */
import { useWords } from "../../core/replicates/verdict-words";

export interface Worth {
  readonly word: "Good" | "Usable" | "Not yet";
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
  readonly hasDoubt: boolean;
  /** The titrant's own ± is filled in. */
  readonly hasTitrantPercent: boolean;
  readonly isByVolume: boolean;
}

export const byVolumeWord = "by volume";

/** What keeps a result from being good. */
const lessWords = {
  noDoubt: "Its ± is not known yet.",
  noTitrantPercent: "How far off the titrant may be is not in the ± yet.",
  byVolume: "The sample was measured, not weighed.",
  oneTitre: "One titre, and nothing beside it but your record.",
} as const;

/** The titres agree. */
const isAgreed = (verdict: string): boolean => verdict.includes(useWords);

export function worthOf(of: OfResult): Worth {
  const isLone = of.titres === 1 && of.hasRecord;
  if (!isLone && !isAgreed(of.verdict)) return { word: "Not yet", why: [of.verdict] };
  const why = [
    ...(of.hasDoubt ? [] : [lessWords.noDoubt]),
    ...(of.hasTitrantPercent ? [] : [lessWords.noTitrantPercent]),
    ...(of.isByVolume ? [lessWords.byVolume] : []),
    ...(isLone ? [lessWords.oneTitre] : []),
  ];
  return { word: why.length > 0 ? "Usable" : "Good", why };
}

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
  readonly doubt: string;
  readonly titrantPercent: string;
  readonly sampleBy: string;
}

/** The same as a formula of plain functions, without its equals sign: "" while there is no result. */
export function worthFormula(cells: WorthCells): string {
  const isLone = `AND(${cells.titres}=1,${cells.usualScatter}>0,${cells.usualFreedom}>0)`;
  const isAgreed = `ISNUMBER(SEARCH("${useWords}",IF(ISTEXT(${cells.verdict}),${cells.verdict},"")))`;
  const hasDoubt = `ISNUMBER(${cells.doubt})`;
  const hasPercent = `${cells.titrantPercent}>0`;
  const isByVolume = `${cells.sampleBy}="${byVolumeWord}"`;
  const isGood = `AND(${hasDoubt},${hasPercent},NOT(${isByVolume}),NOT(${isLone}))`;
  const why = [
    `IF(${hasDoubt},""," ${lessWords.noDoubt}")`,
    `IF(${hasPercent},""," ${lessWords.noTitrantPercent}")`,
    `IF(${isByVolume}," ${lessWords.byVolume}","")`,
    `IF(${isLone}," ${lessWords.oneTitre}","")`,
  ].join("&");
  const words = `IF(OR(${isLone},${isAgreed}),IF(${isGood},"Good","Usable:"&${why}),"Not yet: "&${cells.verdict})`;
  return `IF(ISNUMBER(${cells.acidValue}),${words},"")`;
}
