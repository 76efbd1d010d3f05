/**
 * How often a law is tried: what each file says is what CI has time for. THOROUGH=10 tries each of them
 * ten times as often.
 */
const factor = Number(process.env.THOROUGH ?? 1);

export const times = (runs: number): number => Math.ceil(runs * factor);
