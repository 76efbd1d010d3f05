/** A fourth hand's French. */
import type { Language } from "../role-words";

export const french: Language = {
  name: "French",
  headings: {
    number: "N°|Nº|Ligne|N° d'ordre|Num.",
    date: "Date|Jour|Date d'essai|Date du dosage|Fait le|Date test",
    lot: "Lot|Lot d'huile|Fût|Bidon n°|Provenance|Collecte",
    batch: "Batch|N° batch|Fournée|Cuvée|Lot biodiesel|Fabrication n°",
    oil: "Type d'huile|Huile|Nature huile|Sorte d'huile|Matière première|Type HVU",
    operator: "Opérateur|Fait par|Qui|Initiales|Nom|Resp.",
    titrantBase: "Titrant|Base burette|Titré avec|Sol. titrante|Base titrante|Dosé par",
    indicator: "Indicateur|Ind.|Indicateur coloré|Indic.",
    molarity:
      "Molarité|Conc. titrant (mol/L)|Titrant mol/l|C base (mol/L)|Normalité titrant|M de la base",
    strength:
      "Titrant g/L|g/L burette|Sol. titrante (g/l)|Grammes par litre titrant|Conc. burette g/L",
    sampleMass: "Prise d'essai|Masse échantillon|Échantillon|Poids huile|PE|m huile",
    sampleVolume:
      "Échantillon|Volume echantillon|Prise d'essai|Vol. huile|Huile dans bécher|V éch.",
    titre: "Titrage #|Dosage #|Essai #|Burette #|V éq. #|mL versés #~",
    blank: "Blanc|Essai à blanc|Témoin|Blanc alcool|Sans huile|V blanc",
    meanTitre: "Moyenne|Titrage moyen|Moy.|V moyen|Moyenne des essais|Moy. burette",
    correctedTitre:
      "Moyenne - blanc|Titrage corrigé|Volume net|V corrigé|Dosage moins blanc|Vol. - blanc",
    acidValue: "Indice d'acide|IA|Indice acide|I.A.|Indice d'acidité|IA mg KOH/g~",
    ffa: "AGL|% AGL~|Acides gras libres|Acidité % oléique~|FFA|Ac. gras libres",
    oilAmount: "Huile|Quantité d'huile|Huile au réacteur|Qté huile|HVU|Huile traitée",
    density: "Densité|Masse volumique|Densité huile|Dens.|ρ huile",
    temperature: "Température|Temp.|T°|Temp. huile|T° réacteur|Temperature",
    base: "Catalyseur|Base|Soude ou potasse|Type catalyseur|NaOH/KOH|Base utilisée",
    assay: "Pureté|Pureté soude|Pureté base|Pureté étiquette|% pureté~|Pureté catalyseur",
    baseCharge:
      "Dose de base|Base huile neuve|Dose huile neuve|Quantité de base|Soude huile propre|Dose fixe",
    acidDose:
      "Soude pour AGL|Soude en plus|Pour neutraliser|Supplément acidité|Soude neutralisation|Cat. pour acides",
    reactionDose:
      "Soude réaction|Catalyseur réaction|Pour la réaction|Soude transestérification|Cat. transest.",
    catalystRate:
      "Soude par litre|Catalyseur par litre|Dosage par litre|Dose par L d'huile|g soude/L huile~|Cat. / litre",
    catalyst:
      "Soude totale|Catalyseur total|Total soude|Total catalyseur|Soude à mettre|Cat. total",
    weighed: "Soude pesée|Pesé|Pesée réelle|Catalyseur pesé|Soude mise|Poids réel soude",
    methanol: "Méthanol|MeOH|Methanol|Alcool|CH3OH|Méthanol ajouté",
    litresMade: "Biodiesel|Biodiesel obtenu|Rendement|Production|Sortie biodiesel|EMHV",
    note: "Remarques|Notes|Observations|Commentaires|Rem.|Divers",
    rough: "Titrage rapide|Essai rapide|Dosage grossier|Pré-dosage",
    target: "AGL max|Limite AGL|AGL visé|Seuil AGL|Objectif",
    price: "Prix|Coût|€ par batch|Prix/L|Prix payé|Dépense",
    time: "Durée|Temps|Heures|Décantation (h)|Temps de réaction|Nb heures",
    colour: "Couleur|Aspect|Teinte|Couleur huile",
    glycerol: "Glycérine|Glycérol|Glyc.|Glycérine soutirée",
    waterContent: "Eau ppm|Teneur en eau (ppm)|Humidité ppm|H2O ppm|Eau dans huile, ppm",
    soap: "Savon|Savon ppm|Taux de savon|Test savon",
    "running total": "Cumul|Total cumulé|Litres à ce jour|Total année|Report",
  },
  units: {
    mL: "mL|ml|cc",
    g: "g|gr|grammes",
    L: "L|l|litres",
    kg: "kg|kilos|Kg",
    "%": "%|% m/m",
    "g/L": "g/L|g/l|gr/l|g/litre",
    "g/kg": "g/kg|gr/kg",
    "kg/L": "kg/L|g/cm³|g/mL",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|C|degrés",
  },
  commas: true,
};
