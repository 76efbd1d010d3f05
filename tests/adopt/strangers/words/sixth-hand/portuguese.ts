/** A sixth hand's Portuguese. */
import type { Language } from "../role-words";

export const portuguese: Language = {
  name: "Portuguese",
  headings: {
    number: "Número|Ordem|N.º ensaio|Seq.|Nº|Item",
    date: "Data|Data da amostra|Data do lote|Dia|Data da análise|Realizado em",
    lot: "Lote óleo|Bidão|Café de origem|Depósito|Entrega|N.º do tambor|Fonte",
    batch: "Lote produzido|Batelada n.º|Produção|N.º de lote|Batch|Reator lote|Fabrico",
    oil: "Óleo|Tipo|Descrição do óleo|Variedade de óleo|Tipo de gordura|Matéria-prima",
    operator: "Técnico|Operador|Nome|Titulado por|Encarregado|Estudante|Executado por",
    titrantBase:
      "Base titulante|Titulante usado|Álcali na bureta|Tipo de titulante|Bureta com|Solução titulante",
    indicator: "Indicador|Tipo de indicador|Indicador empregado|Indic.|Indicador adicionado",
    molarity:
      "Molaridade titulante|Titulante (mol/l)|Concentração mol/L|Normalidade da base|Molaridade NaOH|mol/L da base",
    strength:
      "Titulante (g/l)|Gramas de base por litro de água|Solução titulante g/L|Concentração g/l|Solução mãe (g/L)",
    sampleMass:
      "Massa amostra|Gramas de óleo|Amostra pesada|Peso óleo amostra|Óleo no erlenmeyer|Amostra",
    sampleVolume:
      "Volume amostra|Óleo no erlenmeyer|Amostra tomada|Óleo titulado|Óleo para titular|Amostra",
    titre:
      "Volume gasto #|Titulação #|Ensaio #|Base gasta #|ml adicionados #~|Consumo #|Repetição #",
    blank: "Branco|Titulação do branco|Só álcool|Ensaio branco|Br.|Branco sem óleo",
    meanTitre: "Titulação média|Média dos ensaios|Média gasto|Média|Volume médio gasto",
    correctedTitre:
      "Volume líquido|Média menos branco|Titulação corrigida|Líquido|Descontado branco|Volume corrigido",
    acidValue:
      "Índice acidez|Índice de acidez (mg KOH/g)~|IA|Número de acidez|Acidez mg KOH/g~|Valor de acidez",
    ffa: "Ácidos graxos livres %~|AGL %~|FFA %~|Percentagem AGL|Teor de AGL|Ácidos gordos livres %~|Acidez em oleico",
    oilAmount: "Volume de óleo|Óleo usado|Óleo carregado|Quantidade óleo|Óleo tratado|Óleo total",
    density: "Densidade|Densidade óleo|Massa volúmica|Densidade relativa|D. óleo",
    temperature: "Temperatura|Temp. reator|Temperatura óleo|Temperatura de processo|T|Aquecido a",
    base: "Base|Tipo de álcali|Catalisador usado|NaOH ou KOH|Hidróxido|Espécie de catalisador",
    assay: "Pureza base|Pureza|Pureza KOH|Grau de pureza|Pureza (%)~|Concentração soda %~",
    baseCharge:
      "Dose padrão|Base óleo virgem|Carga base|Dose óleo novo|Quantidade padrão|Dose normal",
    acidDose:
      "Base pela acidez|Neutralizante|Soda adicional|Base extra|Correção da acidez|Soda neutralização",
    reactionDose:
      "Base para reação|Soda transesterificação|Catalisador reação|Parte da reação|Soda da reação",
    catalystRate:
      "Base por litro|Gramas de soda por litro|Taxa de catalisador|Dose total por litro|Catalisador/litro|Soda por litro de óleo",
    catalyst:
      "Base total|Massa de catalisador|Soda necessária|Catalisador total|Dose de soda|Quantidade de soda|Peso de catalisador",
    weighed:
      "Soda realmente pesada|Pesado real|Base pesada|Peso na balança|Catalisador pesado|Real",
    methanol:
      "Volume de metanol|Metanol|Metanol necessário|Metanol total|Metanol usado|Metanol em litros",
    litresMade:
      "Biodiesel produzido|Volume biodiesel|Rendimento biodiesel|Combustível obtido|Litros produzidos|Biodiesel final",
    note: "Observação|Notas|Comentário|Outros|Apontamentos|Detalhes",
    rough: "Titulação aproximada|Ensaio rápido|Titulação rápida|Estimativa",
    target: "AGL alvo|Limite AGL|Máximo|Valor desejado|AGL permitido",
    price: "Custo total|Preço óleo|Preço metanol|Custo por litro|Gasto €|Valor pago",
    time: "Tempo de mistura|Hora de início|Tempo de decantação|Duração h|Tempo reação|Repouso",
    colour: "Cor do óleo|Cor|Aspecto visual|Turbidez",
    glycerol: "Glicerina obtida|Glicerina|Fase glicerina|Resíduo",
    waterContent: "Água|Teor água|Umidade do óleo|Água (ppm)|Água no óleo",
    soap: "Sabões|Teor de sabão|Sabão|Nível de sabão",
    "running total": "Total acumulado ano|Acumulado litros|Soma total|Acumulado|Total até hoje",
  },
  units: {
    mL: "mL|ml|cm3",
    g: "g|gr|gramas",
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
