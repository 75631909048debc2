import type { Model } from '../cycle/model.ts';
import { DEEPEST_FINS, finDepth } from '../heat-transfer/fins.ts';
import { celsiusFromKelvin } from '../units.ts';
import type { Note, SolvedPoint } from './point-result.ts';

/** What walls that are worked out come to, and where the law of their fins ends. */
export const wallNotes = (model: Pick<Model, 'engine'>, result: Pick<SolvedPoint, 'cylinders'>): Note[] => [
  ...hotWalls(model, result),
  ...deepFins(model),
];

/** Fins so deep and close together that the law of a stream of air across them has nothing left. */
function deepFins({ engine }: Pick<Model, 'engine'>): Note[] {
  const { solvesWalls, cooling } = engine.cylinderHeat;
  if (!solvesWalls) return [];
  return (['barrel', 'head'] as const).flatMap((part): Note[] => {
    const depth = finDepth(cooling[part].fins);
    if (depth < DEEPEST_FINS) return [];
    const text =
      `The fins of the ${part} are too deep and close for the law of the air between them: height^0.8 over space^0.4, in mm, is ${depth.toFixed(1)}, ` +
      `and from ${DEEPEST_FINS.toFixed(1)} on it gives nothing. Only still air is reckoned to cool them; wider spaces or lower fins bring it back.`;
    return [{ kind: 'caution', text }];
  });
}

/** Walls above what the design sets for them. */
function hotWalls({ engine }: Pick<Model, 'engine'>, { cylinders }: Pick<SolvedPoint, 'cylinders'>): Note[] {
  const { limits } = engine.cylinderHeat.cooling;
  return (['crown', 'head', 'liner'] as const).flatMap((part): Note[] => {
    const limit = limits[part];
    const hot = cylinders.filter(({ walls }) => walls && walls[part] > limit);
    if (hot.length === 0) return [];
    const hottest = Math.max(...hot.map(({ walls }) => walls![part]));
    const text = `${hot.length} of ${cylinders.length} ${part}s come out hotter than the ${celsius(limit)} set for them, up to ${celsius(hottest)}: a mean over the part, whose spots are hotter.`;
    return [{ kind: 'caution', text }];
  });
}

const celsius = (temperature: number): string => `${celsiusFromKelvin(temperature).toFixed(0)} °C`;
