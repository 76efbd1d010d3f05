/** Files that need each other: each group in which every file leads to every other. */

/** @param edges what each file imports, values and types alike */
export function cyclesOf(edges: ReadonlyMap<string, readonly string[]>): string[][] {
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const found: string[][] = [];
  // Tarjan 1972, with a stack of its own instead of calls
  const visit = (start: string): void => {
    const path: { file: string; next: number }[] = [{ file: start, next: 0 }];
    while (path.length > 0) {
      const at = path[path.length - 1];
      if (!at) return;
      const { file } = at;
      if (at.next === 0) {
        order.set(file, order.size);
        lowest.set(file, order.size - 1);
        open.push(file);
      }
      const to = edges.get(file)?.[at.next];
      at.next += 1;
      if (to !== undefined) {
        if (!order.has(to)) path.push({ file: to, next: 0 });
        else if (open.includes(to)) lower(file, order.get(to) ?? 0);
        continue;
      }
      path.pop();
      const parent = path[path.length - 1];
      if (parent) lower(parent.file, lowest.get(file) ?? 0);
      if (lowest.get(file) === order.get(file)) {
        const group = open.splice(open.indexOf(file));
        if (group.length > 1 || edges.get(file)?.includes(file)) found.push(group.sort());
      }
    }
  };
  const lower = (file: string, to: number): void => {
    lowest.set(file, Math.min(lowest.get(file) ?? to, to));
  };
  for (const file of edges.keys()) if (!order.has(file)) visit(file);
  return found;
}
