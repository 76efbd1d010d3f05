/** The certificates for https, and whether this system trusts them as far as it can be told. */
import { millisecondsInDay } from "../../sheet/serial-days";
import type { CertificateFiles } from "../certs/folder";
import { type CertificateState, certificateState, saidOf } from "../certs/state";
import { type Finding, mend, mind, well } from "./finding";

const month = 30 * millisecondsInDay;

function foundOf(found: CertificateState, now: Date): Finding {
  if (found.state !== "good") return mend("certificates", saidOf(found));
  return found.until.getTime() - now.getTime() < month
    ? mind("certificates", `${saidOf(found)} Soon: npm run certs -- --anew.`)
    : well("certificates", saidOf(found));
}

export const lookAtCertificates = (files: CertificateFiles, now: Date): Finding =>
  foundOf(certificateState(files, now), now);
