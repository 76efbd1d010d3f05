/** What of a list goes round in a circle, or waits for what does. */
interface Numbered {
  readonly treeId: number;
}

/**
 * Whatever waits for nothing is taken out of the list, one after the other; what is left is that.
 * @param readersOf who reads what one of them gives, by number
 */
export function inCircles<T extends Numbered>(
  trees: readonly T[],
  readersOf: (tree: T) => Iterable<number>,
): ReadonlySet<T> {
  const left = new Map(trees.map((tree) => [tree.treeId, tree]));
  const waits = new Map<number, number>();
  const readers = new Map<number, number[]>();
  for (const tree of trees) {
    const here = [...readersOf(tree)].filter((id) => left.has(id));
    readers.set(tree.treeId, here);
    for (const id of here) waits.set(id, (waits.get(id) ?? 0) + 1);
  }
  const free = [...left.keys()].filter((id) => !waits.has(id));
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    left.delete(id);
    for (const reader of readers.get(id) ?? []) {
      const count = (waits.get(reader) ?? 0) - 1;
      waits.set(reader, count);
      if (count === 0) free.push(reader);
    }
  }
  return new Set(left.values());
}
