/**
 * Functions of every spreadsheet program that the page works out itself, as LibreOffice does: the
 * embedded engine's own take text for figures, "" for 0 and TRUE for 1 where they should not.
 */
import type { EngineFunction } from "../adapter";
import { standardFunction } from "./adapter";
import { arithmetic } from "./arithmetic";
import { clock } from "./clock";
import { criteria } from "./criteria";
import { days } from "./days";
import { finding } from "./lookup";
import { lines } from "./lines";
import { logic } from "./logic";
import { operators } from "./operators";
import { ranks } from "./ranks";
import { statistics } from "./statistics";
import { student } from "./student";
import { subtotal } from "./subtotal";
import { times } from "./times";
import { conversion } from "./units";
import { words } from "./text";
import { written } from "./number-text";

const named = {
  ...arithmetic,
  ...words,
  ...logic,
  ...statistics,
  ...criteria,
  ...finding,
  ...days,
  ...written,
  ...student,
  ...clock,
  ...times,
  ...lines,
  ...ranks,
  ...conversion,
  ...subtotal,
};

export const standardFunctions: [EngineFunction, string][] = [
  ...operators.map(([made, name]): [EngineFunction, string] => [made, name]),
  ...Object.entries(named).map(([name, standard]): [EngineFunction, string] => [
    standardFunction(standard),
    name,
  ]),
];
