/** A fourth hand's Dutch. */
import type { Language } from "../role-words";

export const dutch: Language = {
  name: "Dutch",
  headings: {
    number: "Nr.|Nr|Volgnr.|Regel|No.",
    date: "Datum|Dag|Datum test|Dat.|Gedaan op|Testdatum",
    lot: "Partij|Partij olie|Vat|Vatnr.|Herkomst|Opgehaald bij",
    batch: "Batch|Batchnr.|Brouwsel|Baksel|Kooknr.|Charge",
    oil: "Soort olie|Olie|Oliesoort|Type olie|Grondstof|Srt. olie",
    operator: "Wie|Gedaan door|Naam|Paraaf|Uitgevoerd door|Init.",
    titrantBase: "Titrant|Loog in buret|Getitreerd met|Titreervloeistof|Base in buret|Buretvlst.",
    indicator: "Indicator|Ind.|Indic.|Kleurindicator",
    molarity:
      "Molariteit|Molariteit loog|Titrant mol/L|Conc. loog (mol/l)|Normaliteit titrant|M titrant",
    strength:
      "Titrant g/L|g/l in buret|Titreervloeistof (g/L)|Gram loog per liter water|Sterkte titrant g/l",
    sampleMass: "Monster|Inweeg|Gewicht monster|Afgewogen olie|Monstergew.|m olie",
    sampleVolume: "Monster|Volume monster|Oliemonster|Vol. olie|Olie in bekerglas|V monster",
    titre: "Titratie #|Verbruik #|Titr. #|Buret #|ml verbruikt #~|Meting #",
    blank: "Blanco|Blanco titratie|Blanco alcohol|Zonder olie|Bl.|Verbruik blanco",
    meanTitre: "Gemiddelde|Gem. titratie|Gem.|Gemiddeld verbruik|Gem. van titraties",
    correctedTitre:
      "Titratie - blanco|Netto verbruik|Gecorrigeerd|Gem. min blanco|Titr. gecorr.|Verbruik na aftrek blanco",
    acidValue: "Zuurgetal|Zuurgetal mg KOH/g~|Z.G.|Zuurwaarde|Zuurget.",
    ffa: "VVZ|% VVZ~|Vrije vetzuren|FFA|Vrije vet zuren|VVZ-gehalte",
    oilAmount: "Olie|Hoeveelheid olie|Olie in reactor|Frituurolie|Hoev. olie|Batchgrootte",
    density: "Dichtheid|Dichtheid olie|Soortelijk gewicht|s.g.|ρ olie|Soort. gew.",
    temperature: "Temperatuur|Temp.|Temp. olie|Temparatuur|T reactor|Graden",
    base: "Katalysator|Catalysator|Loog|Base|KOH of NaOH|Soort loog",
    assay:
      "Zuiverheid|Zuiverheid loog|Gehalte loog|% zuiver~|Zuiverh. kat.|Zuiverheid volgens etiket",
    baseCharge:
      "Basisdosis|Basishoeveelheid|Loog voor nieuwe olie|Basis loog|Dosis schone olie|Vaste dosis",
    acidDose:
      "Loog voor VVZ|Extra loog|Loog voor zuur|Loog neutralisatie|Extra door titratie|Om te neutraliseren",
    reactionDose:
      "Loog voor reactie|Reactieloog|Loog omestering|Kat. voor reactie|Loog voor omesteren",
    catalystRate:
      "Loog per liter|Dosis per liter|Dosering|Kat. per liter|g loog/L olie~|Loog p/l olie",
    catalyst: "Loog totaal|Totaal loog|Catalysator totaal|Tot. loog|Loog nodig|Kat. tot.",
    weighed: "Loog gewogen|Afgewogen|Afgewogen loog|Werkelijk gewogen|Loog op weegschaal|Loog erin",
    methanol: "Methanol|MeOH|Meth.|Alcohol|CH3OH|Methanol erbij",
    litresMade: "Biodiesel|Opbrengst|Biodiesel gemaakt|Klare biodiesel|BD eruit|Productie",
    note: "Opmerkingen|Opm.|Notities|Bijzonderheden|Aantekening|Commentaar",
    rough: "Proeftitratie|Grove titratie|Ruwe titratie|Titr. globaal",
    target: "Max. VVZ|Grens VVZ|Streefwaarde|VVZ doel|Limiet",
    price: "Prijs|Kosten|Kosten batch|€ betaald|Prijs/L|Inkoop",
    time: "Tijd|Uren|Bezinktijd|Reactietijd (u)|Uren bezinken|Duur",
    colour: "Kleur|Uiterlijk|Tint|Hoe ziet het eruit",
    glycerol: "Glycerine|Glycerol|Glyc.|Glycerine afgetapt",
    waterContent: "Water ppm|Vocht ppm|Watergehalte (ppm)|H2O ppm|Water in olie, ppm",
    soap: "Zeep|Zeep ppm|Zeepgehalte|Zeeptest",
    "running total": "Totaal tot nu|Cumulatief|Lopend totaal|Jaartotaal|Liters t/m nu",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gram|gr",
    L: "L|liter|ltr|l",
    kg: "kg|kilo",
    "%": "%|procent",
    "g/L": "g/L|g/l|gram/liter|gr/l",
    "g/kg": "g/kg|gr/kg",
    "kg/L": "kg/L|kg/l|g/ml",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|C|gr. C",
  },
  commas: true,
};
