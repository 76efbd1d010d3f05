/**
 * A heading taken apart: its plain words, the unit it names, the number it ends in. "Titration #2
 * (mL)" is the words "titration", the number 2 and mL.
 */
import { numberOf } from "./words/heading-number";
import { fold, lexicon, tokensOf } from "./words/lexicon";
import { isSymbol, readWords } from "./words/read-words";

export interface HeadingParts {
  /** Lower case, units and numbers taken out. */
  readonly words: string;
  /** Those words as they were written, or the symbol that the whole heading is: "V0". */
  readonly text: string;
  readonly unit: string | undefined;
  /** Which of several: T2, "2nd titre". */
  readonly number: number | undefined;
  /** The heading is nothing but a unit. */
  readonly isUnitAlone: boolean;
}

const per = "(?:/|per|pro|por|par|je)";
const inOne = "(?:in|auf|en|em|dans|op|per|pro|por|par)~(?:1|an?|one|un[aeo]?|um|een|einen?|einem)";
const gram = "(?:g|gr|gms?|grams?|grammes?|gramm|gramos?|gramas?|gramm[io])";
const litre = "(?:l|lts?|ltrs?|lit(?:re|er)s?|litros?|litr[io]|litern)";
const millilitre = "(?:mls?|mil+ilit(?:re|er)s?|mililitros?|millilitri|c\\.?cs?|ccm|cm3|cm³)";
const kilogram = "(?:kgs?|kilos?|kilogram(?:m|me|o)?s?|quilos?|chili)";
const gallon = "gal(?:lon)?s?";
const fluidOunce = "fl(?:uid)?~(?:oz|ounces?)";
const quart = "(?:qts?|quarts?)";
const pint = "(?:pts?|pints?)";

/** Units in the seven languages, longest first where one begins with another. `~` stands for any spaces, points or none. */
const unitWords: readonly (readonly [string, string])[] = [
  ["mg KOH/g", `mg~koh~${per}~${gram}|mg~/~g|mg~koh`],
  ["mol/L", `mols?~${per}~${litre}|moles?~${per}~${litre}|mol~dm-?3|mol~l-1`],
  ["g/L", `${gram}~(?:${per}|${inOne})~${litre}|g~l-1|gpl`],
  ["mg/kg", `mg~${per}~${kilogram}`],
  ["ppm", "ppm"],
  ["g/kg", `${gram}~${per}~${kilogram}`],
  ["kg/L", `${kilogram}~${per}~${litre}|${gram}~${per}~${millilitre}`],
  // a gram in 100 mL is what % w/v says
  ["% w/v", `%~[wpm]~/~v|[wp]~/~v(?:~%)?|${gram}~${per}~(?:100~(?:${millilitre})|dl)`],
  ["US fl oz", `u\\.?s\\.?a?~${fluidOunce}|${fluidOunce}~\\(?us\\)?`],
  [
    "imp fl oz",
    `(?:imp(?:erial)?|uk)\\.?~${fluidOunce}|${fluidOunce}~\\(?(?:imp(?:erial)?|uk)\\)?`,
  ],
  ["fl oz", fluidOunce],
  ["US quart", `u\\.?s\\.?a?~${quart}`],
  ["imp quart", `(?:imp(?:erial)?|uk)\\.?~${quart}`],
  ["quart", quart],
  ["US pint", `u\\.?s\\.?a?~${pint}`],
  ["imp pint", `(?:imp(?:erial)?|uk)\\.?~${pint}`],
  ["pint", pint],
  ["US gal", `u\\.?s\\.?a?~${gallon}|${gallon}~\\(?us\\)?`],
  ["imp gal", `(?:imp(?:erial)?|uk)\\.?~${gallon}|${gallon}~\\(?(?:imp(?:erial)?|uk)\\)?`],
  ["gal", `${gallon}|galones`],
  ["mL", millilitre],
  ["kg", kilogram],
  ["lb", "lbs?|pounds?|libras?|pfund"],
  ["oz", "oz|ounces?"],
  ["grain", "grains?"],
  ["drop", "drops?|gtts?|tropfen|gotas?|gouttes?|goc+[ei]a?|druppels?"],
  ["cup", "cups?|cupfuls?|tassen?|tazas?|xicaras?|tasses?|tazz[ae]|kopjes?"],
  ["tablespoon", "tbsps?|tablespoons?|essloffel"],
  ["teaspoon", "tsps?|teaspoons?|teeloffel"],
  ["g", gram],
  ["L", litre],
  ["C", "[°º]~c|(?:deg(?:rees)?|grad|gradi|grados|graus|degres|graden)~c|celsius|°"],
  [
    "%",
    "%~[wpm]~/~[wpm]|[wpm]/[wpm]~%|(?:wt|gew)~-?~%|%|percent|per cent|pct|prozent|proz|perc|p~cent|p~100|por ciento|por cento|pour cent|per cento|procent|m/m",
  ],
];

const edge = (source: string): RegExp =>
  new RegExp(`(?<![a-z0-9%])(?:${source.replace(/~/g, "[\\s.]*")})(?![a-z0-9%'’])`, "i");
/** "Lye per litre" names a rate, and no litres. */
const forEach = new RegExp(
  `(?<!(?:^|[^a-z])(?:${gram}|${millilitre}|${kilogram}|mols?)\\s*)(?:\\b(?:per|pro|por|par|je)\\s+(?:${litre}|${kilogram}))(?![a-z0-9%])`,
  "i",
);
const units = unitWords.map(([unit, source]) => [unit, edge(source)] as const);
const bracketed = /[([{]([^)\]}]*)[)\]}]/g;

/** The unit some words name; the rest of the words. */
function takeUnit(words: string): { unit: string | undefined; rest: string } {
  // A percent sign stands beside words without a space: %FFA.
  const spaced = words
    .replace(/%/g, " % ")
    .replace(/\s+/g, " ")
    .replace(/% ([wpm] ?\/ ?[wpmv])(?![a-z])/i, "%$1")
    .replace(forEach, " perlitre ");
  for (const [unit, pattern] of units) {
    const found = pattern.exec(spaced);
    if (!found) continue;
    const rest = `${spaced.slice(0, found.index)} ${spaced.slice(found.index + found[0].length)}`;
    return { unit, rest };
  }
  return { unit: undefined, rest: spaced };
}

/** The unit a cell of a units row names, when it names one and nothing else. */
export function unitAlone(text: string): string | undefined {
  const plain = text.replace(/[()[\]{}]/g, " ").trim();
  if (/^[mn]$/i.test(plain)) return "mol/L";
  const { unit, rest } = takeUnit(plain);
  return unit !== undefined && rest.replace(/[\s.,/-]/g, "") === "" ? unit : undefined;
}

/** A unit in brackets counts before one in the words: "mL KOH (g)" is in grams. */
function unitOf(text: string): { unit: string | undefined; rest: string } {
  for (const [whole, inner = ""] of text.matchAll(bracketed)) {
    const unit = unitAlone(inner);
    if (unit !== undefined)
      return { unit, rest: text.replace(whole, " ").replace(forEach, " perlitre ") };
  }
  const plain = text.replace(/[()[\]{}]/g, " ");
  // "Sp. gr." names a density, and no grams
  const tokens = tokensOf(plain);
  const isPhrase = tokens.length > 1 && lexicon.has(tokens.join(" "));
  return isPhrase ? { unit: undefined, rest: plain } : takeUnit(plain);
}

/** "g lye / L oil": so much of a thing to the litre. */
const toTheLitre = new RegExp(`^(${gram}\\s.*[a-z]{2})\\s*/\\s*(${litre})(?![a-z0-9%])`, "i");
const inOneLitre = edge(`${inOne}~${litre}`);
const inKilograms = new RegExp(`${per}\\s*${kilogram}`, "i");

const saysWater = (word: string): boolean =>
  readWords(word).some(({ meanings }) => meanings.some(({ concept }) => concept === "water"));

/** Grams of a thing to the litre are g/L; to the litre of water they are what is in the burette. */
function asRate(text: string): { unit: string | undefined; rest: string } {
  const { unit, rest } = unitOf(text.replace(toTheLitre, "$1 per $2"));
  const isRate = unit === "g" && rest.includes(" perlitre ");
  if (!isRate && unit !== "g/L") return { unit, rest };
  const words = rest.split(/\s+/);
  const ofWater = words.filter((word) => !saysWater(word));
  return {
    unit: isRate && inKilograms.test(text) ? "g/kg" : "g/L",
    rest:
      ofWater.length < words.length || inOneLitre.test(text)
        ? `${ofWater.join(" ")} insolution`
        : rest,
  };
}

/** No program takes a longer one for a table's heading; what follows is not looked into. */
const longest = 255;

export function headingParts(heading: string): HeadingParts {
  const text = heading
    .slice(0, longest)
    // put in; without its accent it would be "per"
    .replace(/(?<!\p{L})p\u00f4r(?!\p{L})/giu, "colocar")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    // "mL 0.1 N NaOH": how strong the titrant is says nothing of which column it is.
    .replace(/(?<![\w.,])\d*[.,]?\d+\s*(?:N|M|mol\s*\/\s*L)(?![\w/])/gi, " ")
    .replace(/\s+/g, " ")
    .trim();
  const { unit, rest } = asRate(text);
  const { number, rest: words } = numberOf(rest);
  const plain = fold(words)
    .replace(/\+\s*\/?\s*-|±/g, " plusminus ")
    .replace(/(?<=\b[a-z])\.(?=[a-z]\b)/g, "")
    .replace(/[^a-z0-9?#-]+/g, " ")
    .replace(/\s-\s/g, " minus ")
    .replace(/-/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  const whole = isSymbol(rest) ? rest : words;
  return {
    words: plain,
    text: whole,
    unit,
    number,
    isUnitAlone: plain === "" && unit !== undefined,
  };
}
