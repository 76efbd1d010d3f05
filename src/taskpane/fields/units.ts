/** Units of an amount of oil. A gallon is never just a gallon. */
export type UnitId = "l" | "kg" | "lb" | "us_gal" | "uk_gal";

/** After a figure. */
export const unitNames: Record<UnitId, string> = {
  l: "L",
  kg: "kg",
  lb: "lb",
  us_gal: "US gal",
  uk_gal: "imperial gal",
};

export const unitChoices: readonly (readonly [UnitId, string])[] = [
  ["l", "Litres"],
  ["kg", "Kilograms"],
  ["lb", "Pounds"],
  ["us_gal", "US gallons (3.785 L)"],
  ["uk_gal", "Imperial gallons (4.546 L)"],
];
