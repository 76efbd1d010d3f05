/**
 * The public interface, typed out by hand: ids, order and meaning of arguments never change once
 * published. Square brackets: optional. ":list" takes a range.
 */
export const publicInterface: Record<string, string> = {
  CORRECTED: "titres:list, [blanks:list]",
  ACIDVALUE: "correctedTitre, molarity, sampleMass",
  FFAPERCENT: "correctedTitre, molarity, sampleMass, [fattyAcid]",
  FFAFROMACIDVALUE: "acidValue, [fattyAcid]",
  ACIDVALUEFROMFFA: "ffaPercent, [fattyAcid]",
  MEANACIDVALUE: "titres:list, blanks:list, molarity, sampleMasses:list",
  EACHACIDVALUE: "titres:list, blanks:list, molarity, sampleMasses:list",
  PERLITRE: "correctedTitre, titrantStrength, sampleVolume",
  MOLARITY: "mass, volume, base, assayPercent",
  TITRANTMASS: "molarity, volume, base, assayPercent",
  MOLARITYFROMKHP: "khpMass, correctedTitre, [purityPercent]",
  TEMPERATURECORRECTED: "titre, readAt, setAt, titrantSolvent",
  SAMPLETOWEIGH: "expectedFfaPercent, molarity, targetTitre, [fattyAcid]",
  SAMPLEGRAMS: "volume, [oil], [temperature]",
  OILMASS: "amount, unit, [oil], [temperature]",
  CHARGEPERCENT: "gramsPerLitre, assayPercent, [oil], [temperature]",
  MOLARRATIO: "volumePercent, [oil], [temperature]",
  OUTLIERS:
    "readings:list, [step], [confidencePercent], [sampleMasses:list], [blanks:list], [usualScatter], [usualFreedom]",
  VERDICT:
    "readings:list, [step], [confidencePercent], [sampleMasses:list], [blanks:list], [usualScatter], [usualFreedom]",
  CONCORDANT: "readings:list, limit",
  SPREAD:
    "readings:list, [step], [confidencePercent], [sampleMasses:list], [blanks:list], [usualScatter], [usualFreedom]",
  REPLICATES: "standardDeviation, halfWidth, [confidencePercent]",
  FFAUNCERTAINTY:
    "titres:list, blanks:list, molarity, sampleMasses:list, titreStep, massStep, [molarityPercent], [samplePercent], [fattyAcid], [burettePercent], [usualScatter], [usualFreedom]",
  BUDGET:
    "titres:list, blanks:list, molarity, sampleMasses:list, titreStep, massStep, [molarityPercent], [samplePercent], [fattyAcid], [burettePercent], [usualScatter], [usualFreedom]",
  NEUTRALISER: "oilMass, acidValue, base, assayPercent",
  CATALYST: "oilMass, acidValue, base, assayPercent, baseCharge, [limitFfaPercent]",
  CATALYSTFROMFFA:
    "oilMass, ffaPercent, fattyAcid, base, assayPercent, baseCharge, [limitFfaPercent]",
  DOSE: "titres:list, blanks:list, molarity, sampleMasses:list, oilMass, base, assayPercent, baseCharge, [limitFfaPercent]",
  METHANOL: "oilMass, [molarRatio], [acidValue], [oil]",
  SOAP: "oilMass, acidValue, base",
  BLEND: "acidValueA, acidValueB, targetAcidValue",
  BLENDEDACIDVALUE: "acidValues:list, masses:list",
  ROUTE: "acidValue, [waterPercent], [limitFfaPercent]",
  PRETREATMENT: "oilMass, acidValue, base, assayPercent, [acidAssayPercent]",
  BATCH:
    "oilMass, acidValue, base, assayPercent, baseCharge, [molarRatio], [oil], [limitFfaPercent]",
  WHATIF:
    "amounts:list, unit, acidValues:list, base, assayPercent, baseCharge, [oil], [limitFfaPercent]",
  CHECKS: "",
  ACIDVALUEUNCERTAINTY:
    "titres:list, blanks:list, molarity, sampleMasses:list, titreStep, massStep, [molarityPercent], [samplePercent], [burettePercent], [usualScatter], [usualFreedom]",
  KHPUNCERTAINTY:
    "khpMasses:list, titres:list, blanks:list, massStep, titreStep, [purityPercent], [burettePercent], [usualScatter], [usualFreedom]",
  USUALSCATTER: "titreSets:list, [blankSets:list], [sampleMassSets:list], [titreStep]",
  USUALFREEDOM: "titreSets:list, [blankSets:list]",
  STRENGTHON: "dates:list, strengths:list, day",
  CONTROL: "values:list, [baseline], [step], [weight]",
  CONTROLFLAGS: "values:list, [baseline], [step]",
  AGAINSTLIMIT: "value, uncertainty, limit",
  FUELSOAP: "titres:list, blanks:list, molarity, sampleMass, base",
  FUELCATALYST: "titres:list, blanks:list, molarity, sampleMass, base",
  FUELMETAL: "soap, base, [catalyst]",
  GLYCEROL: "titres:list, blanks:list, molarity, sampleMass",
  CONVERSION: "totalGlycerol, freeGlycerol, [oil]",
  LOSSONHEATING: "dishMass, massBefore, massAfter",
  WATERFROMGAS: "pressureRise, gasSpace, temperature, sampleMass",
  WATERBALANCE:
    "oilMass, waterPercent, acidValue, base, assayPercent, baseCharge, [methanolMass], [methanolWaterPercent]",
  TEMPERATURERISE: "lyeMass, methanolVolume, trialLyeMass, trialMethanolVolume, trialRise",
  ENDPOINT: "volumes:list, readings:list",
  STEEPNESS: "volumes:list, readings:list",
};
