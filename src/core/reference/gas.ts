/** What a gas's pressure says of its moles. */
import { exact } from "../exact/exact";

/** J/(mol K), exact in the SI of 2019 to the digits used here. */
export const gasConstant = exact("8.314462618");
/** Kelvin at 0 C, by definition. */
export const zeroCelsius = exact("273.15");
