import type { Engine, WindowGroup } from '../engine.ts';
import { PeriodicTable } from '../numerics/periodic-table.ts';
import { failure, success } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { TURN } from '../units.ts';
import { withinTurn } from './angles.ts';
import { checkCylinder, checkTrain, checkWindow } from './check-dimensions.ts';
import { masterClearanceVolume } from './clearance-volume.ts';
import { crownPasses } from './crown-passes.ts';
import type { CylinderGeometry, EngineGeometry } from './cylinder-geometry.ts';
import { FaultList, LENGTH, NUMBER, VOLUME, cylinderName, show } from './fault-list.ts';
import { checkWidthSum, placeWindow } from './place-windows.ts';
import type { DeckedCylinder, NominalMaster } from './place-windows.ts';
import { solveTrain } from './solve-train.ts';
import type { TrainCylinder } from './solve-train.ts';
import { WindowProfile } from './window-profile.ts';
import type { WindowInCylinder } from './window-profile.ts';
import { windowKinks } from './window-kinks.ts';

export type { CylinderGeometry, EngineGeometry } from './cylinder-geometry.ts';

/** Knots of a travel table. Half a degree apart the height is true to about 1e-12 m. */
export const TRAVEL_KNOTS = 720;

/** The part of an engine that has a shape. */
export type GeometryInput = Pick<Engine, 'train' | 'cylinder' | 'windows'>;

type Kind = 'exhaust' | 'transfer';

interface PlacedGroup {
  readonly kind: Kind;
  readonly group: WindowGroup;
  readonly placed: readonly WindowInCylinder[];
}

/**
 * The engine's geometry: dead centres, volumes, window areas and their timing, cylinder by cylinder.
 *
 *   depth of the crown edge below its deck = depthAtTdc + travel
 *   depthAtTdc = deck clearance + barrel offset + master's top height - own top height
 *   Vc = Vc of the nominal master + A (depthAtTdc - deck clearance) + own head volume
 *
 * The compression ratio, window angles and the default floor belong to the nominal master: row A's, with no barrel offset,
 * head volume or trim. Every cylinder, that master included, departs from it by its own offset and trim.
 *
 * @returns the geometry, or everything that is wrong with the dimensions, with path, value and what is allowed
 *
 * Numerics: dead centres and window events from the exact motion, to 1e-12 rad; travel from a table.
 */
export function buildGeometry(engine: GeometryInput): Outcome<EngineGeometry> {
  const list = new FaultList();
  const trainOk = checkTrain(engine.train, list);
  const cylinderOk = checkCylinder(engine.cylinder, list);
  const windows = soundWindows(engine, list);
  const solved = trainOk ? solveTrain(engine.train, list) : null;
  if (!solved || !cylinderOk) return failure(list.faults);

  const cylinders = solved.map((cylinder) => onItsDeck(engine, solved, cylinder));
  const master: NominalMaster = {
    cylinder: masterOf(engine, solved, 0),
    deckClearance: engine.cylinder.deckClearance,
  };
  const bore = engine.cylinder.bore;
  const groups: PlacedGroup[] = [];
  for (const { kind, group, path, name } of windows) {
    const trim = kind === 'exhaust' ? 'exhaustTrim' : 'transferTrim';
    const placed = placeWindow(path, name, group, trim, cylinders, master, bore, list);
    if (placed) groups.push({ kind, group, placed });
  }
  checkWidthSum(cylinders, groups, bore, list);
  if (list.length > 0) return failure(list.faults);

  const boreArea = 0.25 * Math.PI * bore * bore;
  const masterStroke = master.cylinder.topHeight - master.cylinder.bottomHeight;
  const exhaustTop = nominalExhaustTop(groups, cylinders);
  const masterClearance = masterClearanceVolume(engine.cylinder, boreArea, masterStroke, exhaustTop);
  if (!(masterClearance > 0)) {
    const { deckClearance } = engine.cylinder;
    list.add(
      'cylinder.compressionRatioFrom',
      `the compression ratio is counted from exhaust closing, ${show(exhaustTop, LENGTH)} below the deck: without trim ` +
        `that edge must lie below the crown at top dead centre, ${show(deckClearance, LENGTH)}`,
    );
    return failure(list.faults);
  }
  const built = cylinders.map((cylinder, index) =>
    describe(engine, cylinder, index, groups, boreArea, masterClearance, list),
  );
  if (list.length > 0) return failure(list.faults);
  return success({
    cylinders: built,
    boreArea,
    sweptVolume: built.reduce((total, one) => total + one.sweptVolume, 0),
  });
}

interface NamedWindow {
  readonly kind: Kind;
  readonly group: WindowGroup;
  readonly path: string;
  readonly name: string;
}

/** The groups that are sound by themselves; the others are told. */
function soundWindows(engine: GeometryInput, list: FaultList): readonly NamedWindow[] {
  const bore = engine.cylinder.bore > 0 && Number.isFinite(engine.cylinder.bore) ? engine.cylinder.bore : NaN;
  const sound: NamedWindow[] = [];
  for (const kind of ['exhaust', 'transfer'] as const) {
    const groups = engine.windows[kind];
    list.number(`windows.${kind}`, `the number of ${kind} window groups`, groups.length, NUMBER, {
      atLeast: 1,
    });
    groups.forEach((group, i) => {
      const path = `windows.${kind}[${i}]`;
      const name = `${kind} window group ${i + 1}`;
      if (checkWindow(path, name, group, bore, list)) sound.push({ kind, group, path, name });
    });
  }
  return sound;
}

function masterOf(engine: GeometryInput, solved: readonly TrainCylinder[], rowIndex: number): TrainCylinder {
  const master = engine.train.rows[rowIndex]!.master;
  return solved.find((one) => one.rowIndex === rowIndex && one.cylinderIndex === master)!;
}

function onItsDeck(
  engine: GeometryInput,
  solved: readonly TrainCylinder[],
  cylinder: TrainCylinder,
): DeckedCylinder {
  const design = engine.train.rows[cylinder.rowIndex]!.cylinders[cylinder.cylinderIndex]!;
  const rise = masterOf(engine, solved, cylinder.rowIndex).topHeight - cylinder.topHeight;
  const depthAtTdc = engine.cylinder.deckClearance + design.barrelOffset + rise;
  return {
    ...cylinder,
    design,
    depthAtTdc,
    depthAtBdc: depthAtTdc + cylinder.topHeight - cylinder.bottomHeight,
  };
}

/** Highest exhaust edge of the nominal master [m]: a placed edge less that cylinder's trim. */
function nominalExhaustTop(groups: readonly PlacedGroup[], cylinders: readonly DeckedCylinder[]): number {
  const tops = groups
    .filter((one) => one.kind === 'exhaust')
    .map((one) => one.placed[0]!.topDepth - cylinders[0]!.design.exhaustTrim);
  return Math.min(...tops);
}

function describe(
  engine: GeometryInput,
  cylinder: DeckedCylinder,
  index: number,
  groups: readonly PlacedGroup[],
  boreArea: number,
  masterClearance: number,
  list: FaultList,
): CylinderGeometry {
  const { rowIndex, cylinderIndex, motion, pinOffset, topPin, bottomPin, design, depthAtTdc } = cylinder;
  const stroke = cylinder.topHeight - cylinder.bottomHeight;
  const sweptVolume = boreArea * stroke;
  const clearanceVolume =
    masterClearance + boreArea * (depthAtTdc - engine.cylinder.deckClearance) + design.headVolume;
  if (!(clearanceVolume > 0)) {
    const least = design.barrelOffset - clearanceVolume / boreArea;
    list.add(
      `train.rows[${rowIndex}].cylinders[${cylinderIndex}].barrelOffset`,
      `the clearance volume of ${cylinderName(rowIndex, cylinderIndex)} is ${show(clearanceVolume, VOLUME)} ` +
        `with a barrel offset of ${show(design.barrelOffset, LENGTH)}: the volume must be above 0, the offset above ` +
        show(least, LENGTH),
    );
  }
  const profile = (kind: Kind): WindowProfile =>
    new WindowProfile(
      groups
        .filter((one) => one.kind === kind)
        .map((one) => {
          const window = one.placed[index]!;
          const { down, up } = crownPasses(cylinder, window.topDepth - depthAtTdc);
          return { ...window, opensAfterOwnTdc: down, closesAfterOwnTdc: up };
        }),
    );
  const exhaust = profile('exhaust');
  const transfer = profile('transfer');
  const tdc = withinTurn(topPin - pinOffset);
  const { axisAngle } = design;
  const pinPasses = withinTurn(axisAngle - pinOffset);
  const trappedVolume = boreArea * (exhaust.topDepth - depthAtTdc);
  return {
    index,
    rowIndex,
    cylinderIndex,
    row: rowIndex + 1,
    number: cylinderIndex + 1,
    isMaster: cylinderIndex === engine.train.rows[rowIndex]!.master,
    tdc,
    bdc: withinTurn(bottomPin - pinOffset),
    sparkAngle: withinTurn(
      (engine.train.sparkFrom === 'own dead centre' ? tdc : pinPasses) - design.sparkAdvance,
    ),
    pinPasses,
    stroke,
    sweptVolume,
    clearanceVolume,
    compressionRatio: 1 + sweptVolume / clearanceVolume,
    trappedCompressionRatio: 1 + trappedVolume / clearanceVolume,
    depthAtTdc,
    travel: travelTable(cylinder),
    exhaust,
    transfer,
    kinks: windowKinks(cylinder, [exhaust, transfer]),
    motion,
    pinOffset,
  };
}

function travelTable(cylinder: TrainCylinder): PeriodicTable {
  const values = new Float64Array(TRAVEL_KNOTS);
  const slopes = new Float64Array(TRAVEL_KNOTS);
  for (let i = 0; i < TRAVEL_KNOTS; i++) {
    cylinder.motion.evaluate((i * TURN) / TRAVEL_KNOTS + cylinder.pinOffset);
    values[i] = cylinder.topHeight - cylinder.motion.height;
    slopes[i] = -cylinder.motion.slope;
  }
  return new PeriodicTable(values, slopes);
}
