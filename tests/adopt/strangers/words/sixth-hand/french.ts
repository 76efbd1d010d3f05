/** A sixth hand's French. */
import type { Language } from "../role-words";

export const french: Language = {
  name: "French",
  headings: {
    number: "Numéro|N° essai|Ordre|Rang|N°|Index",
    date: "Date|Date de prélèvement|Date du lot|Jour|Date analyse|Réalisé le",
    lot: "Lot huile|Bidon|Cantine|Numéro de fût|Contenant|Livraison|Source",
    batch: "Lot produit|Fournée|Batch n°|Réacteur lot|N° production|Cuvée n°|Cuisson",
    oil: "Huile|Type|Description huile|Variété|Type de graisse|Nature",
    operator: "Technicien|Opérateur|Nom|Titré par|Responsable|Étudiant|Réalisé par",
    titrantBase:
      "Base titrante|Titrant utilisé|Alcali en burette|Type de titrant|Burette remplie de|Solution de titrage",
    indicator: "Indicateur|Type d'indicateur|Indicateur employé|Indic.|Indicateur ajouté",
    molarity:
      "Molarité titrant|Titrant (mol/l)|Concentration mol/L|Normalité de la base|Molarité soude|mol/L de la base",
    strength:
      "Titrant (g/l)|Grammes de base par litre d'eau|Solution titrante g/l|Concentration g/l|Solution mère (g/L)",
    sampleMass:
      "Masse échantillon|Grammes d'huile|Échantillon pesé|Poids d'huile titrée|Huile en fiole|Prise",
    sampleVolume:
      "Volume d'échantillon|Huile en fiole|Prise d'échantillon|Huile titrée|Huile à titrer|Prise",
    titre:
      "Volume versé #|Titrage #|Essai #|Base versée #|ml ajoutés #~|Consommation #|Répétition #",
    blank: "Blanc|Titrage du blanc|Alcool seul|Essai blanc|Bl.|Blanc sans huile",
    meanTitre: "Titrage moyen|Moyenne des volumes|Moyenne essais|Moyenne|Volume moyen versé",
    correctedTitre:
      "Volume net|Moyenne moins blanc|Titrage corrigé|Net sans blanc|Blanc déduit|Volume corr.",
    acidValue:
      "Indice acide|Indice d'acide (mg KOH/g)~|IA|Indice d'acidité|Acidité mg KOH/g~|Valeur d'acide",
    ffa: "Acides gras libres %~|AGL %~|FFA %~|Pourcentage AGL|Teneur en AGL|Acidité en oléique",
    oilAmount:
      "Volume d'huile|Huile utilisée|Huile chargée|Quantité huile|Huile traitée|Huile totale",
    density: "Densité|Densité huile|Masse vol.|Densité relative|D. huile",
    temperature: "Température|Temp. réacteur|Température huile|Température de procédé|T|Chauffé à",
    base: "Base|Type d'alcali|Catalyseur utilisé|NaOH ou KOH|Hydroxyde|Sorte de catalyseur",
    assay: "Pureté base|Pureté|Pureté KOH|Degré de pureté|Pureté (%)~|Concentration soude %~",
    baseCharge:
      "Dose standard|Base huile vierge|Charge de base|Dose huile neuve|Quantité standard|Dose normale",
    acidDose:
      "Base pour acidité|Neutralisant|Soude supplémentaire|Base en plus|Correction acidité|Soude neutralisation",
    reactionDose:
      "Base pour réaction|Soude transestérification|Catalyseur réaction|Part réaction|Soude de réaction",
    catalystRate:
      "Base par litre|Grammes de soude par litre|Dosage catalyseur|Dose totale par litre|Catalyseur/litre|Soude par litre d'huile",
    catalyst:
      "Base totale|Masse de catalyseur|Soude nécessaire|Catalyseur total|Dose de soude|Quantité de soude|Poids de catalyseur",
    weighed: "Soude réellement pesée|Pesé réel|Base pesée|Poids sur balance|Catalyseur pesé|Réel",
    methanol:
      "Volume de méthanol|Méthanol|Méthanol nécessaire|Méthanol total|Méthanol utilisé|Méthanol versé",
    litresMade:
      "Biodiesel produit|Volume biodiesel|Rendement biodiesel|Carburant obtenu|Litres produits|Biodiesel final",
    note: "Observation|Notes|Commentaire|Autres|Annotations|Détails",
    rough: "Titrage approximatif|Essai préliminaire|Titrage rapide|Estimation",
    target: "AGL cible|Limite AGL|Maximum|Valeur souhaitée|AGL admis",
    price: "Coût total|Prix huile|Prix méthanol|Coût par litre|Montant €|Payé",
    time: "Temps de mélange|Heure de début|Temps de décantation|Durée h|Temps réaction|Repos",
    colour: "Couleur de l'huile|Couleur|Aspect visuel|Trouble",
    glycerol: "Glycérine obtenue|Glycérine|Phase glycérine|Résidu",
    waterContent: "Eau|Teneur eau|Humidité de l'huile|Eau (ppm)|Eau dans huile",
    soap: "Savons|Teneur en savon|Savon|Taux de savon",
    "running total": "Total cumulé année|Cumul litres|Somme totale|Cumul|Total jusqu'ici",
  },
  units: {
    mL: "mL|ml|cm3",
    g: "g|gr|grammes",
    L: "L|litres|l|Lt",
    kg: "kg|Kg|kgs",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%",
    "g/L": "g/L|g/l|g par litre",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C|degrés C",
  },
  commas: true,
};
