import { readDesign } from '../design/read-design.ts';
import type { Design } from '../design/schema/design.ts';
import { toEngine } from '../design/to-engine.ts';
import { geometryOf } from '../sim/geometry/geometry-of.ts';
import type { EngineGeometry } from '../sim/geometry/cylinder-geometry.ts';
import type { Engine } from '../sim/index.ts';

const files = import.meta.glob<string>('../../presets/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** A design with what follows from it alone. */
export interface Bench {
  readonly design: Design;
  readonly engine: Engine;
  readonly geometry: EngineGeometry;
}

export interface Preset {
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

const first = 'lovage-7';

/** The example the page opens on comes first, the others by name. */
export const presets: readonly Preset[] = Object.entries(files)
  .map(([path, text]) => {
    const id = path.replace(/^.*\/|\.json$/g, '');
    return { id, name: (JSON.parse(text) as { name: string }).name, text };
  })
  .sort((a, b) => Number(b.id === first) - Number(a.id === first) || a.name.localeCompare(b.name));

/** Presets ship with the program and are tested: one that cannot be read is a bug. */
export function presetDesign(preset: Preset): Design {
  const read = readDesign(preset.text);
  if (!read.ok) throw new Error(`${preset.id}: ${read.faults.map((fault) => fault.message).join('; ')}`);
  return read.value;
}

/** What follows from a design that has been checked. */
export function benchOf(design: Design): Bench {
  const engine = toEngine(design);
  const geometry = geometryOf(engine);
  if (!geometry.ok)
    throw new Error(`${design.name}: ${geometry.faults.map((fault) => fault.message).join('; ')}`);
  return { design, engine, geometry: geometry.value };
}
