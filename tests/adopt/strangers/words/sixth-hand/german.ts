/** A sixth hand's German. */
import type { Language } from "../role-words";

export const german: Language = {
  name: "German",
  headings: {
    number: "Nummer|Lfd|Nr|Test-Nr.|Reihe|Protokollnr.",
    date: "Datum|Probenahme am|Testdatum|Tag|Datum Titration|Herstelldatum",
    lot: "Fassnummer|Ölpartie|Lieferant/Fass|Gasthaus|Behälter|Ölherkunft|Ölfass",
    batch: "Charge Nr.|Ansatz|Herstellung|Batch-Nr.|Reaktorcharge|Produktion",
    oil: "Öl|Sorte|Ölart|Fettsorte|Art|Ausgangsstoff",
    operator: "Durchgeführt von|Prüfer|Mitarbeiter|Schüler|Maschinist|Zeichen",
    titrantBase:
      "Titrationslauge|Titriermittel|Base Bürette|Lauge für Titration|Bürette gefüllt mit|Verwendete Maßlösung",
    indicator: "Indikator|Verwendeter Indikator|Indik.|Indikatorart|Farbstoff",
    molarity:
      "Molarität (mol/L)|Titrant mol/l|Konzentration Lauge mol/L|Stoffmengenkonz.|Normalität Lauge|c in mol/l",
    strength:
      "Titrant g/L|Lauge g/l Wasser|Gramm je Liter Titrierlösung|Titrationslösung g/l|Konz. g/l|Stammlösung (g/l)",
    sampleMass: "Probenmenge|Masse Probe|Öl eingewogen|Probeneinwaage|Gewicht der Probe|m Probe",
    sampleVolume:
      "Probenmenge|Volumen der Probe|Ölvolumen Titration|Öl im Kolben|Titriertes Öl|Probe Öl",
    titre:
      "Titrationsverbrauch #|Titration #|Laugenverbrauch #|Titer #|Verbr. #|Ablesung #|Zugabe ml #~",
    blank: "Blindtitration|Blindwert|Blindversuch|Ohne Öl|Blindw.|Lösungsmittel allein",
    meanTitre:
      "Durchschnitt Titration|Mittelwert|Mittel|Verbrauch Mittel|Mittelwert Verbrauch|Durchschn.",
    correctedTitre:
      "Netto|Mittel minus Blindwert|Verbrauch netto|Bereinigt|Titration abzgl. Blindwert|Differenz zum Blindwert",
    acidValue: "Säurezahl|SZ|Säurewert|Säurezahl (mg KOH/g)~|S.Z.",
    ffa: "FFA|Fettsäuren frei|FFS %~|Anteil freier Fettsäuren|FFS-Gehalt|Freie Fettsäure",
    oilAmount: "Ölmenge|Öl eingesetzt|Menge Altöl|Eingesetztes Öl|Öl gesamt|Pflanzenöl|Öleinsatz",
    density: "Dichte|Dichte Öl|Spez. Gew.|Dichte des Öls|Spezifisches Gewicht",
    temperature: "Temperatur Öl|Temp|Prozesstemperatur|Reaktortemperatur|Temperatur|Aufgeheizt auf",
    base: "Katalysatorart|Base|Lauge|Art der Lauge|Hydroxid|KOH oder NaOH",
    assay: "Reinheitsgrad|Reinheit KOH|Reinheit|Lauge Reinheit %~|Wirkstoff %~|Gehalt KOH",
    baseCharge: "Grunddosierung|Basisdosis|Standarddosis|Lauge für neues Öl|Grundmenge|Normaldosis",
    acidDose:
      "Lauge für Säure|Neutralisation|Zusätzliche Lauge|Lauge für freie Fettsäuren|Zuschlag Säure|Säureanteil",
    reactionDose:
      "Lauge Umesterung|Katalysator für Reaktion|Reaktionsanteil|Lauge für die Reaktion|Umesterung|Standardlauge",
    catalystRate:
      "Lauge/Liter|Katalysator pro Liter|Dosis pro Liter|Lauge pro L Öl|Gesamtdosis je Liter|Laugendosis",
    catalyst:
      "Gesamtlauge|Katalysatormenge|Lauge für Ansatz|Laugenmenge gesamt|Katalysator|Summe Lauge|Lauge abzuwiegen",
    weighed:
      "Lauge abgewogen|Tatsächlich gewogen|Gewogen|Istgewicht|Wirklich eingewogen|Einwaage Lauge",
    methanol:
      "Methanol|Methanolbedarf|Methanolvolumen|Methanol zugegeben|MeOH Menge|Menge Methanol",
    litresMade:
      "Biodieselmenge|Biodiesel erzeugt|Fertigmenge|Ausbeute Biodiesel|Produkt|Kraftstoffmenge|Biodiesel erhalten",
    note: "Anmerkung|Bemerkungen|Hinweise|Notizen|Kommentare|Besonderes",
    rough: "Grobe Titration|Vortest|Probetitration|Schnelltitration",
    target: "Zielwert FFS|Limit|Maximal|Grenze FFS|Soll",
    price: "Kosten Methanol|Einkaufspreis|Preis pro Liter|Gesamtkosten|Kosten Ansatz|Betrag €",
    time: "Reaktionsdauer|Rührzeit|Absetzdauer|Startzeit|Dauer (h)|Mischdauer",
    colour: "Ölfarbe|Farbe|Optik|Aussehen Öl",
    glycerol: "Glycerinphase|Glycerin|Glycerinanfall|Rohglycerin|Abfall Glycerin",
    waterContent: "Wassergehalt|Wasser (ppm)|Feuchtigkeit|Wasser im Öl|KF Wasser|Feuchtegehalt",
    soap: "Seifen|Seifenzahl|Seifenanteil|Seife",
    "running total": "Summe bisher|Gesamtmenge|Kumulierte Menge|Laufend|Gesamt Jahr",
  },
  units: {
    mL: "ml|mL|cm³",
    g: "g|Gramm|gr.",
    L: "l|L|Liter",
    kg: "kg|KG|kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg KOH / g",
    "%": "%|Prozent",
    "g/L": "g/l|g/L|g/Liter|Gramm/Liter",
    "kg/L": "kg/l|g/ml|kg/L",
    C: "°C|Grad C|C",
  },
  commas: true,
};
