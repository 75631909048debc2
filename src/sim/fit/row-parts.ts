import type { Engine } from '../engine.ts';
import type { CylinderGeometry, EngineGeometry } from '../geometry/cylinder-geometry.ts';
import { rodPoints } from '../geometry/rod-points.ts';
import type { RoundedShape } from './rounded-shape.ts';
import { placeBetween, placeCorner, placeOnAxis, roundedShape } from './rounded-shape.ts';

/** What of one cylinder is looked at, in the frame of its row. */
export interface CylinderParts {
  /** As on the engine: `A3`, or `3` where there is one row. */
  readonly label: string;
  readonly cylinder: CylinderGeometry;
  readonly axisAngle: number;
  /** Angle and radius of the knuckle pin on the master rod; 0 for the master [rad, m]. */
  readonly knuckleAngle: number;
  readonly knuckleRadius: number;
  /** Deck, base and mouth of the barrel above the crank axis [m]. */
  readonly deck: number;
  readonly base: number;
  readonly mouth: number;
  readonly flange: RoundedShape;
  readonly fins: RoundedShape;
  readonly mouthBody: RoundedShape;
  readonly mouthWalls: readonly RoundedShape[];
  readonly skirt: RoundedShape;
  readonly skirtWalls: readonly RoundedShape[];
  readonly shank: RoundedShape;
  /** Null for the master and for plain rods, whose lower end is the big end. */
  readonly eye: RoundedShape | null;
  readonly smallEnd: RoundedShape;
}

/** The outlines of a row's parts. Those that move stand as the crank did at the last `place`. */
export class RowParts {
  readonly rowIndex: number;
  readonly cylinders: readonly CylinderParts[];
  readonly bigEnd: RoundedShape;
  /** Plain rods lie side by side on the pin and cannot touch each other. */
  readonly articulated: boolean;
  private readonly engine: Engine;

  constructor(engine: Engine, geometry: EngineGeometry, rowIndex: number) {
    const { dimensions, train, cylinder } = engine;
    this.engine = engine;
    this.rowIndex = rowIndex;
    this.articulated = geometry.cylinders.some(
      (each) => each.rowIndex === rowIndex && each.motion.rods.knuckleRadius > 0,
    );
    this.bigEnd = roundedShape(1, dimensions.rods.bigEnd / 2);
    this.cylinders = geometry.cylinders
      .filter((each) => each.rowIndex === rowIndex)
      .map((each) => partsOf(engine, each, train.rows.length > 1));
    for (const { axisAngle, deck, base, mouth, flange, fins, mouthBody, mouthWalls } of this.cylinders) {
      const { barrel } = dimensions;
      const cos = Math.cos(axisAngle);
      const sin = Math.sin(axisAngle);
      const half = cylinder.bore / 2;
      placeOnAxis(flange, cos, sin, base, deck, -barrel.flange / 2, barrel.flange / 2);
      placeOnAxis(fins, cos, sin, deck - barrel.finsFrom, deck, -barrel.fins / 2, barrel.fins / 2);
      placeOnAxis(mouthBody, cos, sin, mouth, deck, -barrel.mouth / 2, barrel.mouth / 2);
      placeOnAxis(mouthWalls[0]!, cos, sin, mouth, deck, -barrel.mouth / 2, -half);
      placeOnAxis(mouthWalls[1]!, cos, sin, mouth, deck, half, barrel.mouth / 2);
    }
    this.place(0);
  }

  /** Puts everything where it stands at a crank angle [rad]. */
  place(angle: number): void {
    const { piston, rods } = this.engine.dimensions;
    const half = this.engine.cylinder.bore / 2;
    for (const { cylinder, axisAngle, skirt, skirtWalls, shank, eye, smallEnd } of this.cylinders) {
      const points = rodPoints(cylinder.motion.rods, angle + cylinder.pinOffset);
      const { knucklePin, gudgeonPin } = points;
      const cos = Math.cos(axisAngle);
      const sin = Math.sin(axisAngle);
      const crown = gudgeonPin.x * cos + gudgeonPin.y * sin + piston.pinToCrown;
      const low = crown - piston.length;
      const inner = half - piston.skirtWall;
      placeOnAxis(skirt, cos, sin, low, crown, -half, half);
      placeOnAxis(skirtWalls[0]!, cos, sin, low, crown - piston.crownThickness, -half, -inner);
      placeOnAxis(skirtWalls[1]!, cos, sin, low, crown - piston.crownThickness, inner, half);
      const master = this.articulated && eye === null;
      placeBetween(
        shank,
        knucklePin,
        gudgeonPin,
        master ? rods.masterShankLower : rods.shankLower,
        master ? rods.masterShankUpper : rods.shankUpper,
      );
      if (eye) placeCorner(eye, 0, knucklePin.x, knucklePin.y);
      placeCorner(smallEnd, 0, gudgeonPin.x, gudgeonPin.y);
      placeCorner(this.bigEnd, 0, points.crankPin.x, points.crankPin.y);
    }
  }
}

function partsOf(engine: Engine, cylinder: CylinderGeometry, severalRows: boolean): CylinderParts {
  const { dimensions, train } = engine;
  const { barrel, piston, rods } = dimensions;
  const own = train.rows[cylinder.rowIndex]!.cylinders[cylinder.cylinderIndex]!;
  const { axisAngle, knuckleRadius, knuckleAngle } = cylinder.motion.rods;
  cylinder.motion.evaluate(cylinder.tdc + cylinder.pinOffset);
  const base = barrel.base + own.barrelOffset;
  return {
    label: `${severalRows ? String.fromCharCode(64 + cylinder.row) : ''}${cylinder.number}`,
    cylinder,
    axisAngle,
    knuckleAngle,
    knuckleRadius,
    deck: cylinder.motion.height + piston.pinToCrown + cylinder.depthAtTdc,
    base,
    mouth: base - barrel.mouthDepth,
    flange: roundedShape(4, 0),
    fins: roundedShape(4, 0),
    mouthBody: roundedShape(4, 0),
    mouthWalls: [roundedShape(4, 0), roundedShape(4, 0)],
    skirt: roundedShape(4, 0),
    skirtWalls: [roundedShape(4, 0), roundedShape(4, 0)],
    shank: roundedShape(4, 0),
    eye: knuckleRadius > 0 ? roundedShape(1, rods.knuckleEye / 2) : null,
    smallEnd: roundedShape(1, rods.smallEnd / 2),
  };
}
