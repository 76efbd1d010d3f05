/**
 * The bibliography, by id. A constant or a check names its source by id, so that one correction here
 * reaches the help pages, the README and the tests.
 */
export const sources = {
  ciaaw: "CIAAW, conventional atomic weights 2021 (commonly cited)",
  iso660: "ISO 660:2020, Animal and vegetable fats and oils: acid value and acidity",
  en14104: "EN 14104, Fatty acid methyl esters: determination of acid value",
  aocsCa5a: "AOCS Ca 5a-40 / ASTM D5555-95(2011), Free fatty acids, Table 1",
  aocsCd3d: "AOCS Cd 3d-63, Acid value (commonly cited)",
  quam: "Eurachem/CITAC CG 4, QUAM:2012, third edition",
  codex: "Codex Alimentarius CXS 210 and CXS 211, mid-range values (commonly cited)",
  noureddini:
    "Noureddini, Teoh, Clements, JAOCS 69 (1992) 1184: density falls with temperature (slope commonly cited)",
  vanGerpen: "Van Gerpen and others, NREL/SR-510-36244 (2004) (commonly cited)",
  freedman: "Freedman, Pryde, Mounts, JAOCS 61 (1984) 1638 (commonly cited)",
  ma: "Ma, Clements, Hanna, Trans. ASAE 41 (1998) 1261",
  kombe: "Kombe and others, Advances in Chemical Engineering and Science 3 (2013), review",
  canakci: "Canakci, Van Gerpen, Trans. ASAE 44 (2001) 1429 (amounts commonly cited)",
  internationalYard:
    "International yard and pound agreement 1959: 1 lb = 0.45359237 kg exactly; US gallon = 231 cubic inches",
  imperialGallon: "UK Weights and Measures Act 1985: 1 gallon = 4.54609 L exactly",
  handbook: "Handbook densities at 20 C (commonly cited)",
  mmwr: "CDC, MMWR 55(45):1227",
  methanolVapour: "6 %: NIOSH, IDLH values; the rest commonly cited",
  methanolLimit: "OSHA and NIOSH: NIOSH, IDLH values",
  aocsCc17: "AOCS Cc 17-95 (formerly Cc 17-79), Soap in oil: the method; formula by hand",
  nrel36240: "Van Gerpen and others, NREL/SR-510-36240 (2004), Analytical Methods (commonly cited)",
  en14214: "EN 14214:2012+A1:2014, limits of fatty acid methyl esters",
  astmD6751: "ASTM D6751, limits as its summary of 2009 gives them",
  jcgm106: "JCGM 106:2012, Conformity assessment, guarded acceptance (commonly cited)",
  aocsCa14: "AOCS Ca 14-56, Total, free and combined glycerol (formula commonly cited)",
  iso662: "ISO 662, Moisture and volatile matter content (formula commonly cited)",
  codataGas: "CODATA 2018, molar volume of an ideal gas at 0 C and 101.325 kPa (commonly cited)",
  potentiometric:
    "Textbook table of a potentiometric titration, chloride by silver nitrate (commonly cited)",
  harvey: "Harvey, Modern Analytical Chemistry, Table 9.5",
  practice: "Common practice, no source",
  definition: "By definition",
  byHand: "By hand",
  grubbs: "ISO 5725-2:2019, 7.3.4; ASTM E178",
  gum: "JCGM 100:2008 (GUM)",
  nistHandbook: "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1",
  nistStrd: "NIST Statistical Reference Datasets (StRD), univariate",
  nistControl: "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2",
  nistWeighted: "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4",
  nistAnova: "NIST Statistical Reference Datasets (StRD), analysis of variance",
  nelson: "Nelson, Journal of Quality Technology 16 (1984) 237 (commonly cited)",
  iso5725Pooled: "ISO 5725-2, repeatability as a pooled variance (commonly cited)",
  astmE178: "ASTM E178, breaking strengths (commonly cited)",
  iso5725Table: "ISO 5725-2:1994, Table 5 (commonly cited)",
  iso5725Range: "ISO 5725-6:1994, Table 1 (commonly cited)",
  dixon: "Rorabacher, Analytical Chemistry 63 (1991) 139; McBane, J. Stat. Soft. 16(3) (2006)",
  studentTable: "JCGM 100:2008, Table G.2 (commonly cited)",
} as const;

export type SourceId = keyof typeof sources;
