/**
 * Places for labels along a line so that none comes closer to the next than `gap`, each as near to where it belongs
 * as that allows, all between `low` and `high` while there is room. Order is kept.
 */
export function spreadLabels(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]! - wanted[b]!);
  const places: number[] = new Array<number>(wanted.length).fill(0);
  // Neighbours that would touch form a block about the mean of what its members want.
  const blocks: { members: number[]; middle: number }[] = [];
  for (const index of order) {
    let block = { members: [index], middle: keepInside(wanted[index]!, 0) };
    let before = blocks[blocks.length - 1];
    while (
      before &&
      block.middle - before.middle < (gap * (block.members.length + before.members.length)) / 2
    ) {
      blocks.pop();
      const members = [...before.members, ...block.members];
      const mean = members.reduce((sum, member) => sum + wanted[member]!, 0) / members.length;
      block = { members, middle: keepInside(mean, (gap * (members.length - 1)) / 2) };
      before = blocks[blocks.length - 1];
    }
    blocks.push(block);
  }
  for (const { members, middle } of blocks) {
    members.forEach((member, i) => (places[member] = middle + gap * (i - (members.length - 1) / 2)));
  }
  return places;

  function keepInside(middle: number, half: number): number {
    return Math.max(low + half, Math.min(high - half, middle));
  }
}
