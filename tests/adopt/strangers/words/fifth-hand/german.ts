/** A fifth hand's German. */
import type { Language } from "../role-words";

export const german: Language = {
  name: "German",
  headings: {
    number: "lfd. Nr.|Nr.|Pos.|Eintrag|Laufnummer|Zeile",
    date: "Datum|Tag|Prüfdatum|Titriert am|Dat.|Wann",
    lot: "Ölcharge|Fass|Herkunft|Lieferung|Kanister-Nr.|Fass-Nr.|Los Altöl",
    batch: "Ansatz|Ansatz-Nr.|Charge|Sud|Durchgang|Produktionslauf|Batch",
    oil: "Ölsorte|Art des Öls|Öltyp|Rohstoff|Fettart|Welches Öl",
    operator: "Bearbeiter|Name|Kürzel|Geprüft von|Wer|Laborant",
    titrantBase:
      "Maßlösung|Titrant|Lauge in der Bürette|Titrierlauge|Titriert mit|Titrationsmittel",
    indicator: "Indikator|Ind.|Farbindikator|Umschlag mit|Indikatorlösung",
    molarity:
      "Molarität|Konz. Maßlösung (mol/l)|c(Lauge) mol/l|Normalität|Maßlösung mol/L|Lauge mol/l",
    strength:
      "Titrant g/l|g Lauge je Liter Wasser|Titrierlösung (g/L)|Lösung g/l|Stärke der Maßlösung g/l|Gramm pro Liter (Titrant)",
    sampleMass: "Einwaage|Probe|Probengewicht|Öleinwaage|Probenmasse|Gewicht Ölprobe",
    sampleVolume: "Probe|Ölprobe|Probenvolumen|Probemenge|Öl im Becherglas|Vorgelegtes Öl",
    titre: "Titration #|Verbrauch #|Messung #|V#|ml Lauge #~|Bürette #|Versuch #",
    blank: "Blindwert|Blindprobe|Leerwert|Nullwert|Blindverbrauch|Nur Alkohol",
    meanTitre: "Mittelwert|Mittlerer Verbrauch|Durchschnitt|Ø Verbrauch|MW Titration|Schnitt",
    correctedTitre:
      "Verbrauch minus Blindwert|Nettoverbrauch|Korr. Verbrauch|Verbrauch korrigiert|Ohne Blindwert|Mittel - Blind",
    acidValue: "Säurezahl|SZ|Säurezahl mg KOH/g~|Neutralisationszahl|Säurez.|SZ (mg KOH/g)~",
    ffa: "FFS|Freie Fettsäuren|% FFS~|FFA|FFA-Gehalt|Freie FS",
    oilAmount: "Öl|Ölmenge|Altöl|Menge Öl|Öl im Reaktor|Ansatzgröße|Frittieröl",
    density: "Dichte|Öldichte|Dichte bei 20 °C|spez. Gewicht|Rho",
    temperature: "Temperatur|Temp.|Öltemperatur|Reaktionstemperatur|T Öl|Temp. Reaktor",
    base: "Katalysator|Lauge|Laugenart|KOH/NaOH|Welche Lauge|Base",
    assay: "Reinheit|Reinheit Lauge|Gehalt|KOH-Gehalt|Reinheit %~|Laugenreinheit",
    baseCharge:
      "Grundmenge|Grunddosis|Basismenge|Lauge für Frischöl|Grundbedarf|Sockelmenge|Grundmenge Lauge",
    acidDose:
      "Lauge für FFS|Zusatzlauge|Lauge zur Neutralisation|Neutralisationsmenge|Mehrbedarf Säure|Für die Säuren",
    reactionDose:
      "Lauge für Reaktion|Reaktionslauge|Lauge für Umesterung|Katalysatoranteil|Für die Umesterung|Grundlauge",
    catalystRate:
      "Lauge je Liter|Lauge pro Liter Öl|Dosierung|g/l gesamt~|Dosis je Liter Öl|Gesamt je L Öl",
    catalyst:
      "Lauge gesamt|Laugenmenge|Lauge|KOH gesamt|Katalysator gesamt|Lauge einwiegen|Benötigte Lauge",
    weighed: "Abgewogen|Eingewogen|Ist-Menge|Tatsächlich|Lauge gewogen|Waage",
    methanol: "Methanol|MeOH|Methanolmenge|Methanolzugabe|Alkohol|Meth.",
    litresMade:
      "Biodiesel|Ausbeute|Ertrag|Fertiger Diesel|Kraftstoff erhalten|Produzierte Menge|RME",
    note: "Bemerkung|Notiz|Anmerkungen|Kommentar|Beobachtung|Sonstiges",
    rough: "Vortitration|Grobtitration|Vorversuch|Grobwert|Orientierungstitration",
    target: "Ziel-FFS|Grenzwert|Sollwert|Max. FFS|Höchstwert FFS|Ziel",
    price: "Preis|Kosten|Preis je Liter|Euro|Methanolpreis|Ölkosten|CHF",
    time: "Zeit|Dauer|Reaktionszeit|Absetzzeit|Rührdauer|Stunden|Uhrzeit",
    colour: "Farbe|Aussehen|Farbton|Trübung",
    glycerol: "Glycerin|Glyzerin|Glycerinmenge|Glycerin abgelassen|Bodensatz",
    waterContent: "Wasser ppm|Wassergehalt|Feuchte|Wasser|Restfeuchte|H2O ppm",
    soap: "Seife|Seifengehalt|Seife ppm|Seifentest",
    "running total": "Summe|Gesamt bisher|Laufende Summe|Kumuliert|Jahresmenge",
  },
  units: {
    mL: "ml|mL|ccm",
    g: "g|Gramm|gr",
    L: "l|L|Liter|Ltr.",
    kg: "kg|Kilo",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|Prozent",
    "g/L": "g/l|g/L|g pro Liter|g je Liter",
    "kg/L": "kg/l|g/ml|g/cm³",
    C: "°C|C|Grad",
  },
  commas: true,
};
