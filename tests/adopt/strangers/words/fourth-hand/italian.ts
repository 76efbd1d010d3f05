/** A fourth hand's Italian. */
import type { Language } from "../role-words";

export const italian: Language = {
  name: "Italian",
  headings: {
    number: "N.|N°|Nr.|Riga|N. prog.",
    date: "Data|Giorno|Data prova|Data analisi|Fatto il|Dt.",
    lot: "Lotto|Lotto olio|Fusto|Tanica n.|Provenienza|Raccolta",
    batch: "Batch|N. batch|Carica|Cotta|Partita|Produzione n.",
    oil: "Tipo di olio|Olio|Tipo olio|Materia prima|Che olio|Qualità olio",
    operator: "Operatore|Fatto da|Chi|Sigla|Responsabile|Op.",
    titrantBase:
      "Titolante|Base in buretta|Titolato con|Sol. titolante|Soluz. buretta|Base titolante",
    indicator: "Indicatore|Ind.|Indic.|Indicatore usato",
    molarity: "Molarità|Molarità titolante|Conc. (mol/L)|Titolante mol/l|Normalità base|M buretta",
    strength:
      "Titolante g/L|g/L in buretta|Sol. titolante (g/l)|Grammi per litro titolante|Conc. buretta g/l",
    sampleMass: "Campione|Peso campione|Massa olio|Olio pesato|P. campione|m olio",
    sampleVolume: "Campione|Volume campione|Vol. olio|Olio in beuta|Aliquota|V camp.",
    titre: "Titolazione #|Consumo #|Titol. #|Buretta #|ml consumati #~|Prova #",
    blank: "Bianco|Prova in bianco|Bianco alcol|Consumo bianco|Senza olio|V bianco",
    meanTitre: "Media|Titolazione media|Consumo medio|Media titol.|Media prove",
    correctedTitre:
      "Media - bianco|Consumo netto|Titolazione corretta|Netto bianco|Titol. meno bianco|V netto",
    acidValue: "Numero di acidità|N. acidità|NA|Indice di acidità|Num. acidità|Acidità mg KOH/g~",
    ffa: "AGL|% AGL~|Acidi grassi liberi|Acidità % oleico~|FFA|Ac. grassi lib.",
    oilAmount: "Olio|Quantita' olio|Olio nel reattore|Q.tà olio|Olio esausto|Olio caricato",
    density: "Densità|Densità olio|Peso specifico|P.s.|Dens.|ρ olio",
    temperature: "Temperatura|Temp.|Temp. olio|T reattore|T olio|Gradi",
    base: "Catalizzatore|Base|Soda o potassa|Tipo catalizzatore|NaOH/KOH|Base usata",
    assay: "Purezza|Purezza soda|Titolo soda|Purezza catalizzatore|% purezza~|Pur. base",
    baseCharge:
      "Dose base|Quantità base|Dose olio nuovo|Soda per olio pulito|Dose fissa|Base di partenza",
    acidDose:
      "Soda per acidità|Soda extra|Per neutralizzare|Soda neutralizzazione|Aggiunta per AGL|Cat. per acidi",
    reactionDose:
      "Soda reazione|Catalizzatore reazione|Per la reazione|Soda transesterificazione|Cat. transest.",
    catalystRate:
      "Soda per litro|Catalizzatore per litro|Dose per litro|Dosaggio|g soda/L olio~|Cat. al litro",
    catalyst:
      "Soda totale|Catalizzatore totale|Totale soda|Tot. catalizzatore|Soda da mettere|Cat. tot.",
    weighed: "Soda pesata|Pesato|Catalizatore pesato|Peso effettivo|Soda messa|Pesata reale",
    methanol: "Metanolo|MeOH|Met.|Alcol|CH3OH|Metanolo aggiunto",
    litresMade: "Biodiesel|Biodiesel ottenuto|Resa|Prodotto finito|Biodiesel finito|BD prodotto",
    note: "Note|Osservazioni|Oservazioni|Commenti|Annotazioni|Varie",
    rough: "Titolazione rapida|Prova rapida|Titol. grossolana|Prova indicativa",
    target: "AGL max|Limite AGL|Obiettivo|Acidità max|AGL voluto",
    price: "Prezzo|Costo|Costo batch|€ pagati|Prezzo/L|Spesa",
    time: "Tempo|Ore|Tempo di reazione|Decantazione (h)|Ore riposo|Durata",
    colour: "Colore|Aspetto|Tinta|Col.",
    glycerol: "Glicerina|Glicerolo|Glic.|Glicerina scaricata",
    waterContent: "Acqua ppm|Umidità (ppm)|H2O ppm|Acqua nell'olio, ppm|KF ppm",
    soap: "Sapone|Saponi ppm|Sapone ppm|Test sapone",
    "running total": "Totale progressivo|Cumulato|Tot. ad oggi|Litri finora|Totale anno",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|grammi",
    L: "L|l|litri|lt",
    kg: "kg|chili|Kg",
    "%": "%|% p/p",
    "g/L": "g/L|g/l|gr/lt|g/litro",
    "g/kg": "g/kg|gr/kg",
    "kg/L": "kg/L|g/cm³|g/ml",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|C|gradi C",
  },
  commas: true,
};
