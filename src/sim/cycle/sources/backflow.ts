import type { EdgeFlows } from '../edge-flows.ts';
import type { Source } from '../instant.ts';

/** Touches nothing: records what runs against the direction of edges [kg/s]. */
export class Backflow implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    readonly through: readonly number[],
    private readonly edges: EdgeFlows,
  ) {
    this.recordCount = through.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    if (!record) return;
    for (let i = 0; i < this.through.length; i++) {
      const flow = this.edges.massFlow[this.through[i]];
      rates[this.recordAt + i] = flow < 0 ? -flow : 0;
    }
  }
}
