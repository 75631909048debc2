/** One collector as it lies round the engine, clockwise from the top [rad]: from its first cylinder to its last. */
export interface CollectorArc {
  readonly collector: number;
  readonly from: number;
  readonly sweep: number;
}

/**
 * Joins the cylinders of each collector the shorter way round: the widest gap between two of them stays open.
 *
 * @param members - angle of each cylinder's axis [rad] and the collector it exhausts into
 */
export function collectorArcs(members: readonly { angle: number; collector: number }[]): CollectorArc[] {
  const collectors = [...new Set(members.map((member) => member.collector))].sort((a, b) => a - b);
  return collectors.map((collector) => {
    const angles = members
      .filter((member) => member.collector === collector)
      .map(({ angle }) => ((angle % TURN) + TURN) % TURN)
      .sort((a, b) => a - b);
    let first = 0;
    let widest = -1;
    angles.forEach((angle, i) => {
      const before = i === 0 ? angles.at(-1)! - TURN : angles[i - 1]!;
      if (angle - before > widest + 1e-9) {
        widest = angle - before;
        first = i;
      }
    });
    return { collector, from: angles[first]!, sweep: TURN - widest };
  });
}

const TURN = 2 * Math.PI;
