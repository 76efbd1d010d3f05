/** Words of the trade, with other spellings and names under which people look for them. */
import { type Guide, text } from "./guide";

/** Word, also called, meaning. */
// prettier-ignore
const words: readonly (readonly [string, string, string])[] = [
  ["acid value", "acid number, AV, AN, neutralisation number", "Milligrams of KOH that would neutralise the acid in one gram of oil, whatever base was in the burette. [ACIDVALUE](acidvalue.html)"],
  ["assay", "purity, strength on the label, content", "How much of what you weigh is the base itself, in percent: KOH pellets of 90 % hold 90 g in 100 g."],
  ["base charge", "catalyst charge, base amount", "The pure base for the reaction, beside what the acid takes: percent of the oil's mass, or g/L. [CHARGEPERCENT](chargepercent.html)"],
  ["blank", "blank titration, solvent correction", "What the solvent alone uses of the titrant. [CORRECTED](corrected.html)"],
  ["burette", "buret", "A graduated tube with a tap, read to a tenth or a twentieth of a millilitre."],
  ["catalyst", "lye, caustic, KOH, NaOH, methoxide", "The base that makes methanol and oil react. [CATALYST](catalyst.html)"],
  ["concordant", "agreeing titres", "Within a limit of each other. [CONCORDANT](concordant.html)"],
  ["corrected titre", "net titre, titre less blank", "Mean titre less mean blank. [CORRECTED](corrected.html)"],
  ["end point", "endpoint, colour change", "The first colour that stays as long as the method says."],
  ["expanded uncertainty", "±, confidence interval, error bar, U", "The half-width of an interval that holds the true value 95 times in 100. [FFAUNCERTAINTY](ffauncertainty.html)"],
  ["free fatty acid", "FFA, acidity, free acid", "Fatty acid that is not bound in fat, in percent of the oil's mass, as if all of it were one acid: oleic unless another is named. [FFAPERCENT](ffapercent.html)"],
  ["glycerol", "glycerin, glycerine", "What is left of the fat when its acids have gone into biodiesel; the heavy layer."],
  ["graduation", "step, resolution, division", "The smallest difference one reads to."],
  ["indicator", "phenolphthalein, colour drops", "A dye that changes colour at the end point."],
  ["KHP", "potassium hydrogen phthalate, KHPh, potassium biphthalate", "The solid acid against which titrant is measured. [MOLARITYFROMKHP](molarityfromkhp.html)"],
  ["litre", "liter, l, L", "1000 mL. A US gallon is 3.785 of them, a UK gallon 4.546. [OILMASS](oilmass.html)"],
  ["lye", "caustic soda, caustic potash, NaOH, KOH, sodium hydroxide, potassium hydroxide", "Strong base as bought."],
  ["methanol", "methyl alcohol, wood alcohol", "The alcohol that reacts; poisonous and flammable. [METHANOL](methanol.html)"],
  ["methoxide", "sodium methylate, potassium methylate, NaOCH3, KOCH3", "Base already reacted with methanol; sold as a solution or a powder."],
  ["molarity", "mol/L, M, normality (N) for these bases", "Moles of base in a litre of titrant. [MOLARITY](molarity.html)"],
  ["neutralised solvent", "neutralized alcohol", "Solvent brought to the end point's colour before the oil goes in; it needs no blank."],
  ["oil", "fat, feedstock, used cooking oil, UCO, waste vegetable oil, WVO, yellow grease", "What is made into biodiesel."],
  ["outlier", "flyer, suspect reading, bad titre", "A reading too far from the others for the scatter. [OUTLIERS](outliers.html)"],
  ["pretreatment", "acid step, esterification", "Turning free acid into biodiesel with methanol and sulfuric acid, before the base. [PRETREATMENT](pretreatment.html)"],
  ["replicate", "repeat, parallel, duplicate", "The same titration done again from the weighing on. [REPLICATES](replicates.html)"],
  ["soap", "", "What base and free acid become. [SOAP](soap.html)"],
  ["standardise", "standardize, set, factor of a titrant", "Measure a titrant's strength against something known. [How](titrant.html)"],
  ["sulfuric acid", "sulphuric acid, H2SO4", "The catalyst of the acid step; burns."],
  ["titrant", "titration solution, standard solution", "The solution in the burette."],
  ["titration", "titrating, titre test, acid test", "Adding titrant of known strength until the colour stays. [How](first-titration.html)"],
  ["titre", "titer, burette reading, titration volume", "Millilitres of titrant used."],
  ["transesterification", "the reaction, methanolysis", "Oil and methanol become biodiesel and glycerol."],
  ["triglyceride", "triacylglycerol, fat molecule", "Glycerol with three fatty acids: what oil mostly is."],
];

export const glossary: Guide = {
  file: "glossary.html",
  title: "Glossary",
  lead: "Words of the trade, other names for them, and where they are used.",
  parts: [
    text("The functions and the pane use the word in the first column."),
    { kind: "words", words },
  ],
};
