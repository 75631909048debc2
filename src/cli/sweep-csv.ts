import { cylinderName } from '../design/cylinder-name.ts';
import type { Model, PointResult } from '../sim/index.ts';
import { pointJson } from './point-json.ts';

type Columns = Record<string, number | string | boolean | null>;

/** A sweep as comma-separated values: a line for each point, columns named as in the JSON, units in their names. */
export function sweepCsv(design: string, model: Model, points: readonly PointResult[]): string {
  const lines = points.map((point) => columns(design, model, point));
  const fullest = lines.reduce((most, line) =>
    Object.keys(line).length > Object.keys(most).length ? line : most,
  );
  const names = Object.keys(fullest);
  const body = lines.map((line) => names.map((name) => cell(line[name] ?? null)).join(','));
  return `${[names.join(','), ...body].join('\n')}\n`;
}

function columns(design: string, model: Model, point: PointResult): Columns {
  const json = pointJson(design, model, point);
  const line: Columns = { speed_rpm: json.speed_rpm, converged: json.converged, cycles: json.cycles };
  if (!('engine' in json)) return line;
  const { engine, blower, plenum } = json;
  for (const [part, values] of Object.entries({ engine, blower, plenum })) {
    for (const [name, value] of Object.entries(values)) line[`${part}.${name}`] = value;
  }
  for (const [index, cylinder] of json.cylinders.entries()) {
    const { rowIndex, cylinderIndex } = model.geometry.cylinders[index]!;
    const name = cylinderName(rowIndex, cylinderIndex);
    line[`${name}.chargingEfficiency`] = cylinder.chargingEfficiency;
    line[`${name}.purity`] = cylinder.purity;
    line[`${name}.imep_Pa`] = cylinder.imep_Pa;
  }
  return line;
}

const cell = (value: number | string | boolean | null): string => (value === null ? '' : String(value));
