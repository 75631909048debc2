import { spreadLabels } from './spread-labels.ts';

export interface Flow {
  readonly label: string;
  /** In any unit common to all; what leaves is positive, what comes in besides the source negative. */
  readonly value: number;
  /** A custom property of colours.css. */
  readonly colour: string;
}

export interface PlacedFlow extends Flow {
  readonly size: number;
  /** Top and bottom at the trunk and at its own end [px]. */
  readonly atTrunk: { readonly top: number; readonly bottom: number };
  readonly atEnd: { readonly top: number; readonly bottom: number };
  /** Middle of its label [px]. */
  readonly labelY: number;
}

export interface FlowLayout {
  /** All that comes in [unit of the flows]. */
  readonly total: number;
  readonly incoming: readonly PlacedFlow[];
  readonly outgoing: readonly PlacedFlow[];
}

/**
 * Places for what comes into a trunk from the left and leaves it to the right, heights in proportion: one unit of
 * flow is as high on both sides, so that a balance that does not close shows as a step.
 *
 * @param source - what the trunk is fed with, above 0
 * @param flows  - the rest; a negative one comes in beside the source
 * @param height - to draw within [px]
 * @param gap    - least room between the ends [px]
 * @param labelGap - least distance between labels [px]
 */
export function flowLayout(
  source: Flow,
  flows: readonly Flow[],
  height: number,
  gap: number,
  labelGap: number,
): FlowLayout {
  const known = flows.filter((flow) => Number.isFinite(flow.value) && flow.value !== 0);
  const incoming = [source, ...known.filter((flow) => flow.value < 0)].filter(
    (flow) => Number.isFinite(flow.value) && flow.value !== 0,
  );
  const outgoing = known.filter((flow) => flow.value > 0);
  const sizeOf = (side: readonly Flow[]): number => side.reduce((sum, flow) => sum + Math.abs(flow.value), 0);
  const most = Math.max(sizeOf(incoming), sizeOf(outgoing));
  const gaps = gap * Math.max(0, incoming.length - 1, outgoing.length - 1);
  const scale = most > 0 ? Math.max(0, height - gaps) / most : 0;

  const place = (side: readonly Flow[]): PlacedFlow[] => {
    const total = sizeOf(side) * scale;
    const trunkTop = (height - most * scale) / 2;
    let trunk = trunkTop;
    let end = (height - total - gap * (side.length - 1)) / 2;
    const placed = side.map((flow) => {
      const size = Math.abs(flow.value);
      const thick = size * scale;
      const piece = {
        ...flow,
        size,
        atTrunk: { top: trunk, bottom: trunk + thick },
        atEnd: { top: end, bottom: end + thick },
      };
      trunk += thick;
      end += thick + gap;
      return piece;
    });
    const middles = placed.map(({ atEnd }) => (atEnd.top + atEnd.bottom) / 2);
    const labels = spreadLabels(middles, labelGap, labelGap / 2, height - labelGap / 2);
    return placed.map((piece, i) => ({ ...piece, labelY: labels[i]! }));
  };
  return { total: sizeOf(incoming), incoming: place(incoming), outgoing: place(outgoing) };
}

/** A ribbon between two upright edges, leaving and arriving level. */
export function ribbonPath(
  x0: number,
  from: { readonly top: number; readonly bottom: number },
  x1: number,
  to: { readonly top: number; readonly bottom: number },
): string {
  const n = (value: number): string => String(Number(value.toFixed(2)));
  const middle = n((x0 + x1) / 2);
  return (
    `M${n(x0)},${n(from.top)}C${middle},${n(from.top)} ${middle},${n(to.top)} ${n(x1)},${n(to.top)}` +
    `V${n(to.bottom)}C${middle},${n(to.bottom)} ${middle},${n(from.bottom)} ${n(x0)},${n(from.bottom)}Z`
  );
}
