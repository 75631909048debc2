import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { engineOutline, enginePose } from '../../src/app/engine-picture.ts';
import { readDesign } from '../../src/design/read-design.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import { buildGeometry } from '../../src/sim/geometry/build-geometry.ts';

function open(name: string) {
  const design = readDesign(readFileSync(new URL(`../../presets/${name}.json`, import.meta.url), 'utf8'));
  if (!design.ok) throw new Error(name);
  const engine = toEngine(design.value);
  const geometry = buildGeometry(engine);
  if (!geometry.ok) throw new Error(name);
  return { engine, geometry: geometry.value };
}
const names = ['caraway-1', 'dill-3', 'parsley-5', 'lovage-7', 'angelica-14'];
const every15_deg = Array.from({ length: 24 }, (_, i) => 15 * i);

describe('enginePose', () => {
  it.each(names)('draws every piston of %s at the height of the model, at 24 angles', (name) => {
    const { engine, geometry } = open(name);
    for (const angle_deg of every15_deg) {
      const pose = enginePose(engine, geometry, angle_deg);
      geometry.cylinders.forEach((cylinder, i) => {
        cylinder.motion.evaluate((angle_deg * Math.PI) / 180 + cylinder.pinOffset);
        expect(pose.cylinders[i]!.crown).toBeCloseTo(cylinder.motion.height + 0.6 * engine.cylinder.bore, 12);
      });
    }
  });

  it.each(names)('keeps the length of every rod of %s, at 24 angles', (name) => {
    const { engine, geometry } = open(name);
    for (const angle_deg of every15_deg) {
      enginePose(engine, geometry, angle_deg).cylinders.forEach(({ knucklePin, gudgeonPin }, i) => {
        const length = Math.hypot(gudgeonPin.x - knucklePin.x, gudgeonPin.y - knucklePin.y);
        expect(length).toBeCloseTo(geometry.cylinders[i]!.motion.rods.rodLength, 12);
      });
    }
  });

  it('turns the rotors of Lovage 7 twice for one turn of its crank: 36 to 18 teeth', () => {
    const { engine, geometry } = open('lovage-7');
    const [from, to] = [0, 90].map((angle_deg) => enginePose(engine, geometry, angle_deg).rotorAngles);
    // Seen from the front the left one turns back, the right one on: both carry gas down along the casing.
    expect(to![0]! - from![0]!).toBeCloseTo(-Math.PI, 12);
    expect(to![1]! - from![1]!).toBeCloseTo(Math.PI, 12);
  });

  it.each(names)('sets a hollow of the right rotor of %s against a lobe of the left one', (name) => {
    const { engine, geometry } = open(name);
    const pitch = (2 * Math.PI) / engine.blower.lobes;
    for (const angle_deg of every15_deg) {
      const [left, right] = enginePose(engine, geometry, angle_deg).rotorAngles as [number, number];
      // When a lobe of the left one points right, those of the right one are half a pitch off pointing left.
      const lobes = (-left - (Math.PI + right)) / pitch - 0.5;
      expect(lobes - Math.round(lobes)).toBeCloseTo(0, 9);
    }
  });
});

describe('engineOutline', () => {
  it('puts no piston of any preset above its deck', () => {
    for (const name of names) {
      const { engine, geometry } = open(name);
      const { cylinders } = engineOutline(engine, geometry);
      for (const angle_deg of every15_deg) {
        const pose = enginePose(engine, geometry, angle_deg);
        cylinders.forEach(({ deck }, i) => expect(pose.cylinders[i]!.crown).toBeLessThanOrEqual(deck + 1e-9));
      }
    }
  });
});
