/** A sixth hand's Italian. */
import type { Language } from "../role-words";

export const italian: Language = {
  name: "Italian",
  headings: {
    number: "Numero|N. prova|Ordine|Indice|N°|Sequenza",
    date: "Data|Data prelievo|Data del lotto|Giorno|Data analisi|Eseguito il",
    lot: "Lotto d'olio|Bidone|Trattoria|Numero fusto|Contenitore|Consegna|Fonte",
    batch: "Lotto prodotto|Cotta|Batch n.|Lotto reattore|N. produzione|Partita prodotta|Carica",
    oil: "Olio|Tipo|Descrizione olio|Varietà|Tipo di grasso|Qualità olio",
    operator: "Tecnico|Operatore|Nome|Titolato da|Responsabile|Studente|Eseguito da",
    titrantBase:
      "Base titolante|Titolante usato|Alcali in buretta|Tipo di titolante|Buretta con|Soluzione di titolazione",
    indicator: "Indicatore|Tipo di indicatore|Indicatore impiegato|Indic.|Indicatore aggiunto",
    molarity:
      "Molarità titolante|Titolante (mol/l)|Concentrazione mol/L|Normalità della base|Molarità soda|mol/L della base",
    strength:
      "Titolante (g/l)|Grammi di base per litro d'acqua|Soluzione titolante g/l|Concentrazione g/l|Soluzione madre (g/L)",
    sampleMass:
      "Massa del campione|Grammi di olio|Campione pesato|Peso olio titolato|Olio in beuta|Presa",
    sampleVolume:
      "Volume del campione|Olio in beuta|Campione prelevato|Olio titolato|Olio da titolare|Presa",
    titre:
      "Volume versato #|Titolazione #|Saggio #|Base versata #|ml aggiunti #~|Consumo #|Ripetizione #",
    blank: "Bianco|Titolazione del bianco|Solo alcol|Saggio in bianco|Bi.|Bianco senza olio",
    meanTitre: "Titolazione media|Media dei volumi|Media saggi|Media|Volume medio versato",
    correctedTitre:
      "Volume netto|Media meno bianco|Titolazione corretta|Netto senza bianco|Bianco dedotto|Volume corr.",
    acidValue:
      "Numero acidità|Numero di acidità (mg KOH/g)~|NA|Indice acidità|Acidità mg KOH/g~|Valore di acidità",
    ffa: "Acidi grassi liberi %~|AGL %~|FFA %~|Percentuale AGL|Contenuto AGL|Acidità in oleico",
    oilAmount: "Volume di olio|Olio usato|Olio immesso|Quantità olio|Olio trattato|Olio totale",
    density: "Densità|Densità dell'olio|Massa vol.|Densità relativa|D. olio",
    temperature:
      "Temperatura|Temp. reattore|Temperatura olio|Temperatura di processo|T|Riscaldato a",
    base: "Base|Tipo di alcali|Catalizzatore usato|NaOH o KOH|Idrossido|Genere di catalizzatore",
    assay: "Purezza base|Purezza|Purezza KOH|Grado purezza|Purezza (%)~|Concentrazione soda %~",
    baseCharge:
      "Dose standard|Base olio vergine|Carica base|Dose olio nuovo|Quantità standard|Dose normale",
    acidDose:
      "Base per acidità|Neutralizzante|Soda aggiuntiva|Base in più|Correzione acidità|Soda neutralizzazione",
    reactionDose:
      "Base per reazione|Soda transesterificazione|Catalizzatore reazione|Parte reazione|Soda di reazione",
    catalystRate:
      "Base per litro|Grammi di soda per litro|Tasso di catalizzatore|Dose totale per litro|Catalizzatore/litro|Soda per litro di olio",
    catalyst:
      "Base totale|Massa di catalizzatore|Soda necessaria|Catalizzatore totale|Dose di soda|Quantità di soda|Peso catalizzatore",
    weighed:
      "Soda realmente pesata|Pesato reale|Base pesata|Peso sulla bilancia|Catalizzatore pesato|Reale",
    methanol:
      "Volume di metanolo|Metanolo|Metanolo necessario|Metanolo totale|Metanolo usato|Metanolo versato",
    litresMade:
      "Biodiesel prodotto|Volume biodiesel|Resa biodiesel|Carburante ottenuto|Litri prodotti|Biodiesel finale",
    note: "Osservazione|Note|Commento|Altro|Annotazioni|Dettagli",
    rough: "Titolazione approssimata|Saggio preliminare|Titolazione rapida|Stima",
    target: "AGL obiettivo|Limite AGL|Massimo|Valore desiderato|AGL ammesso",
    price: "Costo totale|Prezzo olio|Prezzo metanolo|Costo per litro|Importo €|Pagato",
    time: "Tempo di miscelazione|Ora di inizio|Tempo di decantazione|Durata h|Tempo reazione|Riposo",
    colour: "Colore dell'olio|Colore|Aspetto visivo|Torbidità",
    glycerol: "Glicerina ottenuta|Glicerina|Fase glicerina|Residuo",
    waterContent: "Acqua|Contenuto acqua|Umidità dell'olio|Acqua (ppm)|Acqua nell'olio",
    soap: "Saponi|Contenuto sapone|Sapone|Livello sapone",
    "running total": "Totale cumulato anno|Cumulo litri|Somma totale|Cumulativo|Totale finora",
  },
  units: {
    mL: "mL|ml|cm3",
    g: "g|gr|grammi",
    L: "L|litri|l|Lt",
    kg: "kg|Kg|kgs",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%",
    "g/L": "g/L|g/l|g per litro",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C|gradi C",
  },
  commas: true,
};
