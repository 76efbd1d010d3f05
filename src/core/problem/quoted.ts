const longestQuote = 40;

/** Text from a cell or a file, fit for the middle of a sentence. */
export const quoted = (text: string): string => {
  const flat = text.replace(/\s+/g, " ").trim();
  return `"${flat.length > longestQuote ? `${flat.slice(0, longestQuote)}…` : flat}"`;
};
