/** Words of the trade, with other spellings and names under which people look for them. */
import { type Guide, text } from "./guide";

/** Word, also called, meaning. */
// prettier-ignore
const words: readonly (readonly [string, string, string])[] = [
  ["acid step", "pretreatment, esterification", "Turning free acid into biodiesel with methanol and sulfuric acid, before the base. [PRETREATMENT](pretreatment.html)"],
  ["acid value", "acid number, AV, AN, neutralisation number", "Milligrams of KOH that would neutralise the acid in one gram of oil, whatever base was in the burette. Dose from this. [ACIDVALUE](acidvalue.html)"],
  ["allowed acid", "limit, FFA limit", "The % FFA, as oleic, above which no dose is given until you type a higher figure. [ROUTE](route.html)"],
  ["as weighed", "as is, technical grade", "The lye as it comes out of the bag, water and all. Pure grams divided by the assay."],
  ["assay", "strength on the label, content", "How much of what you weigh is the base itself, in percent: KOH of 90 % holds 90 g in 100 g."],
  ["base", "alkali, caustic", "What neutralises acid: KOH, NaOH, or a methoxide of either. It is what counts in the titrant and in the lye."],
  ["base charge", "base amount, catalyst charge", "The pure base for the reaction, beside what the acid takes: percent of the oil's mass, or g/L. [CHARGEPERCENT](chargepercent.html)"],
  ["batch", "brew, cook, run", "The oil that is processed at once."],
  ["blank", "blank titration, solvent correction", "What the solvent alone uses of the titrant. [CORRECTED](corrected.html)"],
  ["burette", "buret", "A graduated tube with a tap, read to a tenth or a twentieth of a millilitre."],
  ["check a titrant", "standardise, standardize, set, factor of a titrant", "Measure a titrant's strength against something known. [How](titrant.html)"],
  ["concordant", "agreeing titres", "Within a limit of each other. [CONCORDANT](concordant.html)"],
  ["corrected titre", "net titre, titre less blank", "Mean titre less mean blank. [CORRECTED](corrected.html)"],
  ["end point", "endpoint, colour change", "The first colour that stays as long as the method says."],
  ["expanded uncertainty", "±, confidence interval, error bar, U", "The half-width of an interval that holds the true value 95 times in 100. [FFAUNCERTAINTY](ffauncertainty.html)"],
  ["free fatty acid", "FFA, % FFA, acidity, free acid", "Fatty acid that is not bound in fat, in percent of the oil's mass, as if all of it were one acid: oleic unless another is named. [FFAPERCENT](ffapercent.html)"],
  ["glycerol", "glycerin, glycerine", "What is left of the fat when its acids have gone into biodiesel; the heavy layer."],
  ["indicator", "phenolphthalein, turmeric, colour drops", "A dye that changes colour at the end point."],
  ["KHP", "potassium hydrogen phthalate, KHPh, potassium biphthalate", "The solid acid against which a titrant is checked. [MOLARITYFROMKHP](molarityfromkhp.html)"],
  ["litre", "liter, l, L", "1000 mL. A US gallon is 3.785 of them, an imperial (UK) gallon 4.546. [OILMASS](oilmass.html)"],
  ["logbook", "batch book, record sheet", "The tables, yours or ours, in which titrations and batches are kept. [Adopting one](logbook.html)"],
  ["lot", "drum, delivery", "Oil, or lye, that was bought or collected at once and is alike throughout."],
  ["lye", "caustic soda, caustic potash, NaOH, KOH, sodium hydroxide, potassium hydroxide", "What is weighed out to bring base into a batch or a titrant: as bought, never quite pure."],
  ["lye for the batch", "catalyst, dose, total lye", "As weighed, for the acid and for the reaction together. The pane says lye; functions, and columns of the sheets, say catalyst. [CATALYST](catalyst.html)"],
  ["methanol", "methyl alcohol, wood alcohol", "The alcohol that reacts; poisonous and flammable. [METHANOL](methanol.html)"],
  ["methoxide", "sodium methylate, potassium methylate, NaOCH3, KOCH3", "Base already reacted with methanol; sold as a solution or a powder. See the [cautions](cautions.html)."],
  ["neutralised solvent", "neutralized alcohol", "Solvent brought to the end point's colour before the oil goes in; it needs no blank."],
  ["oil", "fat, feedstock, used cooking oil, UCO, waste vegetable oil, WVO, yellow grease", "What is made into biodiesel."],
  ["omit", "leave out, drop, reject, discard", "Take a reading out of the result, by your own decision, with the reason recorded beside it."],
  ["partner copy", "plain copy, export", "The workbook in plain formulas, for somebody without Titrebook. [Sharing](sharing.html)"],
  ["plain formula", "twin", "The same arithmetic in functions that every spreadsheet program has."],
  ["re-check", "audit, verification", "Every row of a logbook worked out again and compared with what it holds. [How](logbook.html)"],
  ["read to", "graduation, step, mark, resolution, division", "The smallest difference you read on the burette."],
  ["reading", "burette reading", "One figure as read: a titre or a blank."],
  ["replicate", "repeat, parallel, duplicate", "The same titration done again from the weighing on. [REPLICATES](replicates.html)"],
  ["soap", "", "What base and free acid become. [SOAP](soap.html)"],
  ["strength", "molarity, concentration, mol/L, M, normality (N) for these bases", "Moles of base in a litre of titrant; as grams of lye in a litre, what was dissolved. [MOLARITY](molarity.html)"],
  ["sulfuric acid", "sulphuric acid, H2SO4", "The catalyst of the acid step; it eats skin and eyes. [PRETREATMENT](pretreatment.html)"],
  ["suspect", "outlier, flyer, bad titre", "A reading too far from the others for the scatter. [OUTLIERS](outliers.html)"],
  ["titrant", "titration solution, standard solution", "The solution in the burette."],
  ["titration", "titrating, titre test, acid test", "Adding titrant of known strength until the colour stays. [How](first-titration.html)"],
  ["titre", "titer, titration volume", "Millilitres of titrant used by one sample."],
  ["transesterification", "the reaction, methanolysis", "Oil and methanol become biodiesel and glycerol."],
  ["triglyceride", "triacylglycerol, fat molecule", "Glycerol with three fatty acids: what oil mostly is."],
  ["weigh-out", "recipe, batch sheet", "Everything to weigh or measure for one batch. [BATCH](batch.html)"],
];

export const glossary: Guide = {
  file: "glossary.html",
  title: "Glossary",
  lead: "Words of the trade, other names for them, and where they are used.",
  parts: [
    text(
      "The word in the first column is the one on the screens of Titrebook; those in the second are also called so.",
    ),
    { kind: "words", words },
  ],
};
