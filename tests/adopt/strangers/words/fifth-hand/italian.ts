/** A fifth hand's Italian. */
import type { Language } from "../role-words";

export const italian: Language = {
  name: "Italian",
  headings: {
    number: "N.|Nr.|Num.|Riga|Progressivo|Voce",
    date: "Data|Giorno|Data prova|Data titolazione|Fatto il|Quando",
    lot: "Lotto olio|Fusto|Provenienza|Origine|Tanica n.|Ritiro|Ristorante",
    batch: "Cotta|Batch|N. cotta|Produzione|Lavorazione|Ciclo|Lotto biodiesel",
    oil: "Tipo di olio|Tipo olio|Materia prima|Grasso|Che olio|Olio usato",
    operator: "Operatore|Fatto da|Iniziali|Chi|Studente|Analista|Firma",
    titrantBase:
      "Titolante|Base in buretta|Soda o potassa (titolante)|Titolato con|Reattivo|Soluzione titolante",
    indicator: "Indicatore|Ind.|Indicatore usato|Viraggio con|Colorante",
    molarity:
      "Molarità|Normalità|Conc. titolante (mol/L)|Titolante mol/L|Concentrazione molare|M della soda",
    strength:
      "Titolante g/L|g di soda per litro d'acqua|Soluzione g/l|Grammi per litro (titolante)|Soluzione titolante g/L|Forza del titolante (g/L)",
    sampleMass: "Peso campione|Campione|Olio pesato|Massa di olio|Massa campione|Pesata",
    sampleVolume:
      "Campione|Volume campione|Olio nella prova|Aliquota|Campione d'olio|Olio prelevato",
    titre:
      "Titolazione #|Consumo #|Lettura #|Buretta #|ml consumati #~|Prova #|Volume #|ml usati #~",
    blank:
      "Bianco|Prova in bianco|Senza olio|Bianco alcol|Consumo del bianco|Titolazione in bianco",
    meanTitre: "Media|Media titolazioni|Consumo medio|Med.|Media delle prove|Volume medio",
    correctedTitre:
      "Consumo netto|Titolazione meno bianco|Corretto|Volume corretto|Media - bianco|Netto",
    acidValue:
      "Numero di acidità|N. acidità|Indice di acidità|Numero acidità mg KOH/g~|Acidità (mg KOH/g)~|NA",
    ffa: "AGL|% AGL~|Acidi grassi liberi|FFA|Acidità libera|Acidità % oleico~",
    oilAmount:
      "Olio|Quantità di olio|Olio da trattare|Olio nel reattore|Olio caricato|Olio di frittura",
    density: "Densità|Densità olio|Dens.|Peso specifico|Massa volumica|P. spec.",
    temperature: "Temperatura|Temp.|Temp. olio|Temperatura reazione|Gradi|T reattore",
    base: "Catalizzatore|Soda/potassa|Tipo di base|KOH/NaOH|Tipo di catalizzatore|Quale base",
    assay:
      "Purezza|Purezza della soda|Purezza %~|Titolo della potassa|% purezza base~|Grado di purezza",
    baseCharge:
      "Dose base|Base per olio nuovo|Quantità base|Dose fissa|Dose iniziale|Soda olio vergine",
    acidDose:
      "Soda per acidità|Base per neutralizzare|Extra per acidità|Soda per AGL|Per neutralizzare|Neutralizzazione",
    reactionDose:
      "Soda per reazione|Base di reazione|Per la reazione|Catalizzatore di reazione|Transesterificazione",
    catalystRate:
      "Soda per litro|Catalizzatore per litro|Dose per litro|Totale per litro|Base per L di olio|Dosaggio",
    catalyst:
      "Soda totale|Catalizzatore|Totale base|Quantità di catalizzatore|Soda da pesare|Catalizzatore necessario|Potassa totale",
    weighed: "Pesato|Soda pesata|Quantità reale|Peso reale|Effettivamente messo|Bilancia",
    methanol:
      "Metanolo|MeOH|Metanolo aggiunto|Quantità di metanolo|Alcol|Metanolo da usare|Alcol metilico",
    litresMade: "Biodiesel|Resa|Biodiesel ottenuto|Carburante prodotto|Prodotto finito|Uscita",
    note: "Note|Osservazioni|Commenti|Oss.|Appunti|Varie",
    rough: "Titolazione grossolana|Prova rapida|Approssimata|Prima prova|Prova di massima",
    target: "Obiettivo AGL|AGL max|Limite|Valore massimo|Massimo ammesso",
    price: "Prezzo|Costo|Costo del metanolo|Euro|Prezzo al litro|Costo olio|Spesa",
    time: "Tempo|Ora|Durata|Ore di riposo|Tempo di reazione|Decantazione h",
    colour: "Colore|Aspetto|Tonalità|Limpidezza",
    glycerol: "Glicerina|Glicerolo|Glicerina scaricata|Sottoprodotto",
    waterContent: "Acqua ppm|Umidità|Acqua|Contenuto d'acqua|Umidità ppm",
    soap: "Sapone|Saponi|Sapone ppm|Prova sapone",
    "running total": "Cumulato|Totale progressivo|Totale ad oggi|Somma|Totale annuo",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|grammi",
    L: "L|litri|l|lt",
    kg: "kg|Kg|chili",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|percento",
    "g/L": "g/L|g/l|g per litro|gr/litro",
    "kg/L": "kg/L|g/ml|kg/l",
    C: "°C|C|gradi C",
  },
  commas: true,
};
