import type { TwinAnswer } from "../../twin";
import type { Reading } from "./reading";

/** How one function is written out, from its arguments as read. */
export type Work = (reading: Reading) => TwinAnswer;
