/**
 * The order in which to work through a row of `count` points so that a picture of the whole comes early: both ends,
 * then the middle of the widest gaps, ever finer.
 */
export function coarseFirst(count: number): number[] {
  if (count <= 2) return Array.from({ length: count }, (_, index) => index);
  const order = [0, count - 1];
  let gaps: (readonly [number, number])[] = [[0, count - 1]];
  while (gaps.length > 0) {
    const finer: (readonly [number, number])[] = [];
    for (const [low, high] of gaps) {
      if (high - low < 2) continue;
      const middle = Math.floor((low + high) / 2);
      order.push(middle);
      finer.push([low, middle], [middle, high]);
    }
    gaps = finer;
  }
  return order;
}
