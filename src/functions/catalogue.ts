/** Every worksheet function, in the order they are shown. Ids and argument order never change. */
import { CHARGEPERCENT } from "./amounts/charge-percent";
import { MOLARRATIO } from "./amounts/molar-ratio";
import { OILMASS } from "./amounts/oil-mass";
import { SAMPLEGRAMS } from "./amounts/sample-grams";
import { SAMPLETOWEIGH } from "./amounts/sample-to-weigh";
import { BATCH } from "./batch/batch";
import { BLEND } from "./batch/blend";
import { BLENDEDACIDVALUE } from "./batch/blended-acid-value";
import { CATALYST } from "./batch/catalyst";
import { CATALYSTFROMFFA } from "./batch/catalyst-from-ffa";
import { DOSE } from "./batch/dose";
import { METHANOL } from "./batch/methanol";
import { NEUTRALISER } from "./batch/neutraliser";
import { PRETREATMENT } from "./batch/pretreatment";
import { ROUTE } from "./batch/route";
import { SOAP } from "./batch/soap";
import { TEMPERATURERISE } from "./batch/temperature-rise";
import { WATERBALANCE } from "./batch/water-balance";
import { WHATIF } from "./batch/what-if";
import type { WorksheetFunction } from "./define";
import { AGAINSTLIMIT } from "./fuel/against-limit";
import { CONVERSION } from "./fuel/conversion";
import { FUELCATALYST } from "./fuel/fuel-catalyst";
import { FUELMETAL } from "./fuel/fuel-metal";
import { FUELSOAP } from "./fuel/fuel-soap";
import { GLYCEROL } from "./fuel/glycerol";
import { LOSSONHEATING } from "./fuel/loss-on-heating";
import { WATERFROMGAS } from "./fuel/water-from-gas";
import { CONTROL } from "./record/control";
import { CONTROLFLAGS } from "./record/control-flags";
import { STRENGTHON } from "./record/strength-on";
import { USUALFREEDOM } from "./record/usual-freedom";
import { USUALSCATTER } from "./record/usual-scatter";
import { CONCORDANT } from "./replicates/concordant";
import { OUTLIERS } from "./replicates/outliers";
import { REPLICATES } from "./replicates/replicates";
import { SPREAD } from "./replicates/spread";
import { VERDICT } from "./replicates/verdict";
import { KHPUNCERTAINTY } from "./titrant/khp-uncertainty";
import { MOLARITY } from "./titrant/molarity";
import { MOLARITYFROMKHP } from "./titrant/molarity-from-khp";
import { TEMPERATURECORRECTED } from "./titrant/temperature-corrected";
import { TITRANTMASS } from "./titrant/titrant-mass";
import { ACIDVALUE } from "./titration/acid-value";
import { ACIDVALUEFROMFFA } from "./titration/acid-value-from-ffa";
import { CORRECTED } from "./titration/corrected";
import { EACHACIDVALUE } from "./titration/each-acid-value";
import { ENDPOINT } from "./titration/end-point";
import { FFAFROMACIDVALUE } from "./titration/ffa-from-acid-value";
import { FFAPERCENT } from "./titration/ffa-percent";
import { MEANACIDVALUE } from "./titration/mean-acid-value";
import { PERLITRE } from "./titration/per-litre";
import { STEEPNESS } from "./titration/steepness";
import { ACIDVALUEUNCERTAINTY } from "./uncertainty/acid-value-uncertainty";
import { BUDGET } from "./uncertainty/budget";
import { CHECKS } from "./uncertainty/checks";
import { FFAUNCERTAINTY } from "./uncertainty/ffa-uncertainty";

export const catalogue: readonly WorksheetFunction[] = [
  CORRECTED,
  ACIDVALUE,
  FFAPERCENT,
  FFAFROMACIDVALUE,
  ACIDVALUEFROMFFA,
  MEANACIDVALUE,
  EACHACIDVALUE,
  PERLITRE,
  MOLARITY,
  TITRANTMASS,
  MOLARITYFROMKHP,
  TEMPERATURECORRECTED,
  SAMPLETOWEIGH,
  SAMPLEGRAMS,
  OILMASS,
  CHARGEPERCENT,
  MOLARRATIO,
  OUTLIERS,
  VERDICT,
  CONCORDANT,
  SPREAD,
  REPLICATES,
  FFAUNCERTAINTY,
  BUDGET,
  NEUTRALISER,
  CATALYST,
  CATALYSTFROMFFA,
  DOSE,
  METHANOL,
  SOAP,
  BLEND,
  BLENDEDACIDVALUE,
  ROUTE,
  PRETREATMENT,
  BATCH,
  WHATIF,
  CHECKS,
  ACIDVALUEUNCERTAINTY,
  KHPUNCERTAINTY,
  USUALSCATTER,
  USUALFREEDOM,
  STRENGTHON,
  CONTROL,
  CONTROLFLAGS,
  AGAINSTLIMIT,
  FUELSOAP,
  FUELCATALYST,
  FUELMETAL,
  GLYCEROL,
  CONVERSION,
  LOSSONHEATING,
  WATERFROMGAS,
  WATERBALANCE,
  TEMPERATURERISE,
  ENDPOINT,
  STEEPNESS,
];

const byId = new Map<string, WorksheetFunction>(catalogue.map((entry) => [entry.id, entry]));

/** The function with an id, in any case, with or without the namespace. */
export const functionNamed = (id: string): WorksheetFunction | undefined =>
  byId.get(id.toUpperCase().replace(/^TITRE\./, ""));
