/** A fifth hand's Dutch. */
import type { Language } from "../role-words";

export const dutch: Language = {
  name: "Dutch",
  headings: {
    number: "Nr.|Nummer|Regel|Volgnummer|Proefnr.|Rij",
    date: "Datum|Dag|Testdatum|Getitreerd op|Dat.|Wanneer",
    lot: "Oliepartij|Vat|Herkomst|Jerrycan nr.|Ophaalronde|Restaurant|Lading",
    batch: "Batch|Batchnummer|Productie|Kook|Ronde|Brouwnr.|Partij biodiesel",
    oil: "Soort olie|Olietype|Grondstof|Vet|Welke olie|Olie van",
    operator: "Uitvoerder|Gedaan door|Initialen|Wie|Leerling|Analist|Naam",
    titrantBase: "Titrant|Loog in buret|Getitreerd met|Base titrant|Titreermiddel|Titreeroplossing",
    indicator: "Indicator|Ind.|Kleurstof|Omslag met|Gebruikte indicator",
    molarity:
      "Molariteit|Normaliteit|Conc. titrant (mol/L)|Titrant mol/L|Molaire concentratie|c loog mol/l",
    strength:
      "Titrant g/L|g loog per liter water|Oplossing g/l|Gram per liter (titrant)|Titreeroplossing g/L|Sterkte titrant (g/L)",
    sampleMass: "Inweeg|Monster|Monstergewicht|Olie afgewogen|Massa monster|Gewicht olie",
    sampleVolume: "Monster|Monstervolume|Olie in test|Oliemonster|Monstergrootte|Olie gepipetteerd",
    titre: "Titratie #|Verbruik #|Meting #|Buret #|ml loog #~|Proef #|Aflezing #|Volume #",
    blank: "Blanco|Blanco meting|Blanco titratie|Zonder olie|Alleen alcohol|Blancoverbruik",
    meanTitre: "Gemiddelde|Gem. verbruik|Gemiddelde titratie|Gem.|Gemiddeld ml~|Gemiddeld volume",
    correctedTitre:
      "Netto verbruik|Titratie min blanco|Gecorrigeerd|Verbruik gecorr.|Gem. - blanco|Netto",
    acidValue: "Zuurgetal|ZG|Zuurgetal mg KOH/g~|Zuurwaarde|Zuurgraad (mg KOH/g)~|Zuurgetal olie",
    ffa: "VVZ|% VVZ~|Vrije vetzuren|FFA|Vrij vetzuur|VVZ %~",
    oilAmount: "Olie|Hoeveelheid olie|Olie in reactor|Frituurolie|Batchgrootte|Te verwerken olie",
    density: "Dichtheid|Dichtheid olie|Soortelijk gewicht|S.G.|Soortelijke massa|Rho",
    temperature: "Temperatuur|Temp.|Temp. olie|Reactietemperatuur|Graden|T reactor",
    base: "Katalysator|Loog|Soort loog|KOH/NaOH|Welke base|Type katalysator",
    assay: "Zuiverheid|Zuiverheid loog|Zuiverheid %~|Gehalte|% zuiver~|Gehalte loog",
    baseCharge:
      "Basisdosis|Loog voor nieuwe olie|Basishoeveelheid|Vaste dosis|Startdosis|Basisgift|Loog verse olie",
    acidDose:
      "Loog voor VVZ|Extra loog|Loog om te neutraliseren|Voor de vetzuren|Neutralisatie|Loog voor zuren",
    reactionDose: "Loog voor reactie|Reactieloog|Voor de reactie|Omestering|Loog voor omestering",
    catalystRate:
      "Loog per liter|Katalysator per liter|Dosis per liter|Totaal per liter|Loog per L olie|Dosering",
    catalyst:
      "Loog totaal|Katalysator|Totaal loog|Hoeveelheid loog|Af te wegen loog|Benodigde loog|Loog",
    weighed: "Afgewogen|Gewogen loog|Werkelijk|Werkelijke hoeveelheid|Echt toegevoegd|Weegschaal",
    methanol:
      "Methanol|MeOH|Methanol toegevoegd|Hoeveelheid methanol|Alcohol|Benodigde methanol|Meth.",
    litresMade: "Biodiesel|Opbrengst|Biodiesel verkregen|Geproduceerd|Brandstof|Eindproduct",
    note: "Opmerking|Opmerkingen|Notities|Aantekening|Bijzonderheden|Commentaar",
    rough: "Grove titratie|Snelle test|Globaal|Proeftitratie|Voortitratie",
    target: "Doel VVZ|Max. VVZ|Grens|Streefwaarde|Maximaal toegestaan",
    price: "Prijs|Kosten|Prijs methanol|Euro|Prijs per liter|Kosten olie|Uitgaven",
    time: "Tijd|Duur|Uren bezinken|Reactietijd|Bezinktijd|Roertijd",
    colour: "Kleur|Uiterlijk|Helderheid|Tint",
    glycerol: "Glycerine|Glycerol|Glycerine afgetapt|Bijproduct",
    waterContent: "Water ppm|Vocht|Water|Watergehalte|Vocht ppm",
    soap: "Zeep|Zeepgehalte|Zeep ppm|Zeeptest",
    "running total": "Totaal tot nu|Cumulatief|Lopend totaal|Som|Jaartotaal",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gram",
    L: "L|liter|l|ltr",
    kg: "kg|Kg|kilo",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|procent",
    "g/L": "g/L|g/l|g per liter|gram/liter",
    "kg/L": "kg/L|g/ml|kg/l",
    C: "°C|C|graden C",
  },
  commas: true,
};
