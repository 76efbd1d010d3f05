import { twoSidedTail } from "./student-t";

/**
 * Fisher's F for whole degrees of freedom, by the finite series (Abramowitz and Stegun 26.6.4, 26.6.5
 * and 26.6.8), with x = nu2 / (nu2 + nu1 F). As with Student t, a small tail is never 1 less a sum.
 */

/** Above this, 1 less a sum keeps 14 digits. */
const largeTail = 0.05;
const smallestShare = 1e-17;

/** 1 + a z + a(a+1)/2 z^2 + ... to so many terms. */
function finite(a: number, z: number, terms: number): number {
  let term = 1;
  let total = 0;
  for (let j = 0; j < terms; j += 1) {
    total += term;
    term *= (z * (a + j)) / (j + 1);
  }
  return total;
}

/** The same series from a term on, without end. */
function beyond(a: number, z: number, from: number): number {
  let term = 1;
  for (let j = 0; j < from; j += 1) term *= (z * (a + j)) / (j + 1);
  let left = 0;
  for (let j = from; term > left * smallestShare; j += 1) {
    left += term;
    term *= (z * (a + j)) / (j + 1);
  }
  return left;
}

/** Even nu2: what the finite sum leaves out. Carried on without end, the series makes exactly 1. */
function byEvenSecond(x: number, first: number, second: number): number {
  const scale = (1 - x) ** (first / 2);
  const tail = 1 - scale * finite(first / 2, x, second / 2);
  return tail < largeTail ? scale * beyond(first / 2, x, second / 2) : tail;
}

/** Both odd: Student's tail, and a sum on top that is never negative. */
function byOdd(f: number, x: number, first: number, second: number): number {
  const student = twoSidedTail(Math.sqrt(first * f), second);
  let scale = 2 / Math.PI;
  for (let odd = 1; odd < second; odd += 2) scale *= (odd + 1) / odd;
  let term = 1;
  let sum = 0;
  for (let odd = 3; odd <= first; odd += 2) {
    sum += term;
    term *= ((1 - x) * (second + odd - 2)) / odd;
  }
  return student + scale * Math.sqrt(1 - x) * x ** (second / 2) * sum;
}

/**
 * Probability that F exceeds f.
 * @param f 0 or more; Infinity gives 0
 * @param first whole degrees of freedom of the variance above the line, 1 or more
 * @param second of the one below
 * @example fTail(2.124, 9, 40) // 0.05
 */
export function fTail(f: number, first: number, second: number): number {
  const x = second / (second + first * f);
  if (first % 2 === 0) return x ** (second / 2) * finite(second / 2, 1 - x, first / 2);
  return second % 2 === 0 ? byEvenSecond(x, first, second) : byOdd(f, x, first, second);
}
