import { describe, expect, it } from 'vitest';
import { rotorDrawing } from '../../../../../src/sim/blower/rotors/drawing/drawing.ts';
import { rotorNotes } from '../../../../../src/sim/blower/rotors/drawing/notes.ts';
import { toDxf } from '../../../../../src/sim/blower/rotors/drawing/to-dxf.ts';
import { toSvg } from '../../../../../src/sim/blower/rotors/drawing/to-svg.ts';
import { halfPitch } from '../../../../../src/sim/blower/rotors/profile.ts';
import type { Spot } from '../../../../../src/sim/blower/rotors/profile.ts';
import { measurePolygon } from '../../../../../src/sim/blower/rotors/polygon.ts';
import { rotorPair } from '../../../../../src/sim/blower/rotors/rotor-pair.ts';
import type { RotorPair } from '../../../../../src/sim/blower/rotors/rotor-pair.ts';
import type { Blower } from '../../../../../src/sim/engine.ts';
import { mm } from '../../../../../src/sim/units.ts';
import { sound } from '../../../../design/designs.ts';
import { changed, presetEngine } from '../../../../helpers/engines.ts';

const lovage = presetEngine('lovage-7').blower;
const BLOWERS: readonly (readonly [string, Blower])[] = [
  ['Lovage 7', changed(lovage, { rotors: { bore: 10 * mm } })],
  ['Parsley 5', presetEngine('parsley-5').blower],
  [
    'arcs of two lobes',
    changed(lovage, {
      lobes: 2,
      tipDiameter: 64 * mm,
      rotors: { profile: 'circular arc', centreDistance: 40 * mm },
    }),
  ],
];

/** Group codes and values of a release 12 text file, by entity. */
function readDxf(text: string): { type: string; groups: [number, string][] }[] {
  const lines = text.split('\r\n');
  const entities: { type: string; groups: [number, string][] }[] = [];
  let section = '';
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const [code, value] = [Number(lines[i]), lines[i + 1]!];
    if (code === 2 && entities.length === 0) section = value;
    if (section !== 'ENTITIES') continue;
    if (code === 0) entities.push({ type: value, groups: [] });
    else entities.at(-1)?.groups.push([code, value]);
  }
  return entities;
}
const value = (entity: { groups: [number, string][] }, code: number): string =>
  entity.groups.find(([each]) => each === code)![1];

/** Closed outlines of a file, in millimetres. */
function dxfOutlines(text: string): Spot[][] {
  const outlines: Spot[][] = [];
  for (const entity of readDxf(text)) {
    if (entity.type === 'POLYLINE' && value(entity, 8) === 'OUTLINE') {
      expect(value(entity, 70)).toBe('1');
      outlines.push([]);
    }
    if (entity.type === 'VERTEX')
      outlines.at(-1)!.push({ x: Number(value(entity, 10)), y: Number(value(entity, 20)) });
  }
  return outlines;
}

function svgOutlines(text: string): Spot[][] {
  const [, layer] = /<g id="OUTLINE"[^>]*>([\s\S]*?)<\/g>/.exec(text)!;
  return [...layer!.matchAll(/d="M([^"]*)Z"/g)].map(([, d]) =>
    d!.split('L').map((pair) => {
      const [x, y] = pair.split(',').map(Number);
      return { x: x!, y: -y! };
    }),
  );
}

/** Largest distance of an outline's corners and middles of sides from the equations, in millimetres. */
function departure(outline: readonly Spot[], pair: RotorPair): number {
  const { lobes } = pair.section;
  const exact: Spot[] = [];
  for (const piece of halfPitch(pair.section))
    for (let k = 0; k <= 4000; k++) {
      const { x, y, nx, ny } = piece(k / 4000);
      exact.push({ x: (x - pair.inset * nx) / mm, y: (y - pair.inset * ny) / mm });
    }
  const half = Math.PI / lobes;
  const places = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }];
  });
  return Math.max(
    ...places.map(({ x, y }) => {
      // Folded into the one half pitch that the equations give.
      const turn = 2 * half;
      const angle = Math.abs(Math.atan2(y, x) - turn * Math.round(Math.atan2(y, x) / turn));
      const r = Math.hypot(x, y);
      const [px, py] = [r * Math.cos(angle), r * Math.sin(angle)];
      let best = Infinity;
      for (let i = 1; i < exact.length; i++) {
        const [a, b] = [exact[i - 1]!, exact[i]!];
        const [ux, uy] = [b.x - a.x, b.y - a.y];
        const squared = ux * ux + uy * uy;
        const along = squared > 0 ? ((px - a.x) * ux + (py - a.y) * uy) / squared : 0;
        const share = Math.max(0, Math.min(1, along));
        best = Math.min(best, (a.x + share * ux - px) ** 2 + (a.y + share * uy - py) ** 2);
      }
      return Math.sqrt(best);
    }),
  );
}

describe.each(BLOWERS)('a drawing of the rotors of %s', (name, blower) => {
  const pair = sound(rotorPair(blower));
  const drawing = rotorDrawing(name, blower, pair, rotorNotes(name, blower, pair, null));
  const dxf = toDxf(drawing);
  const svg = toSvg(drawing);

  it.each([
    ['DXF', dxfOutlines(dxf)],
    ['SVG', svgOutlines(svg)],
  ])('read back from %s measures true: area, tip diameter, and 0.005 mm to the equations', (_, outlines) => {
    expect(outlines).toHaveLength(2);
    const [left, right] = outlines;
    for (const [outline, axis] of [
      [left!, 0],
      [right!, blower.rotors.centreDistance / mm],
    ] as const) {
      const own = outline.map(({ x, y }) => ({ x: x - axis, y }));
      const { area } = measurePolygon(own);
      expect(Math.abs(area - pair.sectionArea / mm ** 2) / area).toBeLessThan(2e-4);
      const tip = Math.max(...own.map(({ x, y }) => Math.hypot(x, y)));
      expect(Math.abs(2 * tip - blower.tipDiameter / mm)).toBeLessThan(0.001);
    }
    expect(departure(left!, pair)).toBeLessThan(0.005);
  });

  it('holds casing, bore and centres on layers of their own, in millimetres', () => {
    const entities = readDxf(dxf);
    const on = (layer: string) =>
      entities.filter((each) => each.groups.some(([c, v]) => c === 8 && v === layer));
    const arcs = on('CASING');
    expect(arcs.map(({ type }) => type)).toEqual(['ARC', 'ARC']);
    const casing = (blower.tipDiameter / 2 + blower.rotors.gaps.tip) / mm;
    for (const arc of arcs) expect(Number(value(arc, 40))).toBeCloseTo(casing, 4);
    expect(Number(value(arcs[1]!, 10)) - Number(value(arcs[0]!, 10))).toBeCloseTo(
      blower.rotors.centreDistance / mm,
      4,
    );
    expect(on('BORE')).toHaveLength(blower.rotors.bore > 0 ? 2 : 0);
    expect(on('CENTRES')).toHaveLength(4);
  });

  it('says that cold gaps must allow for heat growth, on both sheets, and is plain ASCII in DXF', () => {
    for (const text of [dxf, svg]) expect(text).toContain('gaps when cold must allow for heat growth');
    expect(dxf).toMatch(/^[\r\n -~]*$/);
    expect(dxf.startsWith('  0\r\nSECTION\r\n  2\r\nHEADER\r\n  9\r\n$ACADVER\r\n  1\r\nAC1009\r\n')).toBe(
      true,
    );
    expect(dxf.endsWith('  0\r\nEOF\r\n')).toBe(true);
  });

  it('is of true size: the sheet of the SVG is as many millimetres wide as it has units', () => {
    const [, width, unitWidth] = /width="([\d.]+)mm".*viewBox="[-\d.]+ [-\d.]+ ([\d.]+) /.exec(svg)!;
    expect(width).toBe(unitWidth);
    expect(Number(width)).toBeGreaterThan((blower.tipDiameter + blower.rotors.centreDistance) / mm);
    // Rotors of these presets fit a sheet of common size across, with a length to check the print by.
    expect(Number(width)).toBeLessThan(190);
    const [gauge] = readDxf(dxf).filter((each) => each.type === 'LINE' && value(each, 8) === 'NOTES');
    expect(Number(value(gauge!, 11)) - Number(value(gauge!, 10))).toBeCloseTo(50, 9);
    expect(svg).toContain('This line is 50 mm long');
  });
});
