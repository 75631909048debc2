import { cycloidDisplacement, cycloidRipple } from '../sim/blower/cycloid-rotors.ts';
import { clearancePaths, clearanceTotal } from '../sim/blower/rotors/clearances.ts';
import { displacedRipple, displacedVolume } from '../sim/blower/rotors/displaced.ts';
import { cycloidTipRadius, roundEdgeLand } from '../sim/blower/slip/thin-gap.ts';
import { usualPitchRadius } from '../sim/blower/rotors/profile.ts';
import { sectionFault } from '../sim/blower/rotors/section-fault.ts';
import type { RotorSection } from '../sim/blower/rotors/profile.ts';
import type {
  Blower,
  Collector,
  Crankcase,
  Cooling,
  CrankTrain,
  Engine,
  Impeller,
  Load,
  Masses,
  Row,
  RowCylinder,
  Scavenging,
  SlipByPath,
  Throat,
  WallPatch,
} from '../sim/engine.ts';
import type { WindowGroup } from '../sim/engine.ts';
import { USUAL_DROP } from '../sim/gas/drop-evaporation.ts';
import { standardAtmosphere } from '../sim/gas/standard-atmosphere.ts';
import { nominal } from '../sim/exchange/discharge-table.ts';
import { TURN } from '../sim/units.ts';
import { cylinderName } from './cylinder-name.ts';
import { dimensions } from './dimensions.ts';
import { inSi } from './in-si.ts';
import type { InSi } from './in-si.ts';
import { SCAVENGING_BY_LAYOUT } from './scavenging-layouts.ts';
import type { Design } from './schema/design.ts';

type Si = InSi<Design>;

/** Tip speeds not to be passed where none is given [m/s]. Typical; ranges 30-45, 60-100 and 350-450. */
const MAX_TIP_SPEED = { straight: 40, twisted: 80, impeller: 400 };

/** Of aluminium at 150 °C [J/(kg K)]. Typical; iron has 500, which the masses may stand for. */
const METAL_HEAT = 930;

/** A complete design becomes the engine that the model computes: base SI, every derived default filled in. */
export function toEngine(design: Design): Engine {
  const si = inSi(design);
  const { windows, plenum, fuel, cooling, wanted, surroundings } = si;
  const { carburettor, burning, knock } = fuel;
  const { passages, inletBox } = plenum;
  return {
    name: design.name,
    train: train(si),
    cylinder: {
      bore: si.cylinder.bore,
      compressionRatio: si.cylinder.compressionRatio,
      compressionRatioFrom: si.cylinder.compressionRatioFrom,
      deckClearance: si.cylinder.deckClearance,
    },
    crankcase: crankcase(si),
    windows: {
      exhaust: windows.exhaust.map(windowGroup),
      transfer: windows.transfer.map(windowGroup),
      exhaustDischarge: windows.exhaustTable ? nominal(windows.exhaustTable) : windows.exhaustDischarge,
      transferDischarge: windows.transferTable ? nominal(windows.transferTable) : windows.transferDischarge,
      exhaustTable: windows.exhaustTable,
      transferTable: windows.transferTable,
    },
    ambient: {
      pressure: surroundings.pressure ?? standardAtmosphere(surroundings.altitude ?? 0).pressure,
      temperature: surroundings.temperature,
      humidity: surroundings.humidity,
    },
    intake: {
      throttle: {
        kind: carburettor.kind,
        bore: carburettor.bore,
        shaftRatio: carburettor.shaftRatio,
        closedAngle: carburettor.closed,
        leakShare: carburettor.leakShare,
        dischargeCoefficient: carburettor.discharge,
      },
      restrictor: throat(fuel.restrictor),
      venturi: throat(fuel.venturi),
      arrester: fuel.arrester,
      boxVolume: inletBox.volume,
      boxWall: wall(inletBox),
    },
    blower: blower(si),
    plenum: {
      volume: plenum.volume,
      wall: wall(plenum),
      relief: plenum.relief && {
        crackingPressure: plenum.relief.cracking,
        fullOpenPressure: plenum.relief.fullOpen,
        area: circle(plenum.relief.bore),
        dischargeCoefficient: plenum.relief.discharge,
      },
    },
    passages: {
      volume: passages.volume,
      entryArea: passages.entryArea,
      entryDischarge: passages.entryDischarge,
      length: passages.length ?? null,
      wall: wall(passages),
    },
    collectors: si.exhaust.collectors.map(collector),
    charge: {
      fuel: fuel.kind,
      lambda: fuel.lambda,
      oilShare: fuel.oilShare,
      feed: fuel.feed,
      evaporatedShare: fuel.evaporatedShare,
      liquidGoesOn: fuel.liquidGoesOn,
      dropDiameter: fuel.drop ?? USUAL_DROP[fuel.feed],
      injection: { ...fuel.injection },
    },
    scavenging: scavenging(si),
    combustion: { ...burning },
    knock: { ...knock, activationTemperature: knock.activation },
    cylinderHeat: {
      law: cooling.law,
      filmFactor: cooling.filmFactor,
      woschni: {
        scavenging: cooling.woschniScavenging,
        closed: cooling.woschniClosed,
        burning: cooling.woschniBurning,
        motoredExponent: cooling.motoredExponent,
      },
      annandA: cooling.annandA,
      annandB: cooling.annandB,
      annandC: cooling.annandC,
      crownAreaRatio: cooling.crownAreaRatio,
      headAreaRatio: cooling.headAreaRatio,
      crownTemperature: cooling.crown,
      headTemperature: cooling.head,
      linerTemperature: cooling.liner,
      solvesWalls: cooling.walls === 'worked out',
      cooling: coolingOf(si),
    },
    friction: {
      law: si.crank.friction.law === 'Blair' ? 'stroke times speed' : 'four terms',
      bearingShare: si.crank.friction.bearingShare,
      windageShare: si.crank.friction.windageShare,
      oilPumpTorque: si.crank.friction.oilPump,
      starterTorque: si.crank.friction.starter,
      constant: si.crank.friction.constant,
      peakPressureFactor: si.crank.friction.peakPressureFactor,
      pistonSpeedFactor: si.crank.friction.pistonSpeedFactor,
      speedSquaredFactor: si.crank.friction.speedSquaredFactor,
      outputGearEfficiency: si.crank.friction.outputGearEfficiency,
    },
    masses: masses(si),
    load: load(si),
    dimensions: dimensions(si),
    wanted: {
      deliveryRatio: wanted.deliveryRatio,
      crankingSpeed: wanted.crankingSpeed,
      starterTorque: wanted.starterTorque ?? null,
      coldFriction: wanted.coldFriction,
      minSpeed: wanted.minSpeed,
      maxSpeed: wanted.maxSpeed,
      speed: wanted.speed,
    },
  };
}

function train({ crank, fuel }: Si): CrankTrain {
  const corrections = new Map(crank.corrections.map((each) => [each.cylinder, each]));
  const rows = crank.rows.map((row, rowIndex): Row => {
    const axes = row.axes ?? Array.from({ length: row.cylinders }, (_, j) => (TURN * j) / row.cylinders);
    const master = row.master - 1;
    const cylinders = axes.map((axisAngle, j): RowCylinder => {
      const own = corrections.get(cylinderName(rowIndex, j));
      return {
        axisAngle,
        knuckleAngle: own?.knuckle ?? axisAngle - (axes[master] ?? 0),
        knuckleRadius: own?.knuckleRadius ?? null,
        rodLength: own?.rod ?? crank.masterRod - crank.knuckleRadius,
        barrelOffset: own?.barrel ?? 0,
        headVolume: own?.head ?? 0,
        exhaustTrim: own?.exhaustTrim ?? 0,
        transferTrim: own?.transferTrim ?? 0,
        sparkAdvance: own?.spark ?? fuel.spark,
        collector: (own?.collector ?? row.collector) - 1,
      };
    });
    return { throwAngle: row.throw, staggerAngle: row.stagger, master, cylinders };
  });
  return {
    crankRadius: crank.stroke / 2,
    masterRodLength: crank.masterRod,
    knuckleRadius: crank.knuckleRadius,
    rows,
  };
}

function windowGroup(group: Si['windows']['exhaust'][number]): WindowGroup {
  return {
    count: group.count,
    width: group.width,
    widthAlong: group.widthAlong,
    bridgeWidth: group.bridge,
    top:
      group.top !== undefined
        ? { kind: 'depth', depth: group.top }
        : { kind: 'angle', opensAfterTdc: group.opens ?? NaN },
    floorDepth: group.floor ?? null,
    cornerRadius: group.corner,
    planAngle: group.plan,
    elevationAngle: group.elevation,
  };
}

function crankcase({ crank, cylinder: { bore } }: Si): Crankcase | null {
  const si = crank.crankcase;
  if (!si) return null;
  const cylinders = crank.rows.reduce((count, row) => count + row.cylinders, 0);
  const volume = si.volume ?? 3 * cylinders * circle(bore) * crank.stroke;
  return {
    isPlenum: si.role === 'plenum',
    volume,
    breather: { area: circle(si.breather), dischargeCoefficient: si.breatherDischarge },
    blowBy: { area: si.rings, dischargeCoefficient: si.ringsDischarge },
    wall: wall({ volume, wall: si.wall }),
  };
}

/** Where nothing was measured: dimensions in proportion to the bore. */
function coolingOf(si: Si): Cooling {
  const { cooling, cylinder, crank } = si;
  const { fins, piston, rows } = cooling;
  const { bore } = cylinder;
  const metal = {
    thickness: fins.thickness ?? 0.04 * bore,
    space: fins.space ?? 0.13 * bore,
    conductivity: fins.conductivity,
  };
  return {
    airSpeed: cooling.airSpeed,
    wakeSpeedShare: rows.speedShare,
    wakeWarming: rows.warming,
    finFactor: fins.factor,
    stillAirCoefficient: fins.stillAir,
    crankcaseTemperature: cooling.crankcase,
    coating: { thickness: cooling.coating, conductivity: cooling.coatingConductivity },
    piston: {
      conductivity: piston.conductivity,
      crownThickness: piston.crownThickness ?? 0.1 * bore,
      ringHeight: piston.ringHeight ?? 0.06 * bore,
      ringCoefficient: piston.ring,
      skirtLength: piston.skirtLength ?? 0.7 * bore,
      skirtThickness: piston.skirtThickness ?? 0.055 * bore,
      skirtCoefficient: piston.skirt,
      undersideCoefficient: piston.underside,
      mass: masses(si).piston,
    },
    barrel: {
      wall: fins.wall ?? 0.15 * bore,
      length: fins.length ?? crank.stroke,
      fins: { ...metal, height: fins.height ?? 0.5 * bore },
      mass: fins.barrelMass ?? 7000 * bore ** 3,
    },
    head: {
      rootArea: fins.headArea ?? circle(1.9 * bore),
      fins: { ...metal, height: fins.headHeight ?? 0.7 * bore },
      mass: fins.headMass ?? 4700 * bore ** 3,
    },
    jointCoefficient: fins.joint,
    specificHeat: METAL_HEAT,
    limits: { crown: cooling.crownLimit, head: cooling.headLimit, liner: cooling.linerLimit },
  };
}

/** Where nothing was weighed: like pistons and rods weigh with the cube of their size. */
function masses({ crank, cylinder: { bore } }: Si): Masses {
  const { masses: given, knuckleRadius, masterRod } = crank;
  const ofBore = (density: number) => density * bore ** 3;
  const rod = given.rod ?? ofBore(800);
  return {
    piston: given.piston ?? ofBore(1000),
    rod,
    rodUpperShare: given.rodUpperShare ?? (knuckleRadius > 0 ? 0.45 : 0.3),
    masterRod: given.masterRod ?? 2.5 * rod,
    masterRodCentre: given.masterRodCentre ?? 0.2 * masterRod,
    throw: given.throw ?? ofBore(2500),
    balancedShare: given.balancedShare,
    rowSpacing: crank.rowSpacing ?? 1.5 * bore,
  };
}

function load({ crank: { load: given }, cylinder: { bore } }: Si): Load {
  return {
    flywheelInertia: given.flywheel ?? 6e3 * bore ** 5,
    inertia: given.inertia ?? 9e4 * bore ** 5,
    gearRatio: given.gearRatio,
    gearPitchDiameter: given.gearPitch ?? 1.5 * bore,
    shaftDiameter: given.shaft ?? 0.5 * bore,
    shockFactor: given.shock,
  };
}

function blower({ blower: si, cylinder: { bore } }: Si): Blower {
  const { tipDiameter, rotorLength, lobes } = si;
  const gaps = { tip: si.tipGap, mesh: si.meshGap, end: si.endGap };
  const wheel = si.kind === 'centrifugal';
  return {
    kind: si.kind,
    count: si.count,
    displacement: wheel ? bestVolume(si) : (si.displacement ?? displacementOf(si)),
    volumeRatio: si.kind === 'internal compression' ? si.volumeRatio : 1,
    impeller: wheel ? impeller(si) : null,
    gears: si.gears.map(({ driver, driven, efficiency }) => ({
      driverTeeth: driver,
      drivenTeeth: driven,
      efficiency,
    })),
    lobes,
    helixAngle: si.helix,
    rippleDepth: wheel ? 0 : (si.ripple ?? rippleOf(si)),
    phase: si.phase,
    phaseStep: si.phaseStep,
    clearanceArea: wheel
      ? 0
      : (si.clearanceArea ?? clearanceTotal(clearancePaths(gaps, tipDiameter, rotorLength))),
    clearanceDischarge: si.clearanceDischarge,
    tipDiameter,
    mechanicalEfficiency: si.mechanicalEfficiency,
    slip: !wheel && si.slip.law === 'by path' ? slipByPath(si) : null,
    carriedBackShare: wheel ? 0 : si.carriedBackShare,
    dragTorque: si.drag,
    dragWithSpeed: si.dragWithSpeed,
    dragWithSquare: si.dragWithSquare,
    casingHeatShare: si.casingHeatShare,
    maxTipSpeed: si.maxTipSpeed ?? MAX_TIP_SPEED[wheel ? 'impeller' : si.helix > 0 ? 'twisted' : 'straight'],
    gearPitchDiameter: si.gearPitch ?? ((si.gears[0]?.driver ?? 0) * bore) / 32,
    shaftDiameter: si.shaft ?? 0.3 * bore,
    maxSpeed: si.maxSpeed,
    rotors: {
      profile: si.profile,
      length: rotorLength,
      centreDistance: centreDistance(si),
      gaps,
      bore: si.rotorBore,
      material: si.rotorMaterial,
      casingMaterial: si.casingMaterial,
    },
  };
}

function slipByPath(si: Si['blower']): SlipByPath {
  const { slip, tipDiameter, lobes } = si;
  const centre = centreDistance(si);
  return {
    lands: {
      tip: slip.tipLand ?? roundEdgeLand(cycloidTipRadius(tipDiameter / 2, lobes), si.tipGap),
      mesh: slip.meshLand ?? roundEdgeLand(centre / 2, si.meshGap),
      end: slip.endLand ?? centre / 2,
    },
    filmShare: slip.filmShare,
    closeWithHeat: slip.closeWithHeat,
  };
}

const centreDistance = (si: Si['blower']): number =>
  si.centreDistance ?? 2 * usualPitchRadius(si.profile, (si.tipDiameter + si.meshGap) / 2, si.lobes);

/** What a turn of a wheel carries at best flow: V = phi U D^2 with U = pi D n. */
const bestVolume = ({ tipDiameter, impeller: { bestFlow } }: Si['blower']): number =>
  Math.PI * bestFlow * tipDiameter ** 3;

function impeller({ tipDiameter, impeller: si }: Si['blower']): Impeller {
  return {
    blades: si.blades,
    backsweep: si.backsweep,
    exitWidth: si.exitWidth ?? 0.08 * tipDiameter,
    throatArea: si.throatArea ?? 0.17 * tipDiameter ** 2,
    efficiency: si.efficiency,
    efficiencyAtHalf: si.efficiencyAtHalf,
    flowWithoutHead: si.flowWithoutHead,
    workFactor: si.workFactor,
  };
}

/** Section of touching rotors of the stated tip diameter; null where it is that of full cycloids, or cannot mesh. */
function otherSection(si: Si['blower']): RotorSection | null {
  if (si.kind !== 'roots' || (si.profile === 'cycloidal' && si.centreDistance === undefined)) return null;
  const tipRadius = si.tipDiameter / 2;
  const pitchRadius =
    si.centreDistance === undefined
      ? usualPitchRadius(si.profile, tipRadius, si.lobes)
      : si.centreDistance / 2;
  const section = { profile: si.profile, lobes: si.lobes, tipRadius, pitchRadius };
  return sectionFault(section) === null ? section : null;
}

function displacementOf(si: Si['blower']): number {
  const section = otherSection(si);
  return section
    ? displacedVolume(section, si.rotorLength)
    : cycloidDisplacement(si.tipDiameter, si.rotorLength, si.lobes);
}

function rippleOf(si: Si['blower']): number {
  const section = otherSection(si);
  return section ? displacedRipple(section).depth : cycloidRipple(si.lobes);
}

function scavenging({ windows }: Si): Scavenging {
  const { law, layout, inside, leaving, smoothing } = windows.scavenging;
  const usual = SCAVENGING_BY_LAYOUT[layout];
  const laws: Record<typeof law, Scavenging['law']> = {
    'perfect mixing': { kind: 'perfect mixing' },
    'perfect displacement': { kind: 'perfect displacement' },
    'displacement then mixing': {
      kind: 'displacement then mixing',
      displacedShare: windows.scavenging.displacedShare ?? usual.displacedShare,
    },
    table: { kind: 'table', inside: inside ?? [], leaving: leaving ?? [] },
  };
  return {
    law: laws[law],
    shortCircuitShare: windows.scavenging.shortCircuitShare ?? usual.shortCircuitShare,
    smoothing,
  };
}

function collector(si: Si['exhaust']['collectors'][number]): Collector {
  return {
    volume: si.volume,
    outletArea: circle(si.outlet),
    outletDischarge: si.outletDischarge,
    pipe:
      si.pipeLength === undefined
        ? null
        : { length: si.pipeLength, area: circle(si.pipeBore ?? si.outlet), friction: si.pipeFriction },
    wall: wall(si),
  };
}

function throat(si: Si['fuel']['restrictor']): Throat | null {
  return si && { bore: si.bore, dischargeCoefficient: si.discharge, recovered: si.recovered };
}

/** Wall of a volume; where no area is given, that of a duct with this volume and hydraulic diameter, 4 V / d. */
function wall({ volume, wall: si }: { volume: number; wall: Si['plenum']['wall'] }): WallPatch {
  return {
    area: si.area ?? (4 * volume) / si.hydraulicDiameter,
    temperature: si.temperature,
    hydraulicDiameter: si.hydraulicDiameter,
    enhancement: si.enhancement,
  };
}

const circle = (diameter: number): number => (Math.PI / 4) * diameter * diameter;
