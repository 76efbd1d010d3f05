/** Whether the rare roads are gone too: `npm test -- --wide` says so. Its own file: vitest.config.ts asks as well. */
export const isWide = process.env.WIDE === "1";
