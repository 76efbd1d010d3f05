/**
 * Which meanings in a heading speak for which role, and how much: 1 leaves no doubt, 0.5 needs the unit
 * or the figures to agree. No language stands here: "mass sample" is "Probenmasse" and "peso de muestra".
 */
import type { RoleId } from "../roles";
import type { Meant } from "./symbols";

type Words<T extends string> = T | `${T} ${T}`;

export interface Pattern {
  readonly needs: readonly Meant[];
  readonly weight: number;
}

export interface RolePatterns {
  readonly patterns: readonly Pattern[];
  /** May stand beside and change nothing. */
  readonly besides: ReadonlySet<Meant>;
}

const of = (
  besides: string,
  ...patterns: readonly (readonly [Words<Meant>, number])[]
): RolePatterns => ({
  besides: new Set(besides.split(" ").filter((each) => each !== "")) as ReadonlySet<Meant>,
  patterns: patterns.map(([needs, weight]) => ({ needs: needs.split(" ") as Meant[], weight })),
});

// prettier-ignore
export const rolePatterns: Partial<Record<RoleId, RolePatterns>> = {
  date: of("titrated titre made sample batch oil repeat production used on", ["date", 1], ["titrated on", 0.85], ["made on", 0.85], ["sample on", 0.7], ["used on", 0.5], ["on", 0.4]),
  lot: of("id oil container source used", ["lot", 0.9], ["container", 0.85], ["sample id", 0.85], ["oil id", 0.85], ["delivery", 0.75], ["delivery id", 0.9], ["delivery oil", 0.8], ["source", 0.5], ["lot oil", 1], ["sample", 0.45], ["oil", 0.4], ["id", 0.4], ["oil source", 0.85], ["delivery lot", 0.9], ["batch oil", 0.9]),
  batch: of("id production", ["batch", 0.8], ["batch id", 0.9], ["lot production", 0.95], ["batch production", 0.95], ["repeat id", 0.7], ["production id", 0.75], ["reaction id", 0.75], ["lot made", 0.9], ["repeat", 0.4], ["id", 0.3], ["lot fuel", 0.95], ["batch fuel", 0.95], ["production", 0.45]),
  oil: of("used", ["oil kind", 1], ["feedstock", 0.9], ["feedstock kind", 1], ["oil", 0.75], ["kind", 0.5], ["oil source", 0.9], ["source", 0.47], ["source kind", 0.9]),
  operator: of("titre repeat", ["who", 1], ["titrated by", 0.95], ["made by", 0.95], ["weighed by", 0.9], ["used by", 0.8], ["by", 0.75]),
  stage: of("oil production", ["stage", 0.7]),
  titrantBase: of("used lye base for", ["titrant", 0.75], ["titrant kind", 0.95], ["titrant lye", 0.9], ["titrant base", 0.95], ["titre base", 0.9], ["base solution", 0.9], ["standard base", 0.5], ["standard lye", 0.5], ["lye solution", 0.85], ["titrated with", 0.95], ["lye burette", 0.95], ["base burette", 0.95], ["burette", 0.75], ["solution kind", 0.8], ["lye titre", 0.75], ["lye used", 0.5], ["base used", 0.5], ["lye", 0.42], ["base", 0.42], ["lye kind", 0.45], ["base kind", 0.45]),
  indicator: of("used kind", ["indicator", 1], ["endPoint by", 0.6], ["endPoint with", 0.7]),
  molarity: of("titrant lye base solution strength burette value", ["molarity", 1], ["molar titrant", 0.95], ["molar lye", 0.9], ["molar base", 0.9], ["molar solution", 0.9], ["molar strength", 0.9], ["molar", 0.6], ["strength", 0.55], ["titrant", 0.4], ["solution", 0.4], ["lye", 0.3]),
  strength: of("lye base solution titrant burette mass", ["strength", 0.55], ["strength titrant", 0.75], ["strength lye", 0.65], ["strength solution", 0.75], ["lye perLitre", 0.72], ["base perLitre", 0.72], ["titrant perLitre", 0.9], ["solution perLitre", 0.9], ["titrant", 0.7], ["solution", 0.7], ["burette", 0.6], ["lye", 0.35]),
  titre: of("volume lye titrant used reading id repeat burette base value endPoint on", ["titre", 0.8], ["titre repeat", 0.85], ["reading", 0.6], ["repeat", 0.6], ["burette", 0.6], ["burette reading", 0.75], ["lye used", 0.6], ["titrant used", 0.75], ["used volume", 0.6], ["titrant", 0.55], ["lye", 0.5], ["used", 0.5], ["volume", 0.35], ["lye endPoint", 0.9], ["endPoint", 0.7], ["volume lye", 0.75], ["volume titrant", 0.85], ["volume base", 0.75]),
  blank: of("titre volume used value reading repeat solvent titrant lye id on", ["blank", 1], ["solvent", 0.6], ["only solvent", 0.95], ["only alcohol", 0.95], ["only titrant", 0.6]),
  meanTitre: of("used volume reading value lye titrant repeat burette of", ["mean", 0.75], ["mean titre", 0.95], ["mean used", 0.85], ["mean reading", 0.9], ["mean volume", 0.9], ["mean repeat", 0.85]),
  correctedTitre: of("titre volume used mean blank reading lye titrant value for", ["net", 0.8], ["net titre", 0.95], ["net volume", 0.95], ["net used", 0.9], ["net blank", 1], ["minus blank", 1.05], ["difference", 0.6], ["difference titre", 0.9], ["difference blank", 0.9], ["titre minus", 0.8]),
  sampleMass: of("oil used titrated id on for", ["sample", 0.6], ["sample mass", 0.9], ["sample amount", 0.7], ["sample weighed", 0.9], ["mass", 0.5], ["oil mass", 0.52], ["oil", 0.45], ["oil used", 0.5], ["oil titrated", 0.55], ["oil weighed", 0.6], ["sample titre", 0.75], ["oil repeat", 0.55], ["oil titre", 0.6], ["weighed", 0.45], ["repeat amount", 0.6]),
  sampleVolume: of("oil used titrated id on for", ["sample", 0.6], ["sample volume", 0.9], ["sample amount", 0.7], ["volume", 0.4], ["oil volume", 0.5], ["oil", 0.5], ["oil used", 0.52], ["oil titrated", 0.55], ["sample titre", 0.75], ["oil repeat", 0.55], ["oil titre", 0.6], ["oil solvent", 0.8], ["oil burette", 0.6], ["repeat amount", 0.6]),
  acidValue: of("oil used mean value content on stage for", ["acidValue", 1], ["acid value", 0.95], ["acid", 0.5]),
  ffa: of("content oil oleic value mean acid used for", ["ffa", 1], ["acid content", 0.75], ["acid oleic", 0.8], ["acid", 0.6], ["oleic", 0.6]),
  ffaUncertainty: of("ffa value", ["uncertainty", 0.95], ["uncertainty ffa", 1.05]),
  verdict: of("titre repeat", ["verdict", 0.75]),
  oilAmount: of("used batch total for", ["oil", 0.55], ["oil amount", 0.9], ["oil volume", 0.9], ["oil used", 0.68], ["oil batch", 0.7], ["batch amount", 0.85], ["batch volume", 0.85], ["feedstock", 0.6], ["feedstock amount", 0.9], ["feedstock volume", 0.9], ["amount", 0.55], ["volume", 0.5], ["batch", 0.35], ["container", 0.3], ["used", 0.4], ["dose", 0.35], ["oil production", 0.8], ["oil needed", 0.75], ["oil weighed", 0.6]),
  amountUnit: of("oil amount", ["unit", 0.95]),
  oilMass: of("batch used total", ["oil mass", 0.75], ["batch mass", 0.75], ["feedstock mass", 0.75], ["oil", 0.6], ["mass", 0.4], ["batch", 0.35], ["oil used", 0.5], ["oil amount", 0.6]),
  density: of("oil sample", ["density", 1], ["mass perLitre", 0.9]),
  temperature: of("oil reaction production batch", ["temperature", 1]),
  base: of("used lye catalyst base", ["lye", 0.75], ["lye kind", 1], ["catalyst", 0.75], ["catalyst kind", 1], ["base", 0.7], ["base kind", 1.1], ["kind standard", 0.85]),
  lyeLot: of("id", ["lye lot", 1], ["lye batch", 1], ["lye bag", 1], ["lye container", 0.9], ["catalyst lot", 1], ["catalyst batch", 1], ["bag", 0.7]),
  assay: of("lye catalyst base content", ["purity", 1], ["lye content", 0.75], ["catalyst content", 0.7], ["lye strength", 0.5], ["content", 0.4], ["lye", 0.35], ["strength", 0.3]),
  baseCharge: of("lye catalyst base oil amount for", ["standard dose", 1], ["standard amount", 0.95], ["standard lye", 0.8], ["standard catalyst", 0.8], ["base dose", 0.95], ["base amount", 0.9], ["newOil dose", 0.97], ["newOil", 0.8], ["newOil amount", 0.95], ["dose", 0.75], ["dose lye", 0.72], ["base", 0.68], ["standard", 0.25], ["standard content", 0.8]),
  acidDose: of("lye catalyst base needed dose amount mass for", ["extra", 0.75], ["extra lye", 0.95], ["extra catalyst", 0.95], ["extra acid", 0.97], ["extra ffa", 0.97], ["for acid", 0.9], ["for ffa", 0.95], ["acid lye", 0.85], ["ffa lye", 0.85], ["acid dose", 0.85], ["ffa dose", 0.85], ["neutralise", 0.9], ["neutralise lye", 1], ["acid content", 0.6], ["ffa content", 0.5], ["for neutralise", 0.9]),
  reactionDose: of("lye catalyst base needed dose amount mass for", ["reaction", 0.8], ["reaction lye", 0.97], ["reaction catalyst", 0.97], ["reaction dose", 0.9], ["for reaction", 0.9], ["base lye", 0.75], ["standard lye", 0.65], ["standard amount", 0.5], ["newOil lye", 0.8], ["base dose", 0.5], ["catalyst content", 0.6], ["lye oil", 0.65], ["for newOil", 0.7]),
  catalyst: of("batch used lye base amount mass catalyst", ["lye total", 0.95], ["catalyst total", 0.95], ["base total", 0.9], ["base needed", 0.9], ["lye needed", 0.95], ["catalyst needed", 0.95], ["lye amount", 0.88], ["catalyst amount", 0.88], ["lye mass", 0.85], ["catalyst mass", 0.85], ["lye dose", 0.8], ["catalyst dose", 0.8], ["lye", 0.64], ["catalyst", 0.64], ["base", 0.5], ["total", 0.5], ["total dose", 0.6], ["total amount", 0.5], ["dose", 0.5], ["needed", 0.5]),
  catalystRate: of("lye catalyst base amount for oil", ["lye perLitre", 0.97], ["catalyst perLitre", 0.97], ["dose perLitre", 0.9], ["amount perLitre", 0.7], ["total dose", 0.75], ["lye dose", 0.72], ["catalyst dose", 0.72], ["dose", 0.6], ["total perLitre", 0.9], ["lye total", 0.62], ["catalyst total", 0.62], ["total", 0.5], ["lye", 0.5], ["catalyst", 0.5], ["base perLitre", 0.9]),
  methanol: of("amount volume used total needed mass batch for dose", ["methanol", 1], ["alcohol", 0.78], ["alcohol methanol", 1]),
  weighed: of("lye catalyst base mass amount", ["weighed", 0.8], ["weighed lye", 1], ["weighed catalyst", 1], ["lye used", 0.75], ["catalyst used", 0.75], ["weighStep", 0.6], ["weighStep reading", 0.85], ["weighed reading", 0.85]),
  waterContent: of("content oil value sample by water", ["water", 0.9]),
  dish: of("mass used water", ["dish", 0.8], ["dish empty", 1], ["dish blank", 1]),
  dishBefore: of("oil sample mass used time with water", ["dish before", 1], ["dish oil", 0.95], ["dish sample", 0.95], ["before time", 0.75]),
  dishAfter: of("oil sample mass used time with water minus", ["dish afterwards", 1.02], ["afterwards time", 0.75]),
  litresMade: of("volume amount fuel batch total", ["made", 0.8], ["fuel", 0.78], ["fuel made", 0.97], ["production", 0.55], ["batch made", 0.8]),
  titreStep: of("titre burette", ["readStep", 1.1]),
  massStep: of("sample mass", ["weighStep", 1.2]),
  titrantDoubt: of("strength", ["titrant uncertainty", 1.6]),
  route: of("production", ["route", 0.8]),
  note: of("batch oil repeat who", ["note", 1], ["note who", 1.2]),
  number: of("repeat", ["id", 0.75], ["row", 0.75], ["row id", 0.85]),
};

/** These say how, how much or which, and not what: beside an unknown word they name nothing. */
export const modifiers: ReadonlySet<Meant> = new Set<Meant>([
  "standard",
  "extra",
  "total",
  "needed",
  "used",
  "kind",
  "content",
  "on",
  "by",
  "for",
  "amount",
  "id",
  "repeat",
  "reading",
  "newOil",
  "value",
  "who",
]);

/** What these mean is no role: nothing of the kind is worked out here, or it is not the figure itself. */
export const elsewhere: ReadonlySet<Meant> = new Set<Meant>([
  "rough",
  "target",
  "running",
  "money",
  "time",
  "look",
  "glycerol",
  "water",
  "dish",
  "gas",
  "soap",
  "wash",
]);
