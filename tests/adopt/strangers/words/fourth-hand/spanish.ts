/** A fourth hand's Spanish. */
import type { Language } from "../role-words";

export const spanish: Language = {
  name: "Spanish",
  headings: {
    number: "Nº|N.º|Núm.|Fila|Ítem",
    date: "Fecha|Día|Fecha ensayo|Fecha de análisis|F. prueba|Fcha",
    lot: "Lote|Lote aceite|Bidón|Procedencia|Garrafa|Tambor nº",
    batch: "Tanda|Nº tanda|Batch|Partida|Cocción|Nº de carga",
    oil: "Tipo de aceite|Aceite|Clase de aceite|Materia prima|Tipo AVU|Tipo ac.",
    operator: "Operario|Responsable|Hecho por|Quién|Resp.|Iniciales",
    titrantBase: "Titulante|Valorante|Base en la bureta|Titulado con|Sol. bureta|Base para titular",
    indicator: "Indicador|Ind.|Indic.|Indicador usado",
    molarity:
      "Molaridad|Molaridad titulante|Conc. (mol/L)|M valorante|Normalidad base|Titulante mol/l",
    strength:
      "Titulante g/L|g/L bureta|Sol. valorante (g/L)|Gramos por litro de la bureta|Conc. titulante g/l",
    sampleMass: "Muestra|Peso muestra|Masa de aceite|Aceite pesado|P. muestra|m aceite",
    sampleVolume: "Muestra|Vol. muestra|Volumen de aceite|Aceite en matraz|Alícuota|V aceite",
    titre: "Titulación #|Gasto #|Valoración #|Titulacion #|Bureta #|mL gastados #~",
    blank: "Blanco|Prueba en blanco|Gasto blanco|Blanco alcohol|Sin aceite|Bco.",
    meanTitre:
      "Media|Promedio|Gasto medio|Promedio titulación|Prom. gasto|Media de las valoraciones",
    correctedTitre:
      "Gasto neto|Gasto - blanco|Titulación corregida|Promedio menos blanco|Valor. sin blanco|V neto",
    acidValue: "Índice de acidez|Indice de acidez|IA|I.A.|Nº de acidez|Acidez mg KOH/g~",
    ffa: "AGL|% AGL~|Ácidos grasos libres|Acidez % oleico~|FFA|Acidos grasos libres",
    oilAmount: "Aceite|Cantidad de aceite|Aceite al reactor|Aceite a procesar|AVU|Cant. aceite",
    density: "Densidad|Dens.|Densidad aceite|Peso específico|ρ aceite",
    temperature: "Temperatura|Temp.|Tª|Temp. aceite|Tª reactor|Temperatura ac.",
    base: "Catalizador|Base|Sosa o potasa|Tipo de catalizador|Álcali|NaOH/KOH",
    assay: "Pureza|Riqueza|Pureza sosa|Pureza catalizador|% pureza~|Pureza del bote",
    baseCharge:
      "Dosis base|Cantidad base|Dosis aceite nuevo|Sosa para aceite limpio|Dosis de partida|Base fija",
    acidDose:
      "Sosa para acidez|Sosa extra|Extra por AGL|Para neutralizar|Catalizador por acidez|Exceso por titulación",
    reactionDose:
      "Sosa reacción|Catalizador reacción|Para la reacción|Sosa para transesterificar|Cat. transest.",
    catalystRate:
      "Sosa por litro|Catalizador por litro|Dosis por litro|Dosificación|g sosa/L aceite~|Cat. x litro",
    catalyst: "Sosa total|Catalizador total|Total sosa|Total catalizador|Sosa a echar|Cat. total",
    weighed: "Sosa pesada|Pesado|Catalizador pesado|Pesado real|Sosa echada|Peso real sosa",
    methanol: "Metanol|MeOH|Metanol añadido|Alcohol|Met.|CH3OH",
    litresMade: "Biodiésel|Biodiesel obtenido|Rendimiento|Producción|Salida biodiesel|BD final",
    note: "Observaciones|Notas|Obs.|Comentarios|Incidencias|Obserbaciones",
    rough: "Tanteo|Titulación previa|Ensayo rápido|Gasto aprox.",
    target: "AGL máx.|Límite AGL|Objetivo|Acidez máxima|Máx. admitido",
    price: "Precio|Coste|Costo|€ tanda|Precio/L|Pagado",
    time: "Tiempo|Horas|Tiempo de reacción|Horas reposo|Decantación h|Hrs.",
    colour: "Color|Aspecto|Tono|Apariencia",
    glycerol: "Glicerina|Glicerol|Glic.|Glicerina sacada",
    waterContent: "Agua ppm|Humedad (ppm)|H2O ppm|Agua en el aceite, ppm|KF ppm",
    soap: "Jabón|Jabón ppm|Jabones|Test de jabón",
    "running total": "Acumulado|Total acum.|Litros a la fecha|Total año|Suma y sigue",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gramos",
    L: "L|l|litros|lts",
    kg: "kg|kilos|Kg",
    "%": "%|% p/p|por ciento",
    "g/L": "g/L|g/l|gr/l|g/litro",
    "g/kg": "g/kg|gr/kg",
    "kg/L": "kg/L|g/cm3|g/ml",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|ºC|C",
  },
  commas: true,
};
