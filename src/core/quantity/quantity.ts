/**
 * Numbers that know their unit while the compiler reads them, and are plain exact numbers when they
 * run. Handing litres to a function that wants millilitres is a compile error; no unit is carried,
 * looked up or converted at run time.
 */
import { type Exact, exact } from "../exact/exact";

export type Unit =
  | "mL"
  | "L"
  | "g"
  | "kg"
  | "mol/L"
  | "g/L"
  | "g/mol"
  | "kg/L"
  | "mg KOH/g"
  | "mg/kg"
  | "kPa"
  | "%"
  | "C"
  | "1/C"
  | "mol/mol"
  | "mol/kg"
  | "fraction";

declare const unitOf: unique symbol;
export type Quantity<U extends Unit> = Exact & { readonly [unitOf]: U };

/** State the unit of an exact number. The value is not changed. */
export const as = <U extends Unit>(_unit: U, value: Exact): Quantity<U> => value as Quantity<U>;

/** A quantity from digits or from a double read out of a cell. */
export const quantity = <U extends Unit>(unit: U, value: string | number): Quantity<U> =>
  as(unit, exact(value));

export type Millilitre = Quantity<"mL">;
export type Litre = Quantity<"L">;
export type Gram = Quantity<"g">;
export type Kilogram = Quantity<"kg">;
export type MolePerLitre = Quantity<"mol/L">;
export type GramPerLitre = Quantity<"g/L">;
export type GramPerMole = Quantity<"g/mol">;
export type KilogramPerLitre = Quantity<"kg/L">;
export type AcidValue = Quantity<"mg KOH/g">;
export type MilligramPerKilogram = Quantity<"mg/kg">;
export type Kilopascal = Quantity<"kPa">;
export type Percent = Quantity<"%">;
export type Celsius = Quantity<"C">;
export type PerCelsius = Quantity<"1/C">;
export type MoleRatio = Quantity<"mol/mol">;
export type MolePerKilogram = Quantity<"mol/kg">;
export type Fraction = Quantity<"fraction">;
