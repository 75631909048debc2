import type { BlowerOutline, EngineOutline, EnginePose, PosedCylinder } from '../charts/engine-shapes.ts';
import { gearRatio } from '../sim/blower/gear-train.ts';
import { impellerOutline } from '../sim/blower/centrifugal/impeller-outline.ts';
import { matingAngle } from '../sim/blower/rotors/mesh-gap.ts';
import { rotorOutline } from '../sim/blower/rotors/outline.ts';
import { fullCycloids } from '../sim/blower/rotors/profile.ts';
import { idealSection } from '../sim/blower/rotors/rotor-pair.ts';
import { sectionFault } from '../sim/blower/rotors/section-fault.ts';
import type { EngineGeometry } from '../sim/geometry/cylinder-geometry.ts';
import { rodPoints } from '../sim/geometry/rod-points.ts';
import type { Point } from '../sim/geometry/rod-points.ts';
import type { Engine } from '../sim/index.ts';
import { deg } from '../sim/units.ts';

/** Row frame (x along axis angle 0, y a quarter turn on) to the page: axis 0 upwards, rotation clockwise, y down. */
export const onPage = ({ x, y }: Point, stagger: number): Point => {
  const cos = Math.cos(stagger);
  const sin = Math.sin(stagger);
  const along = x * cos - y * sin;
  const on = x * sin + y * cos;
  return { x: on, y: -along };
};

/** What of the front view stays put as the crank turns [m]. */
export function engineOutline(engine: Engine, geometry: EngineGeometry): EngineOutline {
  const { bore } = engine.cylinder;
  const { barrel, piston, rods } = engine.dimensions;
  const cylinders = geometry.cylinders.map((cylinder) => {
    const row = engine.train.rows[cylinder.rowIndex]!;
    cylinder.motion.evaluate(cylinder.tdc + cylinder.pinOffset);
    const deck = cylinder.motion.height + piston.pinToCrown + cylinder.depthAtTdc;
    const base = barrel.base + row.cylinders[cylinder.cylinderIndex]!.barrelOffset;
    const edges = (groups: readonly { topDepth: number; floorDepth: number }[]) =>
      groups.map((group) => ({ top: deck - group.topDepth, floor: deck - group.floorDepth }));
    return {
      label: geometry.cylinders.some((each) => each.row > 1)
        ? `${String.fromCharCode(64 + cylinder.row)}${cylinder.number}`
        : `${cylinder.number}`,
      row: cylinder.rowIndex,
      angle: cylinder.motion.rods.axisAngle + row.staggerAngle,
      collector: row.cylinders[cylinder.cylinderIndex]!.collector,
      deck,
      base,
      mouth: base - barrel.mouthDepth,
      exhaust: edges(cylinder.exhaust.groups),
      transfer: edges(cylinder.transfer.groups),
    };
  });
  return {
    bore,
    barrel,
    rods: {
      bigEnd: rods.bigEnd / 2,
      knuckleEye: rods.knuckleEye / 2,
      knucklePin: rods.knucklePin / 2,
      smallEnd: rods.smallEnd / 2,
      shank: [rods.shankLower, rods.shankUpper],
      masterShank: [rods.masterShankLower, rods.masterShankUpper],
    },
    pistonLength: piston.length,
    pinRadius: 0.09 * bore,
    crankcase: barrel.base,
    reach: Math.max(...cylinders.map(({ deck }) => deck)) + 0.34 * bore,
    blower: blowerOutline(engine.blower),
    cylinders,
  };
}

/** Departure of a drawn rotor from its section, over the tip radius: a hundredth of a pixel. */
const DRAWN = 2e-4;

function blowerOutline(blower: Engine['blower']): BlowerOutline {
  const { count, tipDiameter, lobes, gears } = blower;
  const teeth = gears.map((gear) => `${gear.driverTeeth} : ${gear.drivenTeeth}`).join(' × ');
  const label = `${count} ${count === 1 ? 'blower' : 'blowers'}, ${teeth} teeth`;
  const tipRadius = tipDiameter / 2;
  if (blower.impeller) {
    const rotor = impellerOutline(blower.impeller, tipRadius);
    return { tipRadius, pitchRadius: 0, rotor, label };
  }
  const section = idealSection(blower);
  const meshing = sectionFault(section) === null ? section : fullCycloids(tipRadius, lobes);
  return {
    tipRadius,
    pitchRadius: meshing.pitchRadius,
    rotor: rotorOutline(meshing, 0, DRAWN * tipRadius),
    label,
  };
}

/** Where everything that moves stands at one crank angle. */
export function enginePose(engine: Engine, geometry: EngineGeometry, angle_deg: number): EnginePose {
  const { pinToCrown } = engine.dimensions.piston;
  const angle = angle_deg * deg;
  const cylinders: PosedCylinder[] = geometry.cylinders.map((cylinder) => {
    const pinAngle = angle + cylinder.pinOffset;
    const stagger = engine.train.rows[cylinder.rowIndex]!.staggerAngle;
    const { crankPin, knucklePin, gudgeonPin } = rodPoints(cylinder.motion.rods, pinAngle);
    const height = Math.hypot(gudgeonPin.x, gudgeonPin.y);
    return {
      crown: height + pinToCrown,
      crankPin: onPage(crankPin, stagger),
      knucklePin: onPage(knucklePin, stagger),
      gudgeonPin: onPage(gudgeonPin, stagger),
      isMaster: cylinder.isMaster,
    };
  });
  return { rotorAngles: rotorAngles(engine.blower, angle), cylinders };
}

/** Of the left and the right rotor, clockwise on the page: they mesh, and carry gas down along both sides of the casing [rad]. */
function rotorAngles({ gears, phase, impeller, lobes }: Engine['blower'], crankAngle: number): number[] {
  const { numerator, denominator } = gearRatio(gears);
  const turned = phase + (crankAngle * numerator) / denominator;
  return impeller ? [turned] : [-turned, -matingAngle(turned, lobes)];
}
