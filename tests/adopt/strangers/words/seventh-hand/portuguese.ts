/** A seventh hand's Portuguese: a co-operative in Brazil, a school and a farm in Portugal. */
import type { Language } from "../role-words";

export const portuguese: Language = {
  name: "Portuguese",
  headings: {
    number: "N.º|Nº|Ensaio|Teste nº|Ordem|Item|Linha",
    date: "Data|Dia|Quando|Data do teste|Data análise|Feito em|Dt.",
    lot: "Bombona|Lote do óleo|De onde veio|Origem|Tambor|Restaurante|Bidão|Fornecedor",
    batch: "Lote|Batelada|Produção|Lote nº|Fornada|Carga|Processo nº",
    oil: "Óleo|Tipo|Tipo de óleo|Que óleo|Gordura|Matéria-prima",
    operator: "Quem|Quem fez|Iniciais|Responsável|Aluno|Analista|Nome",
    titrantBase:
      "Titulante|Base na bureta|Titulado com|Bureta com|Base titulante|Solução titulante",
    indicator: "Indicador|Ind.|Corante|Vira com|Indicador usado|Gotas de",
    molarity:
      "Molaridade|M titulante|Conc. titulante (mol/L)|mol/L bureta|Titulante M|Normalidade (N)",
    strength:
      "Titulante g/L|Solução g/l|g de soda por litro de titulante|Solução de teste (g/L)|Conc. bureta g/L|Titulante, g/l",
    sampleMass:
      "Amostra|Peso amostra|Óleo pesado|Massa da amostra|Peso do óleo|Amostra pesada|Óleo no erlenmeyer",
    sampleVolume:
      "Amostra|Vol. amostra|Óleo medido|Óleo pipetado|Óleo no copo|Volume de óleo|Alíquota",
    titre: "Gasto #|Titulação #|Bureta #|V#|Leitura #|Teste #|Consumo #",
    blank: "Branco|Gasto branco|Sem óleo|Br.|Só álcool|Prova em branco|Leitura branco",
    meanTitre: "Média|Gasto médio|Méd.|Média dos testes|Média titulação|Volume médio",
    correctedTitre:
      "Menos branco|Gasto líquido|Gasto corrigido|Média - branco|Corrigido|Vol. corrigido",
    acidValue: "Índice de acidez|IA|Índ. acidez|I.A.|Nº de acidez|Índice ácido",
    ffa: "AGL|Acidez|% AGL~|Ác. graxos livres|Acidez oleico|Ácidos gordos livres|Acidez livre",
    oilAmount:
      "Óleo|Óleo no reator|Quantidade óleo|Óleo usado|Entrada de óleo|OGR|Óleo a processar",
    density: "Densidade|Dens.|Densidade óleo|Massa específica|d|Peso específico",
    temperature: "Temp.|Temperatura|T óleo|Temp. tanque|T|Graus~|T inicial",
    base: "Catalisador|Soda/potassa|Tipo de base|Qual base|Hidróxido|Tipo catalisador",
    assay: "Pureza|Pureza soda|Teor|Pureza rótulo|Pureza catalisador|Pureza escamas",
    baseCharge:
      "Dose base|Base óleo novo|Quantidade base|Base por litro óleo virgem|Base fixa|Catalisador base",
    acidDose: "Para AGL|Extra acidez|Para neutralizar|Soda extra|Neutralização|Soda para acidez",
    reactionDose:
      "Para reação|Soda reação|Catalisador puro|Base da reação|Para a transesterificação|Parte reação",
    catalystRate: "Soda por litro|Dose total|Catalisador por litro|Dosagem|Dose|Total por litro",
    catalyst:
      "Soda|Soda total|Catalisador total|Base total|Catalisador a pôr|Soda necessária|Total de soda",
    weighed: "Soda pesada|Pesado real|Real|Balança|Soda colocada|Pesagem real",
    methanol: "Metanol|MeOH|Álcool|Met.|Metanol posto|Metanol usado",
    litresMade: "Biodiesel|Produzido|Rendimento|Saída|Combustível obtido|Bio pronto|Obtido",
    note: "Notas|Obs.|Comentários|Observ.|Ocorrências|Anotações",
    rough: "Rascunho|Teste rápido|Prévia|Aproximada|Gasto aprox.|Primeira titulação",
    target: "Limite|AGL máx.|Meta|Objetivo|Acidez máxima|Alvo",
    price: "Preço|Custo|€|Pago|R$|Valor pago",
    time: "Horas|Tempo|Decantação|h mistura|Repouso|Duração",
    colour: "Cor|Aspeto|Aparência|Tom|Aspecto|Cara do óleo",
    glycerol: "Glicerina|Glic.|Glicerina retirada|Fundo|Subproduto|Glicerol",
    waterContent: "Água ppm|Água|Umidade|Humidade ppm|H2O|Teor de água",
    soap: "Sabão|Sabões|Sabão ppm|Teste sabão|Sabão residual|Sabão após lavagem",
    "running total": "Acumulado|Total até hoje|Soma|Total acum.|Até agora|Soma do ano",
  },
  units: {
    mL: "ml|mL|cc",
    g: "g|gr|gramas",
    L: "L|l|litros|lts",
    kg: "kg|quilos|Kg",
    "mg KOH/g": "mg KOH/g|mgKOH/g",
    "%": "%|por cento",
    "g/L": "g/L|g/l|g por litro",
    "kg/L": "kg/L|kg/l|g/ml",
    C: "°C|ºC|C",
  },
  commas: true,
};
