import type { Field } from '../../design/fields.ts';
import { formatNumber } from '../../design/format-quantity.ts';
import { readPath } from '../../design/path.ts';
import { fromSi, splitKey } from '../../design/unit-table.ts';
import { readCylinderName } from '../../design/cylinder-name.ts';
import { standardHeight } from '../../sim/gas/standard-atmosphere.ts';
import type { Bench } from '../presets.ts';

/** What holds where a field is left out, as a number in the field's unit; empty where that cannot be said. */
export function standIn(field: Field, path: string, bench: Bench): string {
  if (field.otherwise === null) return '';
  const value = derived(field, path, bench);
  if (value === null) return '';
  const each = (si: number) => formatNumber(fromSi(si, field.unit), 4);
  return typeof value === 'number' ? each(value) : value.map(each).join('; ');
}

const SECOND_STAGE = 'blower.secondStage.';

/** In base SI. */
function derived(field: Field, path: string, bench: Bench): number | readonly number[] | null {
  const { engine, geometry } = bench;
  const { name } = splitKey(field.key);
  const steps = readPath(path) ?? [];
  const position = steps.find((step) => typeof step === 'number') ?? 0;
  if (path.startsWith('windows.exhaust[') || path.startsWith('windows.transfer[')) {
    return ofWindow(name, path.startsWith('windows.exhaust[') ? 'exhaust' : 'transfer', position, {
      engine,
      geometry,
    });
  }
  if (path.startsWith('crank.corrections[')) return ofCylinder(name, String(steps[2]), engine);
  if (DIMENSIONS.some((group) => field.path.startsWith(`${group}.`))) return ofDimensions(field.path, engine);
  if (field.path.startsWith(SECOND_STAGE)) {
    const { secondStage, ambient } = engine;
    if (field.path.endsWith('cooler.coolant_C')) return ambient.temperature;
    if (!secondStage) return null;
    // The same fields as in the first stage, of its own engine.
    const first = field.path.replace(SECOND_STAGE, 'blower.');
    return derived({ ...field, path: first }, first, {
      ...bench,
      engine: { ...engine, blower: secondStage.blower },
    });
  }
  switch (field.path) {
    case 'crank.rows[].axes_deg':
      return engine.train.rows[position]?.cylinders.map((each) => each.axisAngle) ?? null;
    case 'crank.crankcase.volume_cc':
      return engine.crankcase?.volume ?? null;
    case 'crank.crankcase.wall.area_cm2':
      return engine.crankcase?.wall.area ?? null;
    case 'crank.masses.piston_g':
      return engine.masses.piston;
    case 'crank.masses.rod_g':
      return engine.masses.rod;
    case 'crank.masses.rodUpperShare':
      return engine.masses.rodUpperShare;
    case 'crank.masses.masterRod_g':
      return engine.masses.masterRod;
    case 'crank.masses.masterRodCentre_mm':
      return engine.masses.masterRodCentre;
    case 'crank.masses.throw_g':
      return engine.masses.throw;
    case 'crank.rowSpacing_mm':
      return engine.masses.rowSpacing;
    case 'crank.load.flywheel_kg_cm2':
      return engine.load.flywheelInertia;
    case 'crank.load.inertia_kg_cm2':
      return engine.load.inertia;
    case 'crank.load.gearPitch_mm':
      return engine.load.gearPitchDiameter;
    case 'crank.load.shaft_mm':
      return engine.load.shaftDiameter;
    case 'blower.gearPitch_mm':
      return engine.blower.gears.length > 0 ? engine.blower.gearPitchDiameter : null;
    case 'blower.shaft_mm':
      return engine.blower.shaftDiameter;
    case 'surroundings.pressure_kPa':
      return engine.ambient.pressure;
    case 'surroundings.altitude_m':
      return standardHeight(engine.ambient.pressure);
    case 'fuel.drop_um':
      return engine.charge.dropDiameter;
    case 'blower.displacement_cc':
      return engine.blower.displacement;
    case 'blower.impeller.exitWidth_mm':
      return engine.blower.impeller?.exitWidth ?? null;
    case 'blower.impeller.throatArea_mm2':
      return engine.blower.impeller?.throatArea ?? null;
    case 'blower.slip.tipLand_mm':
      return engine.blower.slip?.lands.tip ?? null;
    case 'blower.slip.meshLand_mm':
      return engine.blower.slip?.lands.mesh ?? null;
    case 'blower.slip.endLand_mm':
      return engine.blower.slip?.lands.end ?? null;
    case 'blower.centreDistance_mm':
      return engine.blower.rotors.centreDistance;
    case 'blower.ripple':
      return engine.blower.rippleDepth;
    case 'blower.clearanceArea_mm2':
      return engine.blower.clearanceArea;
    case 'blower.maxSpeed_rpm':
      return engine.blower.maxSpeed;
    case 'blower.maxTipSpeed_m_per_s':
      return engine.blower.maxTipSpeed;
    case 'plenum.wall.area_cm2':
      return engine.plenum.wall.area;
    case 'plenum.passages.wall.area_cm2':
      return engine.passages.wall.area;
    case 'plenum.inletBox.wall.area_cm2':
      return engine.intake.boxWall.area;
    case 'exhaust.collectors[].pipeBore_mm': {
      const area = engine.collectors[position]?.outletArea;
      return area === undefined ? null : Math.sqrt((4 * area) / Math.PI);
    }
    case 'exhaust.collectors[].wall.area_cm2':
      return engine.collectors[position]?.wall.area ?? null;
    case 'windows.scavenging.shortCircuitShare':
      return engine.scavenging.shortCircuitShare;
    case 'windows.scavenging.displacedShare':
      return engine.scavenging.law.kind === 'displacement then mixing'
        ? engine.scavenging.law.displacedShare
        : null;
    default:
      return null;
  }
}

/** Edges in the master cylinder of row A; not to be said where that one is trimmed. */
function ofWindow(
  name: string,
  kind: 'exhaust' | 'transfer',
  group: number,
  { engine, geometry }: Pick<Bench, 'engine' | 'geometry'>,
): number | null {
  const master = geometry.cylinders.find((each) => each.isMaster);
  const window = master?.[kind].groups[group];
  if (!master || !window) return null;
  const own = engine.train.rows[master.rowIndex]!.cylinders[master.cylinderIndex]!;
  if (own.barrelOffset !== 0 || own.exhaustTrim !== 0 || own.transferTrim !== 0) return null;
  if (name === 'top') return window.topDepth;
  return name === 'floor' ? window.floorDepth : window.opensAfterOwnTdc;
}

function ofCylinder(name: string, cylinder: string, engine: Bench['engine']): number | null {
  const place = readCylinderName(cylinder);
  const row = place && engine.train.rows[place.rowIndex];
  const own = row?.cylinders[place!.cylinderIndex];
  if (!row || !own) return null;
  const rides = place!.cylinderIndex !== row.master;
  switch (name) {
    case 'knuckle':
      return rides ? own.knuckleAngle : null;
    case 'knuckleRadius':
      return rides ? (own.knuckleRadius ?? engine.train.knuckleRadius) : null;
    case 'rod':
      return rides ? own.rodLength : null;
    case 'spark':
      return own.sparkAdvance;
    case 'collector':
      return own.collector + 1;
    case 'shortCircuitShare':
      return engine.scavenging.shortCircuitShare;
    case 'barrel':
      return own.barrelOffset;
    case 'head':
      return own.headVolume;
    case 'exhaustTrim':
      return own.exhaustTrim;
    default:
      return own.transferTrim;
  }
}

const DIMENSIONS = ['cylinder.barrel', 'cylinder.piston', 'crank.rodShapes', 'wanted.space'];

function ofDimensions(path: string, { dimensions }: Bench['engine']): number | null {
  const [, group, key] = path.split('.');
  const sizes = dimensions[group === 'rodShapes' ? 'rods' : (group as 'barrel' | 'piston' | 'space')];
  return (sizes as unknown as Record<string, number | null>)[splitKey(key!).name] ?? null;
}
