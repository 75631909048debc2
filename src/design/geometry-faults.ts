import type { Fault } from '../sim/outcome.ts';
import { cylinderName } from './cylinder-name.ts';
import type { Design } from './schema/design.ts';

const PLAIN: readonly (readonly [RegExp, string])[] = [
  [/^train\.crankRadius$/, 'crank.stroke_mm'],
  [/^train\.masterRodLength$/, 'crank.masterRod_mm'],
  [/^train\.knuckleRadius$/, 'crank.knuckleRadius_mm'],
  [/^train\.rows$/, 'crank.rows'],
  [/^train\.rows\[(\d+)\]\.throwAngle$/, 'crank.rows[$1].throw_deg'],
  [/^train\.rows\[(\d+)\]\.staggerAngle$/, 'crank.rows[$1].stagger_deg'],
  [/^train\.rows\[(\d+)\]\.master$/, 'crank.rows[$1].master'],
  [/^train\.rows\[(\d+)\]\.cylinders$/, 'crank.rows[$1].cylinders'],
  [/^crankcase\.volume$/, 'crank.crankcase.volume_cc'],
  [/^cylinder\.bore$/, 'cylinder.bore_mm'],
  [/^cylinder\.deckClearance$/, 'cylinder.deckClearance_mm'],
  [/^blower\.tipDiameter$/, 'blower.tipDiameter_mm'],
  [/^blower\.rotors\.bore$/, 'blower.rotorBore_mm'],
  [/^blower\.rotors\.gaps\.mesh$/, 'blower.meshGap_mm'],
  [/^(windows\.\w+\[\d+\])\.width$/, '$1.width_mm'],
  [/^(windows\.\w+\[\d+\])\.bridgeWidth$/, '$1.bridge_mm'],
  [/^(windows\.\w+\[\d+\])\.top\.depth$/, '$1.top_mm'],
  [/^(windows\.\w+\[\d+\])\.top\.opensAfterTdc$/, '$1.opens_degATDC'],
  [/^(windows\.\w+\[\d+\])\.floorDepth$/, '$1.floor_mm'],
  [/^(windows\.\w+\[\d+\])\.cornerRadius$/, '$1.corner_mm'],
  [/^(windows\.\w+\[\d+\])\.planAngle$/, '$1.plan_deg'],
  [/^(windows\.\w+\[\d+\])\.elevationAngle$/, '$1.elevation_deg'],
];

/** Of one cylinder: its key in a correction, and the common value from which it comes without one. */
const OF_CYLINDER: Readonly<Record<string, readonly [key: string, common: string]>> = {
  axisAngle: ['', 'axes_deg'],
  knuckleAngle: ['knuckle_deg', 'crank.knuckleRadius_mm'],
  knuckleRadius: ['knuckleRadius_mm', 'crank.knuckleRadius_mm'],
  rodLength: ['rod_mm', 'crank.masterRod_mm'],
  barrelOffset: ['barrel_mm', 'crank.corrections'],
  headVolume: ['head_cc', 'cylinder.compressionRatio'],
  exhaustTrim: ['exhaustTrim_mm', 'windows.exhaust'],
  transferTrim: ['transferTrim_mm', 'windows.transfer'],
  sparkAdvance: ['spark_degBTDC', 'fuel.spark_degBTDC'],
  collector: ['collector', 'exhaust.collectors'],
};

/** Lead a fault of the engine description back to the place in the design file that it comes from. */
export function toDesignPath(fault: Fault, design: Design): Fault {
  return { path: place(fault.path, design), message: fault.message };
}

function place(path: string, design: Design): string {
  for (const [pattern, replacement] of PLAIN) {
    if (pattern.test(path)) return path.replace(pattern, replacement);
  }
  const found = /^train\.rows\[(\d+)\]\.cylinders\[(\d+)\](?:\.(\w+))?$/.exec(path);
  if (!found) return path;
  const [row, cylinder] = [Number(found[1]), Number(found[2])];
  const [key, common] = OF_CYLINDER[found[3] ?? ''] ?? ['', 'crank.rows'];
  if (common === 'axes_deg') return `crank.rows[${row}].axes_deg[${cylinder}]`;
  const name = cylinderName(row, cylinder);
  const at = design.crank.corrections.findIndex((each) => each.cylinder === name);
  const corrected = at >= 0 && Object.hasOwn(design.crank.corrections[at]!, key);
  return corrected ? `crank.corrections[${at}].${key}` : common;
}
