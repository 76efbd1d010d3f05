/** A fifth hand's Spanish. */
import type { Language } from "../role-words";

export const spanish: Language = {
  name: "Spanish",
  headings: {
    number: "N.º|No.|Núm.|Renglón|Registro|Ítem",
    date: "Fecha|Día|Fecha de ensayo|Fecha titulación|Fech.|Cuándo",
    lot: "Lote de aceite|Bidón|Procedencia|Origen|Tambor|Recogida|Restaurante",
    batch: "Tanda|Bache|N.º de tanda|Producción|Cocción|Corrida|Lote de biodiésel",
    oil: "Tipo de aceite|Clase de aceite|Materia prima|Grasa|Qué aceite|Aceite usado",
    operator: "Operador|Responsable|Hecho por|Iniciales|Quién|Alumno|Analista",
    titrantBase:
      "Titulante|Valorante|Base en la bureta|Sosa o potasa (titulante)|Titulado con|Reactivo",
    indicator: "Indicador|Ind.|Indicador usado|Vira con|Colorante",
    molarity:
      "Molaridad|Normalidad|Conc. titulante (mol/L)|Titulante mol/L|M de la sosa|Concentración molar",
    strength:
      "Titulante g/L|g de sosa por litro de agua|Solución g/l|Gramos por litro (titulante)|Disolución valorante g/L|Solución de referencia (g/L)",
    sampleMass: "Peso de muestra|Muestra|Aceite pesado|Masa de aceite|Masa muestra|Pesada",
    sampleVolume:
      "Muestra|Volumen de muestra|Aceite en la prueba|Alícuota|Muestra de aceite|Aceite tomado",
    titre: "Titulación #|Gasto #|Lectura #|Bureta #|ml gastados #~|Prueba #|Valoración #|Volumen #",
    blank: "Blanco|Prueba en blanco|Testigo|Sin aceite|Blanco alcohol|Gasto del blanco",
    meanTitre: "Promedio|Media|Gasto medio|Promedio de titulaciones|Prom.|Media valoraciones",
    correctedTitre:
      "Gasto neto|Titulación menos blanco|Corregido|Gasto corregido|Promedio - blanco|Neto",
    acidValue:
      "Índice de acidez|Valor ácido|I.A.|Índice acidez mg KOH/g~|Número ácido|Acidez (mg KOH/g)~",
    ffa: "AGL|% AGL~|Ácidos grasos libres|FFA|Acidez libre|Acidez % oleico~",
    oilAmount:
      "Aceite|Cantidad de aceite|Aceite a procesar|Aceite en reactor|Tamaño de tanda|Aceite cargado",
    density: "Densidad|Densidad del aceite|Dens.|Peso específico|Gravedad específica",
    temperature: "Temperatura|Temp.|Temp. aceite|Temperatura de reacción|Grados|T del reactor",
    base: "Catalizador|Sosa/potasa|Tipo de base|KOH/NaOH|Lejía|Tipo de catalizador",
    assay: "Pureza|Pureza de la sosa|Pureza %~|Riqueza|% pureza base~|Ley",
    baseCharge:
      "Dosis base|Base para aceite nuevo|Cantidad base|Dosis fija|Dosis inicial|Catalizador aceite virgen",
    acidDose:
      "Sosa para acidez|Base para neutralizar|Extra por acidez|Sosa para AGL|Para neutralizar|Neutralización",
    reactionDose:
      "Sosa para reacción|Base de reacción|Para la reacción|Catalizador de reacción|Transesterificación",
    catalystRate:
      "Sosa por litro|Catalizador por litro|Dosis por litro|Total por litro|Base por L de aceite|Dosificación",
    catalyst:
      "Sosa total|Catalizador|Total de base|Cantidad de catalizador|Sosa a pesar|Catalizador necesario|Potasa total",
    weighed: "Pesado|Sosa pesada|Cantidad real|Peso real|Realmente añadido|Balanza",
    methanol:
      "Metanol|MeOH|Metanol añadido|Cantidad de metanol|Alcohol|Metanol a usar|Alcohol metílico",
    litresMade:
      "Biodiésel|Rendimiento|Biodiésel obtenido|Combustible producido|Producto final|Salida",
    note: "Notas|Observaciones|Comentarios|Obs.|Apuntes|Incidencias",
    rough: "Titulación previa|Prueba rápida|Aproximada|Tanteo|Ensayo previo",
    target: "Objetivo AGL|AGL máximo|Límite|Meta|Máximo permitido",
    price: "Precio|Costo|Coste|Costo del metanol|Euros|Precio por litro|Gasto en pesos",
    time: "Tiempo|Hora|Duración|Horas de reposo|Tiempo de reacción|Decantación h",
    colour: "Color|Aspecto|Apariencia|Tono",
    glycerol: "Glicerina|Glicerol|Glicerina drenada|Subproducto",
    waterContent: "Agua ppm|Humedad|Agua|Contenido de agua|Humedad ppm",
    soap: "Jabón|Jabones|Jabón ppm|Prueba de jabón",
    "running total": "Acumulado|Total acumulado|Total a la fecha|Suma|Total del año",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gramos",
    L: "L|litros|l|lts",
    kg: "kg|Kg|kilos",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|por ciento",
    "g/L": "g/L|g/l|gr/litro|g por litro",
    "kg/L": "kg/L|g/ml|kg/l",
    C: "°C|C|grados C",
  },
  commas: true,
};
