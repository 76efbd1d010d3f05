/** A seventh hand's Spanish: a village and a school in Spain, a workshop in Mexico. */
import type { Language } from "../role-words";

export const spanish: Language = {
  name: "Spanish",
  headings: {
    number: "N.º|Núm.|Prueba|Folio|Ensayo n.º|Renglón|No.",
    date: "Fecha|Día|Cuándo|Fecha prueba|F. análisis|Fecha de titulación|Hecho el",
    lot: "Bidón|Lote aceite|De dónde|Origen|Tambo|Proveedor|Fonda|Garrafa",
    batch: "Lote|Tanda|Cocción|Batch|Lote n.º|Carga|Corrida",
    oil: "Aceite|Tipo|Clase de aceite|Tipo de grasa|Qué aceite|Materia prima",
    operator: "Quién|Hizo|Iniciales|Responsable|Alumno|Analista|Nombre",
    titrantBase:
      "Titulante|Valorante|Base en bureta|Valorado con|Bureta con|Sosa o potasa (bureta)",
    indicator: "Indicador|Ind.|Colorante|Vira con|Indicador usado|Gotas de",
    molarity:
      "Molaridad|M titulante|Conc. valorante (mol/L)|mol/l bureta|Titulante M|Normalidad (N)",
    strength:
      "Titulante g/L|Solución g/l|g de sosa por litro de titulante|Disolución de prueba (g/L)|Conc. bureta g/l|Valorante, g/L",
    sampleMass:
      "Muestra|Peso muestra|Aceite pesado|Masa de aceite|Peso de aceite|Muestra pesada|Aceite en matraz",
    sampleVolume:
      "Muestra|Vol. muestra|Aceite medido|Aceite pipeteado|Aceite en vaso|Volumen de aceite|Alícuota",
    titre: "Gasto #|Titulación #|Bureta #|V#|Lectura #|Prueba #|Consumo #",
    blank: "Blanco|Gasto blanco|Sin aceite|Bco.|Solo alcohol|Testigo|Lectura blanco",
    meanTitre: "Media|Promedio|Gasto medio|Prom.|Gasto promedio|Media de pruebas",
    correctedTitre: "Menos blanco|Gasto neto|Gasto corregido|Neto|Media - blanco|Corregido",
    acidValue: "Índice de acidez|IA|Índ. acidez|I. acidez|Núm. ácido|Número de acidez",
    ffa: "AGL|Acidez|% AGL~|Ác. grasos libres|Acidez oleico|AGL aceite|Acidez libre",
    oilAmount:
      "Aceite|Aceite al reactor|Cantidad aceite|Aceite usado|Aceite entrada|ACU|Carga de aceite",
    density: "Densidad|Dens.|Densidad aceite|Peso específico|d|Densidad relativa",
    temperature: "Temp.|Temperatura|T aceite|Temp. tanque|T|Grados~|T inicial",
    base: "Catalizador|Sosa/potasa|Tipo de base|Cuál base|Hidróxido|Tipo catalizador",
    assay: "Pureza|Pureza sosa|Riqueza|Pureza etiqueta|Pureza catalizador|Pureza escamas",
    baseCharge:
      "Dosis base|Base aceite nuevo|Cantidad base|Base por litro aceite virgen|Base fija|Catalizador base",
    acidDose:
      "Para AGL|Extra por acidez|Para neutralizar|Sosa extra|Neutralización|Base para acidez",
    reactionDose:
      "Para reacción|Sosa reacción|Catalizador puro|Base de reacción|Para la transesterificación|Parte reacción",
    catalystRate:
      "Sosa por litro|Dosis total|Catalizador por litro|Dosificación|Dosis|Total por litro",
    catalyst:
      "Sosa|Sosa total|Catalizador total|Base total|Catalizador a añadir|Base necesaria|Total de sosa",
    weighed: "Sosa pesada|Pesado real|Real|Báscula|Sosa echada|Pesada real",
    methanol: "Metanol|MeOH|Alcohol|Met.|Metanol echado|Metanol usado",
    litresMade: "Biodiésel|Producido|Rendimiento|Salida|Combustible obtenido|Bio final|Obtenido",
    note: "Notas|Obs.|Comentarios|Observ.|Incidencias|Apuntes",
    rough: "Tanteo|Prueba rápida|Previa|Aproximada|Gasto aprox.|Primera prueba",
    target: "Límite|AGL máx.|Meta|Objetivo|Acidez máxima|Tope",
    price: "Precio|Costo|€|Pagado|$|Coste",
    time: "Horas|Tiempo|Decantación|h mezcla|Reposo|Duración",
    colour: "Color|Aspecto|Apariencia|Tono|Cómo se ve|Pinta",
    glycerol: "Glicerina|Glic.|Glicerina sacada|Fondo|Subproducto|Glicerol",
    waterContent: "Agua ppm|Agua|Humedad|Hum. ppm|H2O|Contenido agua",
    soap: "Jabón|Jabones|Jabón ppm|Prueba jabón|Jabón residual|Jabón tras lavado",
    "running total": "Acumulado|Total hasta hoy|Suma|Total acum.|Llevamos|Suma del año",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gramos|grs",
    L: "L|l|litros|lts",
    kg: "kg|kilos|Kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|por ciento",
    "g/L": "g/L|g/l|gr/lt|g por litro",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|ºC|C",
  },
  commas: true,
};
