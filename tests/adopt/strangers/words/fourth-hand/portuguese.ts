/** A fourth hand's Portuguese. */
import type { Language } from "../role-words";

export const portuguese: Language = {
  name: "Portuguese",
  headings: {
    number: "Nº|N.º|Item|Linha|Nº ordem",
    date: "Data|Dia|Data da análise|Data do teste|Dt.|Feito em",
    lot: "Lote|Lote do óleo|Tambor|Bombona|Origem|Bidão nº",
    batch: "Batelada|Nº batelada|Fornada|Batch|Produção nº|Bat.",
    oil: "Tipo de óleo|Óleo|Matéria-prima|Qual óleo|Tipo OAU|Espécie de óleo",
    operator: "Operador|Responsável|Feito por|Quem|Resp.|Rubrica",
    titrantBase: "Titulante|Base na bureta|Titulado com|Sol. da bureta|Base p/ titular|Titul. com",
    indicator: "Indicador|Ind.|Indic.|Indicador usado",
    molarity:
      "Molaridade|Molaridade titulante|Conc. (mol/L)|M do titulante|Normalidade da base|Titulante mol/l",
    strength:
      "Titulante g/L|g/L na bureta|Sol. titulante (g/L)|Gramas por litro de titulante|Conc. bureta g/l",
    sampleMass: "Amostra|Massa da amostra|Peso amostra|Óleo pesado|m óleo|P. da amostra",
    sampleVolume: "Amostra|Volume da amostra|Vol. óleo|Alíquota|Óleo no erlenmeyer|V amostra",
    titre: "Titulação #|Volume gasto #|Gasto #|Titulaçao #|Bureta #|mL gastos #~",
    blank: "Branco|Ensaio em branco|Gasto branco|Prova em branco|Sem óleo|Br.",
    meanTitre: "Média|Média titulação|Gasto médio|Volume médio|Media",
    correctedTitre:
      "Gasto - branco|Volume corrigido|Gasto líquido|Média menos branco|Titul. corrigida|V - V branco",
    acidValue: "Índice de acidez|IA|I.A.|Indice de acidez|Nº de acidez|Acidez mg KOH/g~",
    ffa: "AGL|% AGL~|Ácidos graxos livres|Ácidos gordos livres|Acidez (% oleico)~|FFA",
    oilAmount: "Óleo|Quantidade de óleo|Óleo no reator|Qtd. óleo|OAU|Carga de óleo",
    density: "Densidade|Dens.|Densidade do óleo|Massa específica|ρ óleo",
    temperature: "Temperatura|Temp.|Temp. óleo|T do reator|Temp. reação|Tº",
    base: "Catalisador|Base|Soda ou potassa|Tipo de catalisador|NaOH/KOH|Álcali",
    assay: "Pureza|Pureza da soda|Teor|Pureza catalisador|% pureza~|Teor do rótulo",
    baseCharge:
      "Dose base|Quantidade base|Dose óleo novo|Soda p/ óleo limpo|Dose fixa|Base de partida",
    acidDose:
      "Soda p/ acidez|Soda extra|Extra pelos AGL|Para neutralizar|Catalisador p/ neutralizar|Soda da titulação",
    reactionDose:
      "Soda da reação|Catalisador da reação|Soda p/ transesterificação|Para a reação|Cat. transest.",
    catalystRate:
      "Soda por litro|Catalisador por litro|Dosagem|Dose por litro|g soda/L óleo~|Cat. p/ litro",
    catalyst: "Soda total|Catalisador total|Total de soda|Total catalisador|Soda a usar|Cat. total",
    weighed: "Soda pesada|Pesado|Catalisador pesado|Peso real|Soda usada|Pesado na balança",
    methanol: "Metanol|MeOH|Álcool|Metanol usado|Met.|CH3OH",
    litresMade: "Biodiesel|Biodiesel obtido|Rendimento|Produção|Biodiesel pronto|BD final",
    note: "Observações|Obs.|Notas|Observaçoes|Anotações|Ocorrências",
    rough: "Titulação rápida|Titulação prévia|Ensaio prévio|Gasto aprox.",
    target: "AGL máx.|Limite AGL|Meta AGL|Acidez máxima|Máx. permitido",
    price: "Preço|Custo|Custo da batelada|Valor pago|Preço/L|R$",
    time: "Tempo|Horas|Tempo de reação|Decantação (h)|Horas de repouso|Hrs",
    colour: "Cor|Aspecto|Aparência|Tom",
    glycerol: "Glicerina|Glicerol|Glic.|Glicerina retirada",
    waterContent: "Água ppm|Umidade (ppm)|Humidade ppm|H2O ppm|Água no óleo, ppm",
    soap: "Sabão|Sabão ppm|Teor de sabão|Teste de sabão",
    "running total": "Acumulado|Total acum.|Litros até hoje|Soma|Total do ano",
  },
  units: {
    mL: "mL|ml|cc",
    g: "g|gr|gramas",
    L: "L|l|litros|lts",
    kg: "kg|quilos|Kg",
    "%": "%|% m/m",
    "g/L": "g/L|g/l|gr/L|g/litro",
    "g/kg": "g/kg|gr/kg",
    "kg/L": "kg/L|g/cm³|g/mL",
    "mg KOH/g": "mg KOH/g|mgKOH/g|mg/g",
    C: "°C|ºC|C",
  },
  commas: true,
};
