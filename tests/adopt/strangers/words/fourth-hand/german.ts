/** A fourth hand's German. */
import type { Language } from "../role-words";

export const german: Language = {
  name: "German",
  headings: {
    number: "Nr.|lfd. Nr.|Lfd.|Zeile|Pos.",
    date: "Datum|Tag|Dat.|Prüfdatum|Gemacht am|Datum Titr.",
    lot: "Öl-Charge|Fass|Fass-Nr.|Lieferung|Herkunft|Gebinde",
    batch: "Ansatz|Ansatz-Nr.|Charge|Chargen-Nr.|Sud|Ans.",
    oil: "Ölsorte|Ölart|Sorte|Art des Öls|Rohstoff|Öl",
    operator: "Bearbeiter|Name|Wer|Kürzel|Durchgeführt von|gez.",
    titrantBase: "Titrant|Maßlösung|Titriert mit|Lauge in Bürette|Titrierlauge|Titr.-Mittel",
    indicator: "Indikator|Ind.|Indik.|Farbindikator|Indikatorlsg.",
    molarity:
      "Molarität|c (mol/l)|Maßlösung mol/l|Konz. Lauge (mol/L)|Normalität Titrant|Molarität Bürette",
    strength:
      "Titrierlauge g/l|Maßlösung (g/L)|g/l in Bürette|Lauge Gramm pro Liter Wasser|Titrant g/L|Bürettenlsg. g/l",
    sampleMass: "Einwaage|Probenmasse|Probe|Einwaage Öl|m (Probe)|Gew. Probe",
    sampleVolume: "Probenvolumen|Ölprobe|Probe|Probevolumen|V (Probe)|Öl im Kolben",
    titre: "Verbrauch #|Titration #|Titr. #|Bürette #|ml Verbrauch #~|Verbr. #",
    blank: "Blindwert|Blindprobe|BW|Leerwert|Verbrauch ohne Öl|V0",
    meanTitre: "Mittelwert|Mittel|Durchschnitt|Ø Verbrauch|Mittelw. Titr.|MW",
    correctedTitre:
      "Verbrauch - Blindwert|Nettoverbrauch|Verbrauch korr.|Abzgl. Blindwert|Korrigierter Verbrauch|V - V0",
    acidValue: "Säurezahl|SZ|Saeurezahl|Säurezahl mg KOH/g~|Neutralisationszahl",
    ffa: "FFS|FFA|Freie Fettsäuren|FFS %~|Freie FS|freie Fettsaeuren",
    oilAmount: "Ölmenge|Öl im Reaktor|Menge Öl|Altspeiseöl|Pflanzenöl|Ansatzgröße",
    density: "Dichte|Dichte Öl|Spez. Gewicht|ρ Öl|Dichte b. 20 °C",
    temperature: "Temperatur|Temp.|Öltemp.|Reaktortemp.|T Öl|Grad",
    base: "Katalysator|Base|Lauge|KOH o. NaOH|Kat.-Typ|Laugenart",
    assay: "Reinheit|Gehalt|Reinheit Lauge|Reinheit KOH/NaOH|Gehalt lt. Etikett|Reinh.",
    baseCharge: "Grundmenge|Grunddosis|Grundmenge Lauge|Menge für Frischöl|Basismenge|Stöch. Menge",
    acidDose:
      "Lauge für FFS|Zuschlag FFS|Lauge Neutralisation|Lauge für Säure|Mehrmenge lt. Titration|Lauge extra",
    reactionDose:
      "Lauge für Reaktion|Lauge Umesterung|Lauge für Umesterung|Grundlauge|Reaktionslauge|Kat. für Umest.",
    catalystRate:
      "Lauge pro Liter|Lauge je Liter Öl|Dosierung|Dosis pro Liter|g Lauge/L Öl~|Kat. je Liter",
    catalyst: "Lauge gesamt|Katalisator gesamt|Laugenmenge|Gesamtlauge|Summe Lauge|Kat. ges.",
    weighed:
      "Lauge gewogen|Abgewogen|Lauge abgewogen|Ist-Menge Lauge|Tatsächlich abgewogen|Lauge lt. Waage",
    methanol: "Methanol|MeOH|Methanolmenge|Meth.|Alkohol|CH3OH",
    litresMade: "Ausbeute|Biodiesel|Biodiesel fertig|Fertige Menge|Ertrag BD|FAME",
    note: "Bemerkung|Bemerkungen|Notiz|Bem.|Auffälligkeiten|Sonstiges",
    rough: "Vortitration|Vorversuch|Grobtitration|Titr. grob",
    target: "Grenzwert FFS|Ziel FFS|Max. FFS|FFS Soll|Zielwert|FFS-Limit",
    price: "Preis|Kosten|Materialkosten|€ je Ansatz|Preis/L|EK €",
    time: "Dauer|Stunden|Absetzzeit|Rührzeit (h)|Reaktionszeit|Std.",
    colour: "Farbe|Aussehen|Färbung|Farbton",
    glycerol: "Glycerin|Glyzerin|Glycerin abgelassen|Rohglycerin|Glyc.",
    waterContent: "Wasser ppm|Wassergehalt (ppm)|H2O ppm|Feuchte ppm|Wasser im Öl, ppm|KF ppm",
    soap: "Seife|Seife ppm|Seifengehalt|Seifentest",
    "running total": "Summe bisher|Laufende Summe|Kumuliert|Jahressumme|Liter insges.",
  },
  units: {
    mL: "ml|mL|cm³",
    g: "g|Gramm",
    L: "L|l|Liter|Ltr.",
    kg: "kg|Kilo",
    "%": "%|Prozent|Gew.-%",
    "g/L": "g/l|g/L|g/Liter",
    "g/kg": "g/kg",
    "kg/L": "kg/l|g/cm³|g/ml",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|Grad C|C",
  },
  commas: true,
};
