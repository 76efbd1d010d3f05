/** A seventh hand's English: farms, schools, allotments and yards in Britain, the States and Australia. */
import type { Language } from "../role-words";

export const english: Language = {
  name: "English",
  headings: {
    number: "Run|#|Ref|Entry no|Item|Test #|Line",
    date: "Date|When|Day tested|Dt|Tested on|Date run|Date drawn",
    lot: "Oil lot|Drum|Where from|Tote|Pub / cafe|Barrel ID|Collected from|IBC",
    batch: "Batch|Brew|Brew no|Batch ID|Cook #|Made as|Processor run",
    oil: "Oil|Type of grease|What oil|Feed|Oil kind|Fat or oil|Grease type",
    operator: "Who|By|Initials|Tested by|Pupil|Tech|Name|Chemist on duty",
    titrantBase:
      "Titrant|Burette filled with|Alkali used|Titrated with|Base (titration)|In the burette",
    indicator: "Indicator|Indic.|Dye|Drops of|Ind. used|Colour change with",
    molarity:
      "Titrant M|Titrant mol/L|Molarity|Burette strength (M)|Std base, M|Conc. of titrant (mol/l)|N",
    strength:
      "Titrant g/L|Test solution g/l|Grams lye per litre of titrant|Ref. solution (g/L)|Burette mix g per L|Titrating soln, g/L",
    sampleMass:
      "Oil weighed out|Sample wt|Wt of sample|Oil in flask|Test portion|Sample weight|Wt oil taken",
    sampleVolume:
      "Oil sample|Sample vol|Oil in beaker|Pipetted oil|Oil taken|Vol of oil tested|Sample size",
    titre: "Titre #|Titration #|Run #|Rep #|Burette #|Try #|T#|Reading #|Titr. #",
    blank: "Blank|Blank titre|IPA blank|Solvent only|Blk|Alcohol alone|No-oil run|Blank reading",
    meanTitre: "Mean|Avg titre|Average|Av. titration|Mean of runs|Titre, average|Avg of reps",
    correctedTitre:
      "Less blank|Titre - blank|Net titre|Corrected|Avg minus blank|Blank taken off|Nett",
    acidValue: "Acid value|AV|Acid no.|Acid number|TAN|A.V.|Acidity mg KOH per g~",
    ffa: "FFA|% FFA~|FFA result|Free fatty acid|Free fatties|FFA pct~|Acid as oleic",
    oilAmount: "Oil|Oil in|Oil to process|Oil in reactor|Batch size|WVO in|Feedstock|Oil pumped in",
    density: "Density|SG|Specific gravity|Oil density|Rel. density|Dens.",
    temperature: "Temp|Oil temp|Temp at start|Temp in tank|T|Deg C~|Tank temp",
    base: "Catalyst|Caustic|Lye type|Which lye|Na or K|Hydroxide|Type of catalyst",
    assay: "Purity|Lye purity|Assay|Flake purity|Label purity|Strength of flake|Purity of lye",
    baseCharge:
      "Base rate|Virgin oil rate|Starting amount|Base amount|New-oil lye|Base catalyst|Base figure",
    acidDose:
      "For the FFA|Extra lye|Lye for FFA|Extra for acid|To neutralise|Neutralising lye|Acid share",
    reactionDose:
      "For reaction|Base lye|Lye for reaction|Catalyst share|Plain lye|Reaction lye|For the conversion",
    catalystRate: "Lye per litre|Dose rate|Total rate|Lye rate|Catalyst per L of oil|Rate used",
    catalyst:
      "Lye|Lye needed|Total lye|Catalyst total|Lye to add|Caustic needed|Lye required|Total catalyst",
    weighed:
      "Lye actually used|Weighed out|Actual lye|On the scale|Lye put in|Actual wt|Lye weighed",
    methanol: "Methanol|MeOH|Meth|Alcohol|Methanol in|Methanol used|MeOH charge",
    litresMade: "Bio out|Yield|Fuel made|Finished fuel|Biodiesel out|Washed fuel|Output|Product",
    note: "Notes|Remarks|Comments|Obs.|Anything odd|How it went",
    rough: "Rough|Rough titre|Trial run|First go|Ranging shot|Scout",
    target: "Max FFA|FFA limit|FFA target|Aim|Limit|Goal FFA",
    price: "Cost|Paid|$|Price|Cost of oil|£ spent",
    time: "Hrs|Hours settled|Settling time|Mix time|Time (h)|Run time",
    colour: "Colour|Color|Shade|Looks|Looks like|Hue",
    glycerol: "Glycerine|Gly off|Glycerin drained|Glyc.|Byproduct|Bottoms",
    waterContent: "Water ppm|Water|H2O ppm|Moisture|Water by KF|Moisture ppm",
    soap: "Soap|Soap ppm|Soaps|Soap test|Soap after wash|Residual soap",
    "running total": "Total so far|Cumulative|Running total|YTD oil|To date|Sum",
  },
  units: {
    mL: "ml|mL|mls|cc",
    g: "g|gm|grams|gr",
    L: "L|l|litres|ltr",
    kg: "kg|kgs|kilos",
    "US gal": "US gal|gal US|US gallons",
    "imp gal": "imp gal|UK gal|Imperial gallons",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g KOH",
    "%": "%|pct|percent",
    "g/L": "g/L|g/l|g per litre|g per L",
    "kg/L": "kg/L|kg/l|g/mL|g/cc",
    C: "C|°C|deg C",
    lb: "lb|lbs",
    oz: "oz",
  },
  commas: false,
};
