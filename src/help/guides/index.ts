/** Every guide, in the order they are listed. */
import { answers } from "./answers";
import { browserPage } from "./browser-page";
import { firstTitration } from "./first-titration";
import { glossary } from "./glossary";
import type { Guide } from "./guide";
import { hosting } from "./hosting";
import { install } from "./install";
import { logbook } from "./logbook";
import { mistakesPage } from "./mistakes";
import { otherSpreadsheets } from "./other-spreadsheets";
import { overTime } from "./over-time";
import { privacy } from "./privacy";
import { sharing } from "./sharing";
import { titrant } from "./titrant";
import { uncertainty } from "./uncertainty";

export const guides: readonly Guide[] = [
  answers,
  firstTitration,
  browserPage,
  titrant,
  uncertainty,
  overTime,
  mistakesPage,
  logbook,
  sharing,
  otherSpreadsheets,
  glossary,
  install,
  hosting,
  privacy,
];
