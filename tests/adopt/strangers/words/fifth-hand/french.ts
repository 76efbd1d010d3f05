/** A fifth hand's French. */
import type { Language } from "../role-words";

export const french: Language = {
  name: "French",
  headings: {
    number: "N°|No|Num.|Ligne|N° d'ordre|Repère",
    date: "Date|Jour|Date du test|Date du dosage|Fait le|Quand",
    lot: "Lot d'huile|Fût|Provenance|Origine|Bidon n°|Collecte|Restaurant",
    batch: "Cuvée|Batch|N° de fournée|Fabrication|Brassin|Production n°|Lot de biodiesel",
    oil: "Type d'huile|Sorte d'huile|Matière première|Nature de l'huile|Quelle huile|Graisse",
    operator: "Opérateur|Fait par|Initiales|Qui|Élève|Technicien|Nom",
    titrantBase:
      "Titrant|Base dans la burette|Soude ou potasse (titrant)|Titré avec|Réactif titrant|Solution titrante",
    indicator: "Indicateur|Ind.|Indicateur coloré|Virage avec|Indicateur utilisé",
    molarity:
      "Molarité|Normalité|Conc. titrant (mol/L)|Titrant mol/L|Concentration molaire|C soude mol/l",
    strength:
      "Titrant g/L|g de soude par litre d'eau|Solution g/l|Grammes par litre (titrant)|Solution titrante g/L|Force du titrant (g/L)",
    sampleMass:
      "Prise d'essai|Échantillon|Masse d'huile|Huile pesée|Poids échantillon|Masse échantillon|Pesée",
    sampleVolume:
      "Échantillon|Volume échantillon|Huile testée|Prélèvement|Huile dans le bécher|Prise d'huile",
    titre:
      "Titrage #|Dosage #|Lecture #|Burette #|ml versés #~|Essai #|Volume #|Chute de burette #",
    blank: "Blanc|Essai à blanc|Témoin|Sans huile|Blanc alcool|Volume du blanc",
    meanTitre: "Moyenne|Moyenne des titrages|Volume moyen|Moy.|Moyenne dosages|Titrage moyen",
    correctedTitre: "Volume net|Titrage moins blanc|Corrigé|Volume corrigé|Moyenne - blanc|Net",
    acidValue: "Indice d'acide|I.A.|IA|Indice acide mg KOH/g~|Indice d'acidité|Acidité (mg KOH/g)~",
    ffa: "AGL|% AGL~|Acides gras libres|FFA|Acidité oléique|Acidité libre",
    oilAmount:
      "Huile|Quantité d'huile|Huile à traiter|Huile dans réacteur|Huile usagée|Taille de la cuvée",
    density: "Densité|Densité de l'huile|Dens.|Masse volumique|Poids spécifique",
    temperature: "Température|Temp.|Temp. huile|Température réaction|Degrés|T réacteur",
    base: "Catalyseur|Soude/potasse|Type de base|KOH/NaOH|Type de catalyseur|Quelle base",
    assay: "Pureté|Pureté de la soude|Pureté %~|Titre de la potasse|% pureté base~|Teneur",
    baseCharge:
      "Dose de base|Base pour huile neuve|Quantité de base|Dose fixe|Dose initiale|Soude huile vierge",
    acidDose:
      "Soude pour acidité|Base pour neutraliser|Supplément acidité|Soude pour AGL|Pour neutraliser|Neutralisation",
    reactionDose:
      "Soude pour réaction|Base de réaction|Pour la réaction|Catalyseur de réaction|Transestérification",
    catalystRate:
      "Soude par litre|Catalyseur par litre|Dose par litre|Total par litre|Base par L d'huile|Taux de catalyseur",
    catalyst:
      "Soude totale|Catalyseur|Total base|Quantité de catalyseur|Soude à peser|Catalyseur nécessaire|Potasse totale",
    weighed: "Pesé|Soude pesée|Quantité réelle|Poids réel|Réellement mis|Balance",
    methanol:
      "Méthanol|MeOH|Méthanol ajouté|Quantité de méthanol|Alcool|Méthanol à mettre|Alcool méthylique",
    litresMade: "Biodiesel|Rendement|Biodiesel obtenu|Carburant produit|Produit fini|Sortie",
    note: "Notes|Remarques|Commentaires|Observations|Obs.|Divers",
    rough: "Titrage grossier|Essai rapide|Approximatif|Dosage rapide|Premier essai",
    target: "Objectif AGL|AGL maxi|Limite|Cible|Maximum autorisé",
    price: "Prix|Coût|Prix du méthanol|Euros|Prix au litre|Coût huile|Dépense",
    time: "Temps|Heure|Durée|Heures de repos|Temps de réaction|Décantation h",
    colour: "Couleur|Aspect|Apparence|Teinte",
    glycerol: "Glycérine|Glycérol|Glycérine soutirée|Sous-produit",
    waterContent: "Eau ppm|Humidité|Eau|Teneur en eau|Humidité ppm",
    soap: "Savon|Savons|Savon ppm|Test savon",
    "running total": "Cumul|Total cumulé|Total à ce jour|Somme|Total annuel",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|grammes",
    L: "L|litres|l",
    kg: "kg|Kg|kilos",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|pour cent",
    "g/L": "g/L|g/l|g par litre|gr/litre",
    "kg/L": "kg/L|g/ml|kg/l",
    C: "°C|C|degrés C",
  },
  commas: true,
};
