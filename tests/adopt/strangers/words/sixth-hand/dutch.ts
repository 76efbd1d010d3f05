/** A sixth hand's Dutch. */
import type { Language } from "../role-words";

export const dutch: Language = {
  name: "Dutch",
  headings: {
    number: "Nummer|Proef nr.|Rangnr.|Nr|Index|Volg",
    date: "Datum|Datum monstername|Datum batch|Dag|Analysedatum|Uitgevoerd op",
    lot: "Partij olie|Vatnummer|Eetcafé|Jerrycan|Container|Levering|Bron",
    batch: "Batch nr.|Productiepartij|Reactorbatch|Productienr.|Kookbeurt|Gemaakte partij|Batch",
    oil: "Olie|Type|Omschrijving olie|Oliesoort|Soort vet|Soort",
    operator: "Technicus|Operator|Naam|Getitreerd door|Verantwoordelijke|Student|Uitgevoerd door",
    titrantBase:
      "Titrant base|Gebruikte titrant|Loog in de buret|Type titrant|Buret gevuld met|Titratieloog",
    indicator: "Indicator|Soort indicator|Indicatortype|Indic.|Toegevoegde indicator",
    molarity:
      "Molariteit titrant|Titrant (mol/l)|Concentratie mol/L|Normaliteit loog|Molariteit loog|mol/L van loog",
    strength:
      "Titrant (g/l)|Gram loog per liter water|Titratieoplossing g/l|Concentratie g/l|Stamoplossing (g/L)",
    sampleMass:
      "Massa van monster|Gram olie|Gewogen monster|Gewicht getitreerde olie|Olie in kolf|Monster",
    sampleVolume:
      "Volume van monster|Olie in kolf|Genomen monster|Getitreerde olie|Olie om te titreren|Monster",
    titre:
      "Toegevoegd volume #|Titratie #|Bepaling #|Loog verbruikt #|ml toegevoegd #~|Verbruik #|Herhaling #",
    blank: "Blanco|Titratie blanco|Alleen alcohol|Blanco proef|Bl.|Blanco zonder olie",
    meanTitre: "Gemiddelde titratie|Gemiddelde van metingen|Gem. titer|Gemiddelde|Gem. volume",
    correctedTitre:
      "Netto volume|Gemiddelde min blanco|Gecorrigeerde titratie|Netto titratie|Min blanco|Volume gecorr.",
    acidValue: "Zuurgetal|Zuurgetal (mg KOH/g)~|ZG|Zuurindex|Zuurgetal mg KOH/g~",
    ffa: "Vrije vetzuren %~|VVZ %~|FFA %~|Percentage VVZ|Gehalte VVZ|Vrije vetzuren",
    oilAmount:
      "Volume olie|Gebruikte olie|Olie geladen|Hoeveelheid olie|Behandelde olie|Totaal olie",
    density: "Dichtheid|Oliedichtheid|Soort. massa|Relatieve dichtheid|Dichtheid van olie|S.g.",
    temperature: "Temperatuur|Temp. reactor|Olietemperatuur|Procestemperatuur|T|Verwarmd tot",
    base: "Base|Type loog|Gebruikte katalysator|NaOH of KOH|Hydroxide|Soort katalysator",
    assay: "Zuiverheid base|Zuiverheid|Zuiverheid KOH|Zuiverheidsgraad|Zuiverheid (%)~|Loog %~",
    baseCharge:
      "Standaarddosis|Loog nieuwe olie|Basislading|Dosis nieuwe olie|Standaardhoeveelheid|Normale dosis",
    acidDose:
      "Loog voor zuur|Neutraliserende loog|Aanvullende loog|Extra base|Correctie zuur|Loog neutralisatie",
    reactionDose:
      "Loog reactie|Loog omestering|Katalysator reactie|Reactiedeel|Katalysator voor reactie",
    catalystRate:
      "Loog/liter|Gram loog per liter olie|Doseringsgraad|Totale dosis per liter|Katalysator/liter|Loog per liter olie",
    catalyst:
      "Totale loog|Massa katalysator|Loog nodig|Totaal katalysator|Loogdosis|Hoeveelheid katalysator|Gewicht loog",
    weighed:
      "Werkelijk gewogen loog|Echt gewogen|Loog gewogen|Gewicht op weegschaal|Gewogen katalysator|Werkelijk gewicht",
    methanol:
      "Volume methanol|Methanol|Methanol nodig|Totaal methanol|Gebruikte methanol|Methanol erbij",
    litresMade:
      "Geproduceerde biodiesel|Volume biodiesel|Opbrengst biodiesel|Verkregen brandstof|Liters gemaakt|Biodiesel",
    note: "Opmerkingen|Notitie|Commentaar|Overige|Aantekeningen|Details",
    rough: "Ruwe titratie|Voorproef|Snelle titratie|Schatting",
    target: "VVZ doel|Limiet VVZ|Maximum|Gewenste waarde|Toegestane VVZ",
    price: "Totale kosten|Olieprijs|Methanolprijs|Kosten per liter|Bedrag €|Betaald",
    time: "Mengtijd|Begintijd|Bezinktijd|Duur u|Reactieduur|Rusttijd",
    colour: "Kleur olie|Kleur|Zichtbeeld|Troebelheid",
    glycerol: "Glycerine verkregen|Glycerine|Glycerinelaag|Restproduct",
    waterContent: "Water|Gehalte water|Vocht in olie|Water (ppm)|Water in olie",
    soap: "Zepen|Zeepgehalte|Zeep|Zeepniveau",
    "running total": "Cumulatief totaal|Cumulatieve liters|Somtotaal|Cumulatief|Totaal tot heden",
  },
  units: {
    mL: "mL|ml|cm3",
    g: "g|gr|gram",
    L: "L|liter|l|Ltr",
    kg: "kg|Kg|kgs",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%",
    "g/L": "g/L|g/l|g per liter",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C|graden C",
  },
  commas: true,
};
