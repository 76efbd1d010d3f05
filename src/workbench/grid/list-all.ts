/**
 * The list under a cell shows the first ten functions that begin with what is typed. Whoever has typed
 * TITRE. means to see which there are: the list is then given whole.
 */
import type { Injector } from "@univerjs/core";
import { IDescriptionService } from "@univerjs/sheets-formula";
import { namespace } from "../../functions/names";

/** An array of which the first ten are all of it. */
class Whole<T> extends Array<T> {
  override slice(): T[] {
    return Array.from(this);
  }
}

export function listAllOfOurs(injector: Injector): void {
  const service = injector.get(IDescriptionService);
  const find = service.getSearchListByNameFirstLetter.bind(service);
  service.getSearchListByNameFirstLetter = (typed) => {
    const found = find(typed);
    const isOurs = typed.trim().toUpperCase().startsWith(`${namespace}.`);
    return isOurs ? Whole.from(found) : found;
  };
}
