import type { TwinAnswer } from "../../../functions/twin";
import type { Reading } from "./reading";

/** How one function is written out, from its arguments as read. */
export type Work = (reading: Reading) => TwinAnswer;
