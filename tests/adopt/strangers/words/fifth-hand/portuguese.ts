/** A fifth hand's Portuguese. */
import type { Language } from "../role-words";

export const portuguese: Language = {
  name: "Portuguese",
  headings: {
    number: "N.º|Nº|Item|Registo|Registro|Linha",
    date: "Data|Dia|Data do teste|Data da titulação|Dt.|Quando",
    lot: "Lote do óleo|Tambor|Origem|Proveniência|Bombona|Recolha|Restaurante",
    batch: "Batelada|Lote|N.º da batelada|Produção|Fornada|Rodada|Lote de biodiesel",
    oil: "Tipo de óleo|Matéria-prima|Óleo usado|Gordura|Qual óleo|Espécie de óleo",
    operator: "Operador|Responsável|Feito por|Iniciais|Quem|Aluno|Técnico",
    titrantBase:
      "Titulante|Base na bureta|Titulado com|Soda ou potassa (titulante)|Reagente|Base titulante",
    indicator: "Indicador|Ind.|Indicador usado|Corante|Viragem com",
    molarity:
      "Molaridade|Normalidade|Conc. titulante (mol/L)|Titulante mol/L|Concentração molar|M da soda",
    strength:
      "Titulante g/L|g de soda por litro de água|Solução g/l|Gramas por litro (titulante)|Solução de titulação g/L|Força do titulante (g/L)",
    sampleMass: "Massa da amostra|Amostra|Peso da amostra|Óleo pesado|Peso de óleo|Pesagem",
    sampleVolume: "Amostra|Volume da amostra|Óleo no teste|Alíquota|Amostra de óleo|Óleo pipetado",
    titre: "Titulação #|Gasto #|Leitura #|Bureta #|ml gastos #~|Teste #|Volume #|Ensaio #",
    blank: "Branco|Prova em branco|Ensaio em branco|Sem óleo|Branco do álcool|Gasto do branco",
    meanTitre: "Média|Média das titulações|Gasto médio|Méd.|Média dos volumes|Volume médio",
    correctedTitre:
      "Gasto líquido|Titulação menos branco|Corrigido|Volume corrigido|Média - branco|Sem o branco",
    acidValue:
      "Índice de acidez|Valor ácido|I.A.|Índice acidez mg KOH/g~|Número de acidez|Acidez (mg KOH/g)~",
    ffa: "AGL|% AGL~|Ácidos gordos livres|Ácidos graxos livres|FFA|Acidez livre|Acidez % oleico~",
    oilAmount:
      "Óleo|Quantidade de óleo|Óleo a processar|Óleo no reator|Óleo de fritura|Tamanho da batelada",
    density: "Densidade|Densidade do óleo|Dens.|Massa específica|Peso específico",
    temperature: "Temperatura|Temp.|Temp. do óleo|Temperatura da reação|Graus|T do reator",
    base: "Catalisador|Soda/potassa|Tipo de base|KOH/NaOH|Tipo de catalisador|Qual base",
    assay: "Pureza|Pureza da soda|Pureza %~|Teor da soda|% pureza base~|Grau de pureza",
    baseCharge:
      "Dose base|Base para óleo novo|Quantidade base|Dose fixa|Dose inicial|Soda para óleo virgem",
    acidDose:
      "Soda para acidez|Base para neutralizar|Extra pela acidez|Soda para AGL|Para neutralizar|Neutralização",
    reactionDose:
      "Soda para reação|Base da reação|Para a reação|Catalisador da reação|Transesterificação",
    catalystRate:
      "Soda por litro|Catalisador por litro|Dose por litro|Total por litro|Base por L de óleo|Dosagem",
    catalyst:
      "Soda total|Catalisador|Total de base|Quantidade de catalisador|Soda a pesar|Catalisador necessário|Potassa total",
    weighed: "Pesado|Soda pesada|Quantidade real|Peso real|Realmente usado|Balança",
    methanol:
      "Metanol|MeOH|Metanol adicionado|Quantidade de metanol|Álcool|Metanol a usar|Álcool metílico",
    litresMade: "Biodiesel|Rendimento|Biodiesel obtido|Combustível produzido|Produto final|Saída",
    note: "Notas|Observações|Comentários|Obs.|Anotações|Ocorrências",
    rough: "Titulação prévia|Teste rápido|Aproximada|Ensaio prévio|Titulação grosseira",
    target: "Meta AGL|AGL máximo|Limite|Objetivo|Máximo permitido",
    price: "Preço|Custo|Custo do metanol|Valor R$|Preço por litro|Euros|Despesa",
    time: "Tempo|Hora|Duração|Horas de repouso|Tempo de reação|Decantação h",
    colour: "Cor|Aspecto|Aparência|Tom",
    glycerol: "Glicerina|Glicerol|Glicerina drenada|Subproduto",
    waterContent: "Água ppm|Humidade|Umidade|Água|Teor de água|Umidade ppm",
    soap: "Sabão|Sabões|Sabão ppm|Teste de sabão",
    "running total": "Acumulado|Total acumulado|Total até à data|Soma|Total do ano",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gramas",
    L: "L|litros|l|lt",
    kg: "kg|Kg|quilos",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    "%": "%|por cento",
    "g/L": "g/L|g/l|g por litro|gramas/litro",
    "kg/L": "kg/L|g/ml|kg/l",
    C: "°C|C|graus C",
  },
  commas: true,
};
