/**
 * Which words of a heading speak for which role, and how much: 1 leaves no doubt, 0.5 needs the unit or
 * the figures to agree. Headings come here without units and numbers, in lower case (heading.ts).
 */
import type { RoleId } from "./roles";

export interface Word {
  readonly pattern: RegExp;
  readonly weight: number;
}

const lye =
  "(?:koh|naoh|naoch|koch|methoxide|methylate|lye|caustic|potash|base|alkali|hydroxide|catalyst|cat)";
const oil = "(?:oil|wvo|uco|svo|fat|feed|feedstock|grease|tallow)";
const fuel = "(?:biodiesel|bio|bd|fuel|diesel|fame|product)";
const need = "(?:needed|need|required|req|to add|add|to weigh|total|dose|in all|all)";

const words = (...pairs: readonly (readonly [string, number])[]): Word[] =>
  pairs.map(([source, weight]) => ({ pattern: new RegExp(`^(?:${source})$`), weight }));

/** Anything before or after. */
const any = "(?:.* )?";
const more = "(?: .*)?";

// prettier-ignore
export const vocabulary: Partial<Record<RoleId, readonly Word[]>> = {
  date: words([`${any}date${more}`, 1], [`${any}(?:day|when|dt)${more}`, 0.8], ["on|entered", 0.4]),
  lot: words([`${any}lots?${more}`, 0.9], [`${any}(?:drum|tote|barrel|ibc|container|cubie|tank|keg|jug|can|vessel)s?${more}`, 0.85], [`${any}(?:sample|${oil}) (?:id|ref|no|number|code|name|#)`, 0.85], [`(?:sample|${oil}|source|collected|collection|origin)`, 0.45], ["id|ref|code", 0.4], [`${any}(?:where|from)${more}`, 0.4]),
  batch: words([`${any}batch(?:es)?${more}`, 0.8], [`${any}(?:brew|cook|process run|run|reactor run)(?: (?:no|id|number|#|ref))?`, 0.75], ["id|ref", 0.3]),
  oil: words([`${any}(?:type|kind|sort) of ${oil}`, 1], [`${oil} (?:type|kind|sort)`, 1], ["feedstock|feed stock", 0.9], [oil, 0.75], ["source|type|feed material", 0.5]),
  operator: words([`${any}(?:operator|initials|tester|analyst|technician|chemist)`, 1], [`${any}by`, 0.85], ["who|name|person|staff|crew", 0.75]),
  stage: words(["stage|state|condition|treatment|status|step", 0.7]),
  titrantBase: words([`${any}(?:titrant|burette)(?: ${lye}| type| used)?`, 0.75], [`${any}(?:titrated with|titrating ${lye}|in (?:the )?burette|${lye} in (?:the )?burette)`, 0.95]),
  indicator: words([`${any}indicator`, 1]),
  molarity: words(["n|m|c", 0.6], [`${any}(?:normality|molarity|molar|molar conc|norm)${more}`, 1], [`(?:titrant|burette|solution|reagent) ${lye}|${lye} (?:titrant|in (?:the )?burette)`, 0.75], [`(?:${lye}|titrant|titrant conc|titrant strength|conc|concentration|strength|${lye} (?:conc|strength)|solution|reagent) (?:n|m)`, 0.95], [`(?:${lye} |titrant |solution )?(?:conc|concentration|strength|factor)`, 0.55], [`titrant|${lye}|solution|reagent`, 0.4]),
  strength: words([`${any}(?:titrant|solution|reagent|lye water|koh water|burette|reference|stock)${more}`, 0.7], [`${any}(?:conc|concentration|strength)`, 0.55], [`${lye}`, 0.35], [`${lye} solution`, 0.7]),
  titre: words([`(?:of )?${lye} (?:to (?:the )?)?(?:end ?point|colou?r|pink)`, 0.9], [`${any}(?:titre|titer|titration|titr|titrated|titrate)s?${more}`, 0.75], ["t|v", 0.6], [`${any}(?:rep|replicate|reading|trial|run|test|try|burette|determination)${more}`, 0.6], [`(?:${lye}|titrant)(?: used| added)?`, 0.55], ["used|volume used|vol used|burette volume|ml", 0.5]),
  blank: words([`${any}(?:blank|blk)${more}`, 1], [`${any}(?:control|zero|zero point)${more}`, 0.7], [`${any}(?:solvent|alcohol|ipa|isopropanol|ethanol)(?: only| alone| titre| titration)?`, 0.65], ["b", 0.6]),
  meanTitre: words([`${any}(?:mean|average|avg|ave|av)${more}`, 0.75], [`(?:mean|average|avg|ave|av) (?:titre|titer|titr|titration|reading|of .*)`, 0.95], ["(?:mean|average|avg|ave) used", 0.95], ["(?:titre|titer|titration) (?:mean|average|avg|av)", 0.95]),
  correctedTitre: words([`${any}(?:net|corrected|corr|nett)${more}`, 0.95], [`${any}(?:minus|less|after|without|wo) (?:the )?(?:blank|blk|control)`, 1], ["vc|v net|difference|diff", 0.6]),
  sampleMass: words([`${any}(?:sample|portion|specimen|aliquot)(?: of ${oil}| ${oil})?(?: (?:mass|weight|wt|size|w|m|amount))?`, 0.65], [`${any}(?:sample|portion|specimen) (?:mass|weight|wt|w)`, 0.9], [`(?:mass|weight|wt|w|m)(?: (?:of )?(?:${oil}|sample))?`, 0.55], [`${oil} (?:sample|mass|weight|wt|titrated|tested)`, 0.55], [`(?:of )?${oil}(?: titrated| tested| sample)?`, 0.5], ["own mass", 0.8]),
  sampleVolume: words([`${any}(?:sample|portion|specimen|aliquot)(?: of ${oil}| ${oil})?(?: (?:vol|volume|size|amount|taken))?`, 0.65], [`${any}(?:sample|aliquot) (?:vol|volume)`, 0.9], [`(?:of )?${oil}(?: titrated| tested| sample| used)?`, 0.55], [`(?:vol|volume)(?: (?:of )?(?:${oil}|sample))?`, 0.45]),
  acidValue: words([`${any}(?:acid) (?:value|val|no|number|num|index)${more}`, 1], ["av|an|tan|acid v", 0.9], ["(?:av|acid v) (?:used|taken|found|in|now|before|after|oil|of (?:the )?oil)", 0.95], ["acidity|acid", 0.55]),
  ffa: words([`${any}ffas?${more}`, 0.9], [`${any}free (?:fatty )?acids?${more}`, 1], ["acidity|acid|acid content|oleic|oleic acid", 0.6]),
  ffaUncertainty: words([`${any}(?:plusminus|uncertainty|error|err|tolerance)${more}`, 0.95]),
  verdict: words([`${any}(?:verdict|agree|agreement|concordant|concordance|ok|ok\\?|good|good\\?|pass|repeatable|check)${more}`, 0.75]),
  oilAmount: words([`${any}(?:drum|tote|barrel|ibc|container|cubie|tank|keg|jug|can|bucket|pail|bin)s?${more}`, 0.3], [`${any}(?:amount|volume|vol|qty|quantity|size) (?:of )?(?:${oil}|batch)${more}`, 0.85], [`(?:${oil}|batch|feed|load|charge)(?: (?:amount|volume|vol|qty|quantity|size|in|used|processed|loaded))?`, 0.6], [`(?:of )?${oil}`, 0.5], ["amount|qty|quantity|volume|vol|size|batch size", 0.55], [`(?:used|processed|loaded) ${oil}`, 0.6]),
  amountUnit: words([`${any}(?:units?|uom|measure|measured in)${more}`, 0.95]),
  oilMass: words([`${any}(?:${oil}|batch|feed|load)(?: (?:mass|weight|wt|in|used))?`, 0.62], [`(?:mass|weight|wt)(?: of)? (?:${oil}|batch)`, 0.65], ["mass|weight|wt", 0.4]),
  density: words([`${any}(?:density|dens|sg|specific gravity|rho|rel dens|relative density|gravity)`, 1]),
  temperature: words([`(?:${oil} )?at(?: c)?`, 0.8], [`${any}(?:temp|temperature|temps|heat)${more}`, 1], ["deg|t", 0.5]),
  base: words([`${any}(?:which|what|type of|kind of) ${lye}`, 1], [`${lye} (?:type|kind|used)`, 1], ["(?:koh|naoh) or (?:koh|naoh)", 1], [lye, 0.75]),
  lyeLot: words([`${lye} (?:lot|bag|batch|drum|no|source)${more}`, 1], ["bag(?: no)?", 0.7]),
  assay: words([`${any}(?:assay|purity|pure|active)${more}`, 1], [`${lye} (?:strength|content|quality)`, 0.55]),
  baseCharge: words([`${any}(?:base|basic|standard|normal|usual|virgin) (?:charge|rate|dose|amount|lye|level)${more}`, 1], [`(?:${lye} )?charge(?: of ${oil})?`, 0.8], [`(?:${lye} )?base(?: ${lye})?(?: (?:pure|as weighed|flakes?|of (?:the )?${oil}|on ${oil}|per ${oil}))+|${lye} base`, 0.95], ["charge of oil", 0.9], [`${any}(?:new|virgin|fresh|clean|refined) ${oil}`, 0.85], ["base", 0.7]),
  acidDose: words([`${any}(?:extra|additional)${more}`, 0.85], [`${any}(?:for|to neutrali[sz]e) (?:the )?(?:acid|acids|ffa|ffas|neutrali[sz]ation)`, 1.05], [`${any}neutrali[sz](?:ing|er|ation)${more}`, 0.95], [`(?:acid|ffa) (?:part|share|${lye})`, 1]),
  reactionDose: words([`${any}(?:for )?(?:the )?(?:reaction|transesterification)${more}`, 0.95], [`base (?:part|share|${lye}|amount)`, 0.95], [`${lye} for (?:new|fresh) ${oil}`, 0.8]),
  catalyst: words([`${any}${lye}${more}`, 0.5], [`${any}(?:${lye} ${need}|${need} ${lye})${more}`, 0.95], [lye, 0.65], ["dose|total|total dose|to weigh|weigh out|to add", 0.6]),
  catalystRate: words([`${any}${lye}${more}`, 0.5], [`${any}(?:${lye} ${need}|${need} ${lye}|total dose|dose total|dose)`, 0.7], [`${lye} per (?:litre|liter|l|kg)(?: .*)?`, 0.9]),
  methanol: words([`${any}(?:meoh|methanol|meth|methyl alcohol)${more}`, 1], ["alcohol|alc", 0.8]),
  weighed: words([`${any}(?:weighed|actual|actually|weighed out|put in|used ${lye}|${lye} used|added)${more}`, 0.9]),
  litresMade: words([`${any}(?:yield|made|produced|output|out|product|drawn)${more}`, 0.85], [fuel, 0.8], [`${fuel} ${more.trim()}`, 0.7]),
  titreStep: words([`${any}(?:read to|read to nearest|graduation|division|burette step|reading step)`, 1.1]),
  massStep: words([`${any}(?:weighed to|weighed to nearest|balance step|balance reads to)`, 1.2]),
  titrantDoubt: words([`${any}titrant plusminus`, 1.6]),
  route: words(["route|advice|process|what to do|plan|method", 0.8]),
  note: words([`${any}(?:notes?|remarks?|comments?|memo|observations?|obs|anything.*|misc|problems?)${more}`, 1]),
  number: words(["#|no|nr|row|entry|entry no|ser|serial|num|number|line|s no", 0.75]),
};
