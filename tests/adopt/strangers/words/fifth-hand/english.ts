/** A fifth hand's English. */
import type { Language } from "../role-words";

export const english: Language = {
  name: "English",
  headings: {
    number: "Entry|S. No.|Ref.|Log no.|#|Row|Sl. No.",
    date: "Date|Date tested|Day|Date of test|Titrated on|When|Date done",
    lot: "Oil lot|Source|Drum|Tote|Load no.|Restaurant|IBC no.|Oil from",
    batch: "Batch ref|Run|Brew no.|Batch ID|Cook|Reactor run|Batch number",
    oil: "Oil type|Feedstock|Kind of oil|Type of fat|What oil|WVO type|Oil used",
    operator: "Tested by|Initials|Analyst|Student|Who by|Operator|Done by|Crew",
    titrantBase:
      "Titrant|Lye in titrant|Titration base|Reagent in burette|Titrating with|Standard base",
    indicator: "Indicator|Ind.|End point by|Indicator used|Colour indicator|Indicator drops",
    molarity:
      "Titrant M|Molarity|Conc. of titrant (mol/L)|N of titrant|Normality|Titrant conc. mol/dm3|Molarity of base",
    strength:
      "Titrant g/L|g lye per L water|Ref soln g/l|Titrant strength (g/L)|Grams in 1 L|Reference solution, g/L|Lye soln g/litre",
    sampleMass:
      "Sample wt|Oil weighed|Mass of oil|Oil sample|Weight of sample|Test portion|Sample|Wt of oil taken",
    sampleVolume:
      "Sample|Oil sample|Volume of oil titrated|Oil in test|Aliquot|Sample size|Oil pipetted|Oil taken",
    titre:
      "Titre #|Trial #|Burette #|mL lye used #~|T#|Reading #|Titration #|Lye used #|Vol. of base #",
    blank: "Blank|Blank titration|IPA blank|Solvent blank|Blank titre|No oil|Alcohol only",
    meanTitre:
      "Mean titre|Average|Avg titration|Mean vol.|Average of titres|Ave. mL~|Mean reading|Avg",
    correctedTitre:
      "Titre less blank|Net mL~|Net titre|Corrected titre|Avg minus blank|Blank-corrected|True titration",
    acidValue:
      "Acid value|AV|Acid number|TAN|Acid no. mg KOH/g~|AV (mg KOH/g)~|Acidity (mg KOH/g)~",
    ffa: "FFA|% FFA~|Free fatty acid|FFA %~|FFA as oleic|Free acid|FFA (oleic) %~|Free fatties",
    oilAmount:
      "Oil|Oil in batch|WVO|Batch size|Oil to process|Qty of oil|Oil charged|Veg oil|Oil in",
    oilMass: "Oil weight|Mass of oil in batch|Weight of oil in|Oil on scales",
    amountUnit: "Unit|Units|L or gal|Measured in",
    density: "Density|Oil density|SG|Sp. gr.|Specific gravity|Density of oil|Weight per litre",
    temperature: "Temp|Oil temp|Reaction temp|Temperature|Processing temp|Temp of oil|Reactor temp",
    base: "Lye|Catalyst|Type of lye|KOH/NaOH|Which lye|Caustic or potash|Catalyst type|Base used",
    lyeLot: "Lye tub|Lye lot|KOH drum no.|Caustic bag",
    assay: "Purity|Lye purity|% pure~|Assay|KOH assay|Lye %~|Caustic purity|Flake strength",
    baseCharge:
      "Base rate|Base charge|Lye for virgin oil|Starting dose|Base amount|Stoich amount|Fresh oil lye|Virgin rate",
    acidDose:
      "Lye for FFA|Extra lye|Lye to neutralise acid|Neutralising lye|FFA lye|Acid share|To neutralise",
    reactionDose:
      "Lye for reaction|Reaction lye|Base lye|Lye for the oil|Transesterification lye|Lye as catalyst|Catalyst portion",
    catalystRate:
      "Lye per litre|Total per litre|Lye rate|Lye/L oil|Dose per litre|Catalyst per L of oil|Total rate|Lye, grams per litre~",
    catalyst:
      "Total lye|Lye|Lye needed|KOH to weigh out|Lye to add|Catalyst|Catalyst total|Caustic|Lye required",
    weighed: "Weighed|Lye weighed|Actual lye|Lye put in|Weighed out|Actually used|Scale reading",
    methanol:
      "Methanol|MeOH|Meth|Methanol used|Methanol added|Alcohol|Methanol required|Meth to add",
    litresMade:
      "Biodiesel|Bio made|Yield|Fuel out|Finished fuel|BD produced|Fuel made|Output|Biodiesel collected",
    route: "Route|Process|One or two stage|Method",
    note: "Notes|Remarks|Comments|Observations|What happened|Any problems|Remark|How it went",
    rough: "Rough titre|Rough|Trial run|Range finder|First rough go|Rough titration|Approx. titre",
    target: "Target FFA|Max FFA|FFA limit|Aim|FFA should be below|Spec. FFA|Upper limit",
    price: "Cost|Price|Cost of methanol|Rs per litre|Paid|Cost per gal|Oil cost|$",
    time: "Time|Hours settled|Reaction time|Settling time|Hrs mixing|Mix time|Time to settle|Start time",
    colour: "Colour|Color|Appearance|Looks|Clarity|Shade",
    glycerol: "Glycerol|Glycerine|Glyc drained|Glycerin out|Byproduct|Gly",
    waterContent: "Water ppm|Water|Moisture|H2O ppm|Water content|Moisture ppm|Karl Fischer",
    soap: "Soap ppm|Soap|Soap test|Soap content|Residual soap",
    "running total":
      "Running total|Total so far|Litres to date|Cumulative|YTD|Total this year|Cum. litres",
  },
  units: {
    mL: "mL|ml|cc|cm3|mls",
    g: "g|grams|gm|gms",
    L: "L|litres|l|ltr|ltrs",
    kg: "kg|kgs|Kg|kilos",
    "US gal": "US gal|US gals|gal (US)|U.S. gallons",
    "imp gal": "imp gal|UK gal|Imperial gallons|imp. gals",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg KOH per g",
    "%": "%|pct|percent",
    "g/L": "g/L|g/l|g per litre|grams/litre",
    "kg/L": "kg/L|g/mL|kg/l|g/cc",
    C: "°C|C|deg C|degC",
    lb: "lb|lbs|pounds",
    oz: "oz|ounces",
  },
  commas: false,
};
