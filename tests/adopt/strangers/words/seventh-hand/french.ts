/** A seventh hand's French: a farm and a school in France, a garage in Quebec. */
import type { Language } from "../role-words";

export const french: Language = {
  name: "French",
  headings: {
    number: "N°|No|Essai|N° d'essai|Ligne|Ordre|Réf.",
    date: "Date|Jour|Quand|Date du test|Fait le|Date analyse|Dosé le",
    lot: "Fût|Lot d'huile|D'où|Provenance|Bidon|Resto|Chaudière|Fournisseur",
    batch: "Lot|Cuvée|Brassin|N° de lot|Production|Batch|Charge n°",
    oil: "Huile|Type|Sorte d'huile|Quelle huile|Type de gras|Graisse",
    operator: "Qui|Par|Initiales|Fait par|Élève|Opérateur|Nom",
    titrantBase:
      "Titrant|Base burette|Titré avec|Burette remplie de|Base de titrage|Solution titrante",
    indicator: "Indicateur|Ind.|Colorant|Vire avec|Indicateur coloré|Gouttes de",
    molarity: "Molarité|Titrant M|Conc. titrant (mol/L)|mol/l burette|C base (mol/L)|Normalité (N)",
    strength:
      "Titrant g/L|Solution g/l|g de soude par litre de titrant|Solution de test (g/L)|Conc. burette g/l|Réactif, g/L",
    sampleMass:
      "Prise d'essai|Échantillon|Huile pesée|Masse huile|Poids échantillon|Pesée huile|Éch.",
    sampleVolume:
      "Échantillon|Vol. huile|Huile prélevée|Huile pipetée|Prise|Huile dans bécher|Volume testé",
    titre: "Titrage #|Burette #|V#|Lecture #|Essai #|Dosage #|Vol. versé #",
    blank: "Blanc|Essai à blanc|Sans huile|Bl.|Alcool seul|Témoin|Vol. blanc",
    meanTitre: "Moyenne|Moy.|Titrage moyen|Volume moyen|Moy. des essais|V moy",
    correctedTitre: "Moins blanc|Moy. - blanc|V corrigé|Titrage net|Corrigé|Net",
    acidValue: "Indice d'acide|IA|Ind. acide|I.A.|Indice acidité|Nb d'acide",
    ffa: "AGL|Acidité|% AGL~|Ac. gras libres|Acidité oléique|Taux AGL|Acides libres",
    oilAmount: "Huile|Huile réacteur|Quantité huile|Huile entrée|HVU|Huile à traiter|Volume du lot",
    density: "Densité|Dens.|Densité huile|Masse vol.|d|Masse volumique",
    temperature: "Temp.|Température|T huile|Temp. cuve|T°|Degrés~|T départ",
    base: "Catalyseur|Soude/potasse|Type de base|Quelle base|Hydroxyde|Type cata",
    assay: "Pureté|Pureté soude|Titre soude|Pureté étiquette|Pureté cata|Pureté paillettes",
    baseCharge:
      "Dose de base|Base huile neuve|Quantité base|Soude huile vierge|Part fixe|Catalyseur de base",
    acidDose:
      "Pour AGL|Supplément acidité|Pour neutraliser|Soude en plus|Neutralisation|Soude pour acidité",
    reactionDose:
      "Pour réaction|Soude réaction|Part catalyseur|Base réaction|Pour la transestérification|Soude de base",
    catalystRate: "Soude par litre|Dose totale|Cata par litre|Dosage|Dose|Total par litre",
    catalyst:
      "Soude|Soude totale|Cata total|Base totale|Catalyseur à mettre|Soude nécessaire|Total soude",
    weighed: "Soude pesée|Pesé réel|Réel|Balance|Soude mise|Pesée réelle",
    methanol: "Méthanol|MeOH|Alcool|Méth.|Méthanol mis|Méthanol utilisé",
    litresMade: "Biodiesel|Produit|Rendement|Sortie|Carburant obtenu|Bio fini|Obtenu",
    note: "Notes|Rem.|Commentaires|Remarques|Obs.|À noter",
    rough: "Grossier|Essai rapide|Préliminaire|Approx.|Titrage approx.|Premier essai",
    target: "Limite|AGL max|Cible|Objectif|Acidité max|Seuil",
    price: "Prix|Coût|€|Payé|$|Prix huile",
    time: "Heures|Temps|Décantation|h brassage|Repos|Durée",
    colour: "Couleur|Aspect|Apparence|Teinte|Allure|Coul.",
    glycerol: "Glycérine|Glyc.|Glycérine soutirée|Fond|Sous-produit|Glycérol",
    waterContent: "Eau ppm|Eau|Humidité|Hum. ppm|H2O|Teneur en eau",
    soap: "Savon|Savons|Savon ppm|Test savon|Savon résiduel|Savon après lavage",
    "running total": "Cumul|Total à ce jour|Somme|Total cumulé|Jusqu'ici|Cumul année",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|grammes",
    L: "L|l|litres",
    kg: "kg|kilos|Kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|p. cent",
    "g/L": "g/L|g/l|g par litre",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C",
  },
  commas: true,
};
