/** A sixth hand's Spanish. */
import type { Language } from "../role-words";

export const spanish: Language = {
  name: "Spanish",
  headings: {
    number: "Nº|Número|Orden|N.º de ensayo|Fila|Correlativo",
    date: "Fecha|Fecha del lote|Fecha de muestreo|Día|Fecha de análisis|Realizado el",
    lot: "Lote aceite|Garrafa|Bar de origen|Proveedor/bidón|Depósito|Entrega|N.º de bidón",
    batch: "Lote producido|Tanda|N.º lote|Producción n.º|Batch|Reactor lote|Hornada",
    oil: "Aceite|Tipo|Descripción del aceite|Variedad de aceite|Tipo de grasa|Materia prima",
    operator: "Técnico|Operario|Nombre|Titulado por|Encargado|Estudiante|Realizado por",
    titrantBase:
      "Base titulante|Titulante usado|Álcali en bureta|Tipo de titulante|Bureta con|Solución titulante",
    indicator: "Indicador|Tipo de indicador|Indicador empleado|Indic.|Indicador añadido",
    molarity:
      "Molaridad titulante|Titulante (mol/l)|Concentración mol/L|Normalidad de la base|Molaridad NaOH|mol/L de la base",
    strength:
      "Titulante (g/l)|Gramos de base por litro de agua|Solución de titulación g/L|Concentración g/l|Solución madre (g/L)",
    sampleMass:
      "Masa de muestra|Gramos de aceite|Muestra pesada|Peso aceite muestra|Aceite en matraz|Muestra",
    sampleVolume:
      "Volumen muestra|Aceite en matraz|Muestra tomada|Aceite titulado|Aceite para titular|Muestra",
    titre:
      "Volumen gastado #|Titulación #|Ensayo #|Base gastada #|ml añadidos #~|Consumo #|Repetición #",
    blank: "Blanco|Titulación del blanco|Solo alcohol|Ensayo blanco|Bl.|Blanco sin aceite",
    meanTitre:
      "Titulación media|Media de volúmenes|Promedio gasto|Media|Volumen promedio|Promedio ml~",
    correctedTitre:
      "Volumen neto|Media menos blanco|Titulación corregida|Neto sin blanco|Descontado blanco|Volumen corregido",
    acidValue:
      "Índice acidez|Índice de acidez (mg KOH/g)~|IA|Número de acidez|Acidez mg KOH/g~|Valor de acidez",
    ffa: "Ácidos grasos libres %~|AGL %~|FFA %~|Porcentaje AGL|Contenido AGL|Acidez oleica",
    oilAmount:
      "Volumen de aceite|Aceite usado|Aceite en el reactor|Cantidad aceite|Aceite tratado|Aceite total",
    density: "Densidad|Densidad aceite|Peso específico|Densidad relativa|D. aceite",
    temperature:
      "Temperatura|Temp. reactor|Temperatura aceite|Temperatura de proceso|T|Calentado a",
    base: "Base|Tipo de álcali|Catalizador usado|NaOH o KOH|Hidróxido|Clase de catalizador",
    assay: "Pureza base|Pureza|Pureza KOH|Grado de pureza|Pureza (%)~|Concentración sosa %~",
    baseCharge:
      "Dosis estándar|Base aceite virgen|Carga base|Dosis aceite nuevo|Cantidad estándar|Dosis normal",
    acidDose:
      "Base por acidez|Neutralizante|Sosa adicional|Base extra|Corrección por acidez|Sosa neutralización",
    reactionDose:
      "Base para reacción|Sosa transesterificación|Catalizador reacción|Parte reacción|Sosa de reacción",
    catalystRate:
      "Base por litro|Gramos de sosa por litro|Tasa de catalizador|Dosis total por litro|Catalizador/litro|Sosa por litro de aceite",
    catalyst:
      "Base total|Masa de catalizador|Sosa necesaria|Catalizador total|Dosis de sosa|Cantidad de sosa|Peso de catalizador",
    weighed:
      "Sosa realmente pesada|Pesado real|Base pesada|Peso en balanza|Catalizador pesado|Real",
    methanol:
      "Volumen de metanol|Metanol|Metanol necesario|Metanol total|Metanol usado|Metanol en litros",
    litresMade:
      "Biodiésel producido|Volumen biodiésel|Rendimiento biodiésel|Combustible obtenido|Litros producidos|Biodiésel final",
    note: "Observación|Notas|Comentario|Otros|Anotaciones|Detalles",
    rough: "Titulación aproximada|Ensayo rápido|Titulación rápida|Estimación",
    target: "AGL objetivo|Límite AGL|Máximo|Valor deseado|AGL permitido",
    price: "Costo total|Precio aceite|Precio metanol|Coste por litro|Gasto €|Importe",
    time: "Tiempo de mezcla|Hora de inicio|Tiempo de decantación|Duración h|Tiempo reacción|Reposo",
    colour: "Color del aceite|Color|Aspecto visual|Turbidez",
    glycerol: "Glicerina obtenida|Glicerina|Fase glicerina|Residuo",
    waterContent: "Agua|Contenido agua|Humedad del aceite|Agua (ppm)|Agua en aceite",
    soap: "Jabones|Contenido jabón|Jabón|Nivel de jabón",
    "running total": "Total acumulado año|Acumulado litros|Suma total|Acumulado|Total hasta hoy",
  },
  units: {
    mL: "mL|ml|cm3",
    g: "g|gr|gramos",
    L: "L|litros|l|Lts",
    kg: "kg|Kg|kgs",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%",
    "g/L": "g/L|g/l|g por litro",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|C|ºC",
  },
  commas: true,
};
