/** A page of the help, to stand in another folder beside what it is about. */
import { catalogue } from "../../functions/catalogue";
import { helpSite } from "../../help/site";

/** @param help where the help is, from that folder on: "../help/" */
export function helpPage(file: string, help: string): string {
  const page = helpSite(catalogue)[file];
  if (page === undefined) throw new Error(`The help has no ${file}.`);
  return page.replace(/(href|src)="(?!#)/g, `$1="${help}`);
}
