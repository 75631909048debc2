/**
 * Rows that hold every pair of levels of every two factors at least once.
 *
 * Greedy: a row begins with a pair that is not held yet; every other factor, in a drawn order, takes the level that holds most new pairs
 * with what is fixed. Source: Cohen, Dalal, Fredman & Patton, IEEE Trans. Software Eng. 23:437, 1997 (the idea).
 *
 * @param levels - number of levels of each factor
 * @param draw   - repeatable, between 0 and 1
 * @returns rows of one level for each factor
 */
export function coveringArray(levels: readonly number[], draw: () => number): readonly (readonly number[])[] {
  const open = new Set<string>();
  const name = (a: number, x: number, b: number, y: number) =>
    a < b ? `${a}.${x}|${b}.${y}` : `${b}.${y}|${a}.${x}`;
  for (let a = 0; a < levels.length; a++)
    for (let b = a + 1; b < levels.length; b++)
      for (let x = 0; x < levels[a]!; x++) for (let y = 0; y < levels[b]!; y++) open.add(name(a, x, b, y));

  const rows: number[][] = [];
  while (open.size > 0) {
    const row = new Array<number>(levels.length).fill(-1);
    const [first] = open;
    for (const part of first!.split('|')) {
      const [factor, level] = part.split('.').map(Number);
      row[factor!] = level!;
    }
    for (const factor of shuffled(levels.length, draw)) {
      if (row[factor]! >= 0) continue;
      const gains = Array.from({ length: levels[factor]! }, (_, level) =>
        row.reduce(
          (sum, other, k) => sum + (other >= 0 && open.has(name(factor, level, k, other)) ? 1 : 0),
          0,
        ),
      );
      const best = Math.max(...gains);
      const equal = gains.flatMap((gain, level) => (gain === best ? [level] : []));
      row[factor] = equal[Math.floor(draw() * equal.length)]!;
    }
    for (let a = 0; a < row.length; a++)
      for (let b = a + 1; b < row.length; b++) open.delete(name(a, row[a]!, b, row[b]!));
    rows.push(row);
  }
  return rows;
}

function shuffled(count: number, draw: () => number): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(draw() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
