/**
 * Headings as home-made logbooks write them, by what they mean. Written down before the recogniser's
 * words were; every third of each list is held out: the words were tuned without looking at how those
 * fare, and their figures are reported apart. `#` stands for the number of a repeated column.
 */
import type { RoleId } from "../../../src/adopt/recognising/roles";

// prettier-ignore
export const headings: Partial<Record<RoleId, readonly string[]>> = {
  date: ["Date", "Day", "Date titrated", "When", "Test date", "Date of test", "Titration date", "Dt", "Date (dd/mm)", "Sample date", "Day done", "DATE"],
  lot: ["Lot", "Lot no.", "Drum", "Drum no", "Oil lot", "Source drum", "Sample ID", "Tote", "Barrel #", "Oil ref", "IBC", "Container", "LOT NUMBER", "Drum ID"],
  batch: ["Batch", "Batch no.", "Batch #", "Run no", "Brew", "Brew no.", "Process run", "Batch ID", "Batch number"],
  oil: ["Oil type", "Feedstock", "Type of oil", "Kind of oil", "Fat", "Oil", "Oil kind", "Feed", "Feedstock type"],
  operator: ["Operator", "By", "Who", "Initials", "Done by", "Tested by", "Name", "Person", "Titrated by"],
  titrantBase: ["Titrant", "Titrant base", "Burette base", "Base in burette", "Titrated with", "Titrating lye", "In burette"],
  molarity: ["N", "Normality", "M", "Molarity", "KOH N", "mol/L", "Titrant mol/L", "Conc. (M)", "Strength mol/L", "c (mol/L)", "Titrant conc N", "NaOH normality", "KOH molarity", "Titrant strength (N)", "KOH strength (mol/l)"],
  strength: ["g/L", "Titrant g/L", "Lye water g/L", "KOH g per L", "Titrant strength g/L", "Solution (g/l)", "Reference solution g/L", "Titrant % w/v", "Test solution g/L", "Titrant strength (g/L)"],
  titre: ["T#", "Titre #", "Titration # (mL)", "ml KOH #", "mL NaOH (#)", "Run # mL", "Reading #", "Rep #", "Burette # ml", "V#", "Titration ##", "Test # mL", "Replicate #", "Used mL #", "Titer # (ml)", "Titr. #", "T# mL", "Titre # (ml)"],
  blank: ["Blank", "Blank mL", "B0", "Solvent blank", "Blank titre", "Blank (ml)", "IPA blank", "Zero", "V0", "Control mL", "Alcohol only mL", "Blank reading", "Blk", "Blank titration mL"],
  meanTitre: ["Average", "Avg", "Mean titre", "Mean mL", "Avg titration", "Average titre (ml)", "Titre mean", "Mean", "Avg mL", "Av. titration mL"],
  correctedTitre: ["Net", "Net titre", "Corrected titre", "Titre - blank", "Titre less blank", "Net mL", "Corrected mL", "Avg minus blank", "Net titration mL", "Corr. titre (ml)", "Mean less blank"],
  sampleMass: ["Sample g", "g oil", "Oil weight (g)", "Mass g", "Sample weight", "Wt oil g", "W (g)", "Sample mass", "Grams of oil", "Portion g", "Oil sample (g)", "m (g)", "Sample wt (g)", "Test portion g"],
  sampleVolume: ["Sample mL", "Oil mL", "mL oil", "Oil sample (ml)", "Vol oil", "Sample volume", "Sample vol mL", "Aliquot mL", "cc oil", "Sample (ml)", "mL of oil titrated"],
  acidValue: ["AV", "Acid value", "Acid no.", "Acid number", "AN", "TAN", "mg KOH/g", "Acid value (mg KOH/g)", "Acid No mgKOH/g", "A.V.", "Acidity mg/g", "Acid val"],
  ffa: ["FFA", "FFA %", "% FFA", "Free fatty acid %", "FFA (oleic)", "Free fatty acids", "%FFA as oleic", "Acidity %", "Acid %", "FFA pct", "Free acid (%)", "FFA (%)", "FFA content"],
  oilAmount: ["Oil L", "Litres oil", "Oil (litres)", "Volume of oil", "Gallons oil", "Oil qty (L)", "Batch size L", "Oil in (L)", "Oil amount", "Oil (gal)", "Batch volume L", "WVO litres", "Feed L", "Batch size (gal)", "L oil"],
  oilMass: ["Oil kg", "kg oil", "Mass of oil kg", "Oil weight kg", "Batch kg", "Batch mass kg", "Oil mass (kg)", "Oil (kg)"],
  amountUnit: ["Unit", "Units", "Measure", "Oil unit", "Unit of oil"],
  density: ["Density", "kg/L", "SG", "Specific gravity", "Density kg/L", "Dens. (g/mL)", "Oil density"],
  temperature: ["Temp", "Temp C", "Oil temp", "Temperature", "Temp (°C)", "Deg C"],
  base: ["Base", "Lye", "Catalyst type", "Which lye", "Caustic", "Lye type", "KOH or NaOH", "Alkali", "Catalyst"],
  assay: ["Assay", "Purity", "Assay %", "KOH purity %", "Lye purity", "% pure", "Purity (%)", "Lye assay %", "KOH assay"],
  baseCharge: ["Base charge", "Base g/L", "Charge %", "Standard dose g/L", "Basic amount g/L", "Charge (% of oil)", "g/L for new oil", "Base rate g/L", "Base charge (g/L)", "Basic charge %"],
  acidDose: ["Extra KOH g", "KOH for acid", "Acid part g", "Extra lye (g)", "For FFA g", "Neutralising g", "Lye for FFA", "Extra for acid g", "KOH for FFA (g)"],
  reactionDose: ["Base KOH g", "For reaction g", "Reaction lye g", "Base part g", "Lye for reaction (g)", "Reaction part g"],
  catalyst: ["KOH g", "Catalyst g", "Lye (g)", "Total KOH", "Lye needed g", "Catalyst needed (g)", "Total lye g", "KOH to add (g)", "Dose g", "NaOH total g", "Grams lye", "Catalyst total (g)", "Total catalyst"],
  catalystRate: ["Catalyst g/L", "KOH g/kg", "Lye per litre", "Total dose g/L", "g/kg catalyst", "Lye g/L total", "Catalyst g/kg"],
  methanol: ["MeOH", "Methanol", "MeOH L", "Methanol (litres)", "Alcohol L", "Meth L", "Methanol vol (L)", "Methanol L", "MeOH (l)"],
  weighed: ["Weighed", "Weighed g", "Actual g", "Lye weighed (g)", "Weighed out g", "Actual KOH g", "KOH weighed", "Actually weighed (g)"],
  litresMade: ["Yield L", "Biodiesel L", "Litres made", "Fuel out L", "BD made L", "Produced (L)", "Fuel made (L)", "Output L"],
  note: ["Notes", "Remarks", "Comment", "Comments", "Note", "Memo", "Observations", "Anything odd"],
  number: ["#", "No.", "Row", "Entry", "Nr", "Entry no"],
};

const isHeldOut = (index: number): boolean => index % 3 === 2;

/** The headings of a role, in the part that was tuned on or in the part held out. */
export const headingsOf = (role: RoleId, part: "tuned" | "held out"): readonly string[] =>
  (headings[role] ?? []).filter((_, index) => isHeldOut(index) === (part === "held out"));
