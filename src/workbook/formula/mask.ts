/**
 * Two spellings the tokenizer does not take: a linked workbook by number with nothing between its
 * bracket and the exclamation mark ([2]!NAME, as files hold functions of a link), and a path in a
 * quoted sheet name ('C:\lots\[May.xlsx]Log'!A1, as cells show a closed link). Before tokenizing, the
 * characters in the way are replaced, one for one, by a letter that any sheet name may hold; positions
 * stay, and every token then takes its text from the original.
 */
const stand = "ª";

const numberedLink = /\[(\d+)\](?='?!)/g;
const quotedPath = /'(?:[a-z]|https?|file):[\\/](?:[^'"[]|'')*(?=\[(?:[^'"]|'')*'!)/gi;

export const masked = (formula: string): string =>
  formula
    .replace(numberedLink, `${stand}$1${stand}`)
    .replace(quotedPath, (path) => path.replace(/:/g, stand));
