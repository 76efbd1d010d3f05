/**
 * A formula with its cells left out: what is filled down a column is one text then, and is judged once.
 * Which cell is read says nothing about whether it can be worked out.
 */
const cell = /(?<![\w.\\$])\$?[A-Za-z]{1,3}\$?\d{1,7}(?![\w.(!])/g;

/** @example templateOf("=A1*B$2") // "=§*§" */
export const templateOf = (formula: string): string => formula.replace(cell, "\u00a7");
