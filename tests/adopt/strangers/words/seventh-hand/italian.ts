/** A seventh hand's Italian: a farm, a technical school and a village. */
import type { Language } from "../role-words";

export const italian: Language = {
  name: "Italian",
  headings: {
    number: "N.|Nr.|Prova|N. prova|Riga|Prog.|Test n.",
    date: "Data|Giorno|Quando|Data prova|Fatto il|Data analisi|Titolato il",
    lot: "Fusto|Lotto olio|Da dove|Provenienza|Tanica|Trattoria|Fornitore|Cisternetta",
    batch: "Lotto|Cotta|Partita|N. lotto|Produzione|Batch|Carica",
    oil: "Olio|Tipo|Tipo di olio|Che olio|Tipo grasso|Materia prima",
    operator: "Chi|Da chi|Sigla|Fatto da|Alunno|Operatore|Nome",
    titrantBase:
      "Titolante|Base in buretta|Titolato con|Buretta con|Base titolante|Soluzione titolante",
    indicator: "Indicatore|Ind.|Colorante|Vira con|Indicatore usato|Gocce di",
    molarity:
      "Molarità|M titolante|Conc. titolante (mol/L)|mol/l buretta|Titolante M|Normalità (N)",
    strength:
      "Titolante g/L|Soluzione g/l|g di soda per litro di titolante|Soluzione di prova (g/L)|Conc. buretta g/l|Titolante, g/l",
    sampleMass: "Campione|Peso campione|Olio pesato|Massa olio|Pesata|Olio in beuta|Peso olio",
    sampleVolume:
      "Campione|Vol. campione|Olio prelevato|Olio pipettato|Aliquota|Olio nel becher|Volume olio provato",
    titre: "Titolazione #|Buretta #|V#|Lettura #|Prova #|Consumo #|Titol. #",
    blank: "Bianco|Prova in bianco|Senza olio|B.co|Solo alcol|Vol. bianco|Lettura bianco",
    meanTitre: "Media|Consumo medio|Med.|Media prove|Titolazione media|V medio",
    correctedTitre: "Meno bianco|Media - bianco|V corretto|Consumo netto|Corretto|Netto",
    acidValue: "Numero di acidità|NA|N. acidità|Num. acido|Indice di acidità|I.A.",
    ffa: "AGL|Acidità|% AGL~|Ac. grassi liberi|Acidità oleico|Acidità libera|Acidi liberi",
    oilAmount:
      "Olio|Olio nel reattore|Quantità olio|Olio usato|Olio entrata|Olio esausto|Olio da trattare",
    density: "Densità|Dens.|Densità olio|Peso specifico|d|Massa volumica",
    temperature: "Temp.|Temperatura|T olio|Temp. serbatoio|T|Gradi~|T inizio",
    base: "Catalizzatore|Soda/potassa|Tipo di base|Quale base|Idrossido|Tipo catalizz.",
    assay: "Purezza|Purezza soda|Titolo soda|Purezza etichetta|Purezza catalizz.|Purezza scaglie",
    baseCharge:
      "Dose base|Base olio nuovo|Quantità base|Soda olio vergine|Quota fissa|Catalizzatore base",
    acidDose:
      "Per AGL|Extra acidità|Per neutralizzare|Soda in più|Neutralizzazione|Soda per acidità",
    reactionDose:
      "Per reazione|Soda reazione|Quota catalizzatore|Base reazione|Per la transesterificazione|Soda di base",
    catalystRate: "Soda al litro|Dose totale|Catalizz. per litro|Dosaggio|Dose|Totale al litro",
    catalyst:
      "Soda|Soda totale|Catalizz. totale|Base totale|Catalizzatore da mettere|Soda necessaria|Totale soda",
    weighed: "Soda pesata|Pesato reale|Reale|Bilancia|Soda messa|Pesata reale",
    methanol: "Metanolo|MeOH|Alcol|Met.|Metanolo messo|Metanolo usato",
    litresMade: "Biodiesel|Prodotto|Resa|Uscita|Carburante ottenuto|Bio finito|Ottenuto",
    note: "Note|Oss.|Commenti|Osservazioni|Annotazioni|Varie",
    rough: "Grossolana|Prova veloce|Preliminare|Approssimata|Consumo appr.|Prima prova",
    target: "Limite|AGL max|Meta|Obiettivo|Acidità max|Soglia",
    price: "Prezzo|Costo|€|Pagato|Spesa|Prezzo olio",
    time: "Ore|Tempo|Decantazione|h miscelazione|Riposo|Durata",
    colour: "Colore|Aspetto|Apparenza|Tinta|Tonalità|Come si presenta",
    glycerol: "Glicerina|Glic.|Glicerina tolta|Fondo|Sottoprodotto|Glicerolo",
    waterContent: "Acqua ppm|Acqua|Umidità|Um. ppm|H2O|Contenuto acqua",
    soap: "Sapone|Saponi|Sapone ppm|Prova sapone|Sapone residuo|Sapone dopo lavaggio",
    "running total": "Cumulato|Totale a oggi|Somma|Totale progressivo|Finora|Somma anno",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|grammi",
    L: "L|l|litri|lt",
    kg: "kg|chili|Kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|perc.",
    "g/L": "g/L|g/l|gr/lt|g per litro",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C",
  },
  commas: true,
};
