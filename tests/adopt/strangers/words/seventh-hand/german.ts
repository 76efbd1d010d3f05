/** A seventh hand's German: a farm, a school and a garden in Germany and Austria. */
import type { Language } from "../role-words";

export const german: Language = {
  name: "German",
  headings: {
    number: "Nr.|Lfd. Nr.|Versuch|Zeile|Messung Nr.|Pos.|Eintrag",
    date: "Datum|Tag|Wann|Datum Test|gemessen am|Titriert am|Prüfdatum",
    lot: "Fass|Herkunft|Ölcharge|Woher|Gasthaus|Kanister|Lieferung|Gebinde",
    batch: "Ansatz|Charge|Sud|Ansatz-Nr.|Chargennr.|Produktion|Reaktorfüllung",
    oil: "Öl|Ölsorte|Was für Öl|Fettart|Art|Altöl-Typ|Öl/Fett",
    operator: "Wer|Bearbeiter|Kürzel|Name|titriert von|Schüler|Hdz.",
    titrantBase:
      "Titrant|Lauge in Bürette|Maßlösung|titriert mit|Titriermittel|Bürette gefüllt mit",
    indicator: "Indikator|Ind.|Farbstoff|Anzeiger|Umschlag mit|verw. Indikator",
    molarity: "c Lauge mol/l|Molarität|Konz. Titrant (mol/L)|Maßlösung mol/l|c (mol/L)|Titrant M",
    strength:
      "Titrant g/l|Testlösung g/L|Lauge in Bürette, g/l|g Lauge je Liter Maßlösung|Prüflösung (g/l)|Konz. Titrierlösung g/L",
    sampleMass: "Einwaage|Probe|Ölprobe|Probengewicht|Öl eingewogen|Probenmasse|Öl im Kolben",
    sampleVolume:
      "Probe|Ölprobe|Probenvolumen|Öl pipettiert|Probemenge|Öl im Becherglas|Prüfmenge Öl",
    titre: "Titration #|Verbrauch #|V#|Messung #|Bürette #|Versuch #|Titer #|Wert #",
    blank: "Blindwert|Leerwert|Blindprobe|BW|ohne Öl|nur Alkohol|Blindverbr.",
    meanTitre: "Mittel|Mittelwert|MW|Ø Verbrauch|Schnitt|Verbrauch im Mittel|gemittelt",
    correctedTitre:
      "minus Blindwert|Verbrauch netto|korr. Verbrauch|abzgl. BW|Netto|V korr|Differenz zum Blindwert",
    acidValue: "Säurezahl|SZ|S.-Zahl|Säurezahl Öl|Neutralisationszahl|SZ berechnet",
    ffa: "FFS|FFA|freie Fettsäuren|FFS-Gehalt|% FFS~|fr. Fetts.|Anteil FFS",
    oilAmount: "Öl|Ölmenge|Altöl|Öl im Reaktor|Öl eingefüllt|Einsatz Öl|Menge Altfett|Öl rein",
    density: "Dichte|Dichte Öl|rho|spez. Gewicht|Öldichte|D",
    temperature: "Temp.|Temperatur|Öltemp.|T|Temp. Kessel|Grad C~|Temp. beim Start",
    base: "Katalysator|Kat.|welche Lauge|Laugenart|Ätznatron/Ätzkali|Base|Hydroxid",
    assay: "Reinheit|Gehalt Lauge|Reinheit Plätzchen|Reinh. Lauge|Gehalt lt. Etikett|Reinheit Kat.",
    baseCharge: "Grundmenge|Grunddosis|Basismenge|Menge für Frischöl|Sockel|Grundwert Lauge",
    acidDose: "für FFS|Zuschlag|zum Neutralisieren|Mehrmenge Lauge|Lauge für Säure|Neutralisation",
    reactionDose:
      "für Reaktion|Lauge Umesterung|Grundlauge|Katalysatoranteil|Lauge für Reaktion|für die Umesterung",
    catalystRate:
      "Lauge je Liter|Dosierung|Kat. pro Liter Öl|Gesamt je Liter|Dosis|Lauge/L Öl gesamt",
    catalyst: "Lauge|Lauge gesamt|Kat. gesamt|Lauge nötig|Laugenbedarf|Menge Kat.|Summe Lauge",
    weighed: "eingewogen Lauge|tatsächlich|Lauge ist|Waage|Lauge abgewogen|wirklich genommen",
    methanol: "Methanol|MeOH|Meth.|Methanol dazu|Alkohol|Methanolmenge",
    litresMade: "Ertrag|Diesel fertig|Biodiesel|Ausbeute|Kraftstoff raus|Fertig|Erhalten",
    note: "Bemerkung|Notiz|Anm.|Was war|Sonstiges|Hinweise",
    rough: "grob|Vorversuch|Vortitration|Grobtitration|Probelauf|erster Versuch",
    target: "Grenze FFS|Soll|max. FFS|Ziel|Zielwert FFS|Obergrenze",
    price: "Preis|Kosten|€|bezahlt|Preis Öl|EUR",
    time: "Std.|Dauer|Absetzzeit|Rührzeit|Zeit (h)|Stunden",
    colour: "Farbe|Aussehen|Farbton|sieht aus|Färbung|Optik",
    glycerol: "Glycerin|Glyz.|Glycerin abgelassen|Bodensatz|Gly|Nebenprodukt",
    waterContent: "Wasser ppm|Wasser|Wassergehalt|Feuchte|H2O|Restwasser",
    soap: "Seife|Seife ppm|Seifengehalt|Seifentest|Restseife|Seifen",
    "running total": "Summe bisher|gesamt bis jetzt|Laufende Summe|kumuliert|Stand|Jahressumme",
  },
  units: {
    mL: "ml|mL|ccm",
    g: "g|Gramm|gr",
    L: "l|L|Liter|ltr.",
    kg: "kg|Kilo",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|Proz.",
    "g/L": "g/l|g/L|g pro Liter|g je l",
    "kg/L": "kg/l|kg/L|g/ml",
    C: "°C|C|Grad",
  },
  commas: true,
};
