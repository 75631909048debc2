import { benchOf, presetDesign, presets } from '../app/presets.ts';
import type { Bench } from '../app/presets.ts';
import { addItem, freshDraft } from '../app/sheets/draft.ts';
import type { Design } from '../design/schema/design.ts';
import type { Extreme } from './extremes.ts';

const designOf = (id: string): Design => presetDesign(presets.find((preset) => preset.id === id)!);

/** As many rows as a crank may carry, each like the last. */
function inFourRows(design: Design): Design {
  let draft = freshDraft(design, null);
  while (draft.design.crank.rows.length < 4) {
    const next = addItem(draft, 'crank.rows');
    if (!next.ok) throw new Error(next.faults.map(({ message }) => message).join('; '));
    draft = next.value;
  }
  return draft.design;
}

export const fourRows = inFourRows(designOf('angelica-14'));

interface Drawn {
  readonly bench: Bench;
  /** Null while nothing is known of the gas. */
  readonly purity: ((index: number) => number) | null;
}

/** Engines to draw, from the least to the most that a design may hold. */
export const engines: readonly Extreme<Drawn>[] = [
  { name: 'one cylinder', data: { bench: benchOf(designOf('caraway-1')), purity: () => 0.5 } },
  {
    name: 'seven, gas from burned to fresh',
    data: { bench: benchOf(designOf('lovage-7')), purity: (i) => i / 6 },
  },
  { name: 'seven, nothing known yet', data: { bench: benchOf(designOf('lovage-7')), purity: null } },
  {
    name: '28 in four rows, some missing',
    data: { bench: benchOf(fourRows), purity: (i) => (i % 3 === 0 ? NaN : 1 / (1 + i)) },
  },
];
