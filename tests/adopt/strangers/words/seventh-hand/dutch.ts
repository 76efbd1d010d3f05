/** A seventh hand's Dutch: a farm and a school in the Netherlands, a garden in Flanders. */
import type { Language } from "../role-words";

export const dutch: Language = {
  name: "Dutch",
  headings: {
    number: "Nr.|Proef|Test nr|Volgnr.|Regel|Meting nr.|#",
    date: "Datum|Dag|Wanneer|Datum test|Gedaan op|Testdatum|Getitreerd op",
    lot: "Vat|Partij|Waarvandaan|Herkomst|Bus|Frituur|Leverancier|Lot olie",
    batch: "Batch|Brouwsel|Charge|Batchnr.|Productie|Lading|Kooksel",
    oil: "Olie|Soort|Soort olie|Welke olie|Type vet|Grondstof",
    operator: "Wie|Door|Initialen|Gedaan door|Leerling|Paraaf|Naam",
    titrantBase:
      "Titrant|Loog in buret|Getitreerd met|Buret gevuld met|Titreerbase|Titreervloeistof",
    indicator: "Indicator|Ind.|Kleurstof|Slaat om met|Gebruikte indicator|Druppels",
    molarity:
      "Molariteit|Titrant M|Conc. titrant (mol/L)|mol/l buret|c loog (mol/L)|Normaliteit (N)",
    strength:
      "Titrant g/L|Testoplossing g/l|g loog per liter titrant|Titreeroplossing (g/L)|Conc. buret g/l|Referentieoplossing, g/L",
    sampleMass: "Inweeg|Monster|Afgewogen olie|Massa olie|Gewicht monster|Olie in kolf|Ingewogen",
    sampleVolume:
      "Monster|Vol. monster|Oliemonster|Gepipetteerde olie|Olie in bekerglas|Volume olie test|Proefhoeveelheid",
    titre: "Titratie #|Verbruik #|V#|Buret #|Aflezing #|Proef #|Meting #",
    blank: "Blanco|Blanco verbruik|Zonder olie|Bl.|Alleen alcohol|Blanco proef|Nulproef",
    meanTitre: "Gemiddelde|Gem.|Gem. verbruik|Titratie gem.|Gemiddeld|V gem",
    correctedTitre: "Min blanco|Netto verbruik|Gecorrigeerd|Gem. - blanco|V corr|Netto",
    acidValue: "Zuurgetal|ZG|Zuurgetal olie|Z.G.|Zuurwaarde|Berekend zuurgetal",
    ffa: "VVZ|FFA|% VVZ~|Vrije vetzuren|Zuurgehalte|Vrij vetzuur|VVZ gehalte",
    oilAmount:
      "Olie|Olie in reactor|Hoeveelheid olie|Olie erin|Frituurolie|Te verwerken olie|Ingezette olie",
    density: "Dichtheid|Dichth.|Dichtheid olie|Soortelijk gewicht|s.g.|rho",
    temperature: "Temp.|Temperatuur|T olie|Temp. ketel|T|Graden~|Starttemp.",
    base: "Katalysator|Kat.|Soort loog|Welke loog|Hydroxide|Type kat.",
    assay:
      "Zuiverheid|Zuiverheid loog|Gehalte loog|Zuiverheid etiket|Zuiverheid kat.|Zuiverheid korrels",
    baseCharge:
      "Basisdosis|Basishoeveelheid|Loog voor verse olie|Vaste hoeveelheid|Basis|Basisloog",
    acidDose: "Voor VVZ|Extra loog|Om te neutraliseren|Toeslag zuur|Neutralisatie|Loog voor zuur",
    reactionDose:
      "Voor reactie|Loog reactie|Kat. deel|Reactieloog|Voor de omestering|Loog omestering",
    catalystRate: "Loog per liter|Totale dosis|Kat. per liter olie|Dosering|Dosis|Totaal per liter",
    catalyst:
      "Loog|Loog totaal|Kat. totaal|Benodigde loog|Loog toe te voegen|Totaal loog|Loog nodig",
    weighed: "Loog gewogen|Werkelijk|Echt afgewogen|Weegschaal|Loog erin|Werkelijk gewogen",
    methanol: "Methanol|MeOH|Alcohol|Meth.|Methanol erbij|Methanol gebruikt",
    litresMade: "Biodiesel|Opbrengst|Geproduceerd|Eruit|Brandstof klaar|Klaar product|Gemaakt",
    note: "Notities|Opm.|Commentaar|Opmerkingen|Bijzonderheden|Bijz.",
    rough: "Ruw|Snelle proef|Voorproef|Grof|Globale titratie|Eerste poging",
    target: "Grens|Max VVZ|Doel|Streefwaarde|Max zuur|Limiet",
    price: "Prijs|Kosten|€|Betaald|Prijs olie|Euro",
    time: "Uren|Tijd|Bezinktijd|Roertijd|Uur|Duur",
    colour: "Kleur|Uitzicht|Uiterlijk|Tint|Ziet eruit|Aanblik",
    glycerol: "Glycerine|Glyc.|Glycerine afgetapt|Bodem|Bijproduct|Glycerol",
    waterContent: "Water ppm|Water|Vocht|Vocht ppm|H2O|Watergehalte",
    soap: "Zeep|Zepen|Zeep ppm|Zeeptest|Restzeep|Zeep na wassen",
    "running total": "Cumulatief|Totaal tot nu|Som|Lopend totaal|Tot nu toe|Jaartotaal",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gram",
    L: "L|l|liter|ltr",
    kg: "kg|kilo|Kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|procent",
    "g/L": "g/L|g/l|g per liter",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C|graden",
  },
  commas: true,
};
