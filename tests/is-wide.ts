/** Whether the rare roads are gone too: `npm test -- --wide` says so. Its own file: pages are opened outside a run of tests too. */
export const isWide = process.env.WIDE === "1";
