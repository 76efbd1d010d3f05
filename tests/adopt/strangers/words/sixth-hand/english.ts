/** A sixth hand's English. */
import type { Language } from "../role-words";

export const english: Language = {
  name: "English",
  headings: {
    number: "Line no.|Test no.|Sr. No.|Ser.|Index|Record no.|No",
    date: "Date|Day & date|Tested|Date sampled|Date of batch|Dt.|Date of titration",
    lot: "Batch of oil|Barrel|Pick-up|Oil drum no.|Supplier lot|Cafe|Container|Oil ID|Where it came from",
    batch: "Batch|Batch #|Processor run|Brew|Production no.|Reactor batch|Lot made",
    oil: "Oil|Type|Oil description|Feed|Oil kind|Grade of oil|Sort of oil",
    operator: "Operator|Technician|Name|Titrated by|Chemist|Pupil|Duty engineer|Staff",
    titrantBase:
      "Titrant used|Base in burette|Titrant type|Alkali for titration|Burette filled with|Standard alkali",
    indicator:
      "Indicator|Indicator type|Indicator solution|Colour change with|Which indicator|Indic.",
    molarity:
      "Titrant molarity|Conc. (M)|Strength of titrant, M|Alkali mol/L|Titrant normality|mol/L of lye|Titrant (mol/l)",
    strength:
      "Titrant g per litre|g/L of titrant|Lye in water, g/L|Titration solution g/l|Strength g/L|Stock solution (g/L)|Grams lye per litre water",
    sampleMass:
      "Sample mass|Sample weight|Oil mass for titration|Grams of oil|Oil in flask|Mass taken|W sample|Sample taken",
    sampleVolume:
      "Sample volume|Oil in flask|Sample vol.|Oil for titration|Titrated oil|Oil added to IPA|Sample taken|Test sample",
    titre:
      "Titration #|Volume added #|Titre #|Titr. #|Run #|NaOH added #|ml added #~|Rep #|Base added #",
    blank: "Blank titration|Blank (no oil)|Blank run|IPA only|Blk|Blank volume|Solvent titre",
    meanTitre: "Average titre|Mean|Mean titration|Avg of runs|Average ml~|Av. titre|Average volume",
    correctedTitre:
      "Net volume|Mean - blank|Titre after blank|Corr. titre|Average less blank|Net titration|Blank subtracted",
    acidValue:
      "Acid value|Acid No.|TAN (mg KOH/g)~|A.V.|Acid val.|Acid value mg KOH/g~|Total acidity",
    ffa: "FFA content|FFA %~|Free fatty acids|%FFA~|FFAs|FFA result|Fatty acids|FFA, % as oleic~",
    oilAmount:
      "Oil volume in|Oil used|Oil treated|Amount of oil|Oil loaded|Oil quantity|Batch oil|Oil into reactor",
    oilMass: "Oil mass|Weight of oil|Batch weight|Kilos of oil",
    amountUnit: "Unit of volume|Unit|Oil unit|Litres/gallons",
    density: "Density of oil|Density @ 15C|Spec. gravity|S.G.|Density|Oil SG|Rel. density",
    temperature:
      "Temperature|Temp. of reaction|Oil temperature|T (oil)|Start temp|Batch temp|Heated to",
    base: "Catalyst used|Base|Alkali type|Hydroxide|Lye type|NaOH or KOH|Kind of catalyst",
    lyeLot: "Lye batch no.|Catalyst lot|Lye bag no.|KOH lot",
    assay: "Lye assay|Purity of lye|% purity~|KOH purity|Catalyst purity|Assay %~|Lye purity (%)~",
    baseCharge:
      "Base dose|Standard charge|Base figure|Catalyst for new oil|Normal lye|Standard amount|Basic charge|New oil rate",
    acidDose:
      "Lye for acid|FFA correction|Additional lye|Lye for free acids|Neutralisation|Acid correction|Extra for FFA",
    reactionDose:
      "Reaction catalyst|Lye for transesterification|Lye for conversion|Catalyst for reaction|Standard lye|Transester. share|Reaction part",
    catalystRate:
      "Dose per litre of oil|Lye per L|Catalyst rate|Total lye per litre|g lye per litre of oil~|Rate of lye|Lye dose|Catalyst/L",
    catalyst:
      "Total catalyst|Lye dose|Catalyst needed|Weight of lye|Lye total|Hydroxide needed|Catalyst mass|Amount of lye|Lye for batch",
    weighed:
      "Actual weight|Lye actually used|Weighed amount|Lye as weighed|Weighed lye|Actual|Catalyst weighed out",
    methanol:
      "Methanol in|Methanol volume|MeOH added|Methanol charge|Methanol needed|Amount of methanol|CH3OH|Methanol",
    litresMade:
      "Biodiesel yield|Biodiesel out|B100 made|Product volume|Biodiesel produced|Volume of fuel|FAME out|Final yield|Made",
    route: "Process route|Acid or base|Stages|Route taken",
    note: "Notes|Comment|Remarks / problems|Observation|Memo|Additional info|Operator comments|Other",
    rough:
      "Rough titration|Trial titre|Estimate|Pilot titration|Scout|Quick titration|Rough figure",
    target: "Limit|Target|Max allowed FFA|FFA spec|Acceptable FFA|FFA threshold|Goal",
    price: "Cost of batch|Cost per litre|Price paid|Methanol cost|Spend|Oil price|Total cost|£",
    time: "Mixing time|Settle time|Duration|Reaction time|Time started|Hours|Time in reactor|Run time",
    colour: "Oil colour|Colour|Look of oil|Appearance|Color of fuel|Visual",
    glycerol: "Glycerin|Glycerol drained|Glycerine layer|Waste glycerin|Glycerol volume|By-product",
    waterContent:
      "Water content|Water (ppm)|Moisture|Water in oil|Moisture content|H2O|Water by KF",
    soap: "Soap number|Soaps|Soap (ppm)|Soap level|Soap titration",
    "running total":
      "Cumulative total|Total to date|Running sum|Year to date|Season total|Grand total",
  },
  units: {
    mL: "mL|ml|mls|cc|millilitres",
    g: "g|gram|grams|g.",
    L: "L|litre|litres|l|Ltr",
    kg: "kg|kilograms|kgs|KG",
    "US gal": "US gallons|US gal|gal US",
    "imp gal": "imperial gal|UK gallons|imp gal",
    "mg KOH/g": "mg KOH/g|mg KOH / g|mgKOH/g",
    "%": "%|percent|%",
    "g/L": "g/L|g/l|g per L|grams per litre",
    "kg/L": "kg/L|g/ml|kg per litre",
    C: "°C|deg. C|C|Celsius",
    lb: "lb|lbs|pounds",
    oz: "oz|ounces",
  },
  commas: false,
};
