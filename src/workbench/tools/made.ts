/** An element with its words and what stands in it. */
export function made<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  words = "",
  ...inside: readonly Node[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  element.textContent = words;
  element.append(...inside);
  return element;
}
