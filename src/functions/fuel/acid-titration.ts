/** The arguments FUELSOAP and FUELCATALYST share: hydrochloric acid, two end points in one flask. */
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { blanks } from "../blanks";
import { molarity, titres } from "../common";
import { base } from "../words";

export const fuelMass = number(limits.sampleMass, "sample mass", "Grams of fuel in the flask.");

export const fuelBase = base("The base the fuel was made with: it says which metal.");

export const acidTitrationArguments = {
  titres,
  blanks: blanks("required"),
  molarity,
  sampleMass: fuelMass,
  base: fuelBase,
};
