import { describe, expect, it } from 'vitest';
import { formatNumber, formatQuantity, unitNamed } from '../../src/design/format-quantity.ts';
import { parseQuantity } from '../../src/design/parse-quantity.ts';
import { PLAIN, UNITS, UNIT_OF_SUFFIX, fromSi, splitKey, toSi } from '../../src/design/unit-table.ts';

const { mm, cc, deg, degBTDC, rpm, bar, kPa, barGauge, C, m_per_s } = UNIT_OF_SUFFIX;

/** Hand-worked from the definitions of the units (BIPM 2019; NIST SP 811 for inch, psi, inHg, hp). */
const READ = [
  ['52', mm, 0.052],
  ['52mm', mm, 0.052],
  ['3.2 in', mm, 0.08128],
  ['3 1/8 in', mm, 0.079375],
  ['1/2"', mm, 0.0127],
  ['5,2 cm', mm, 0.052],
  ['45cc', cc, 45e-6],
  ['0,1 l', cc, 1e-4],
  ['1 cu in', cc, 16.387064e-6],
  ['−3°', deg, (-3 * Math.PI) / 180],
  ['24 BTDC', degBTDC, (24 * Math.PI) / 180],
  ['24° BTDC', degBTDC, (24 * Math.PI) / 180],
  ['1 rad', deg, 1],
  ['6000', rpm, 200 * Math.PI],
  ['9 000 rpm', rpm, 300 * Math.PI],
  ['100 rev/s', rpm, 200 * Math.PI],
  ['1.013 bar', kPa, 101300],
  ['29.92 inHg', kPa, 101320.7],
  ['14.7 psi', bar, 101352.9],
  ['14.7 psia', bar, 101352.9],
  ['5 psi', barGauge, 34473.79],
  ['5 psi gauge', barGauge, 34473.79],
  ['0.4 barg', barGauge, 40000],
  ['20', C, 293.15],
  ['68 °F', C, 293.15],
  ['293.15 K', C, 293.15],
  ['80%', PLAIN, 0.8],
  ['0,85', PLAIN, 0.85],
  ['7:1', PLAIN, 7],
  ['90 km/h', m_per_s, 25],
  ['1 hp', unitNamed('W'), 745.69987],
  ['1 PS', unitNamed('W'), 735.49875],
  ['60 g/s', unitNamed('kg/s'), 0.06],
  ['1e3 mm', mm, 1],
  ['1.2 × 10³ mm', mm, 1.2],
  ['−4.5·10^-3 m', mm, -0.0045],
  ['100 lb ft', unitNamed('N m'), 135.581795],
  ['1 lb/(hp h)', unitNamed('g/kWh'), 1.6896594e-7],
  ['1 US gal/h', unitNamed('l/h'), 1.0515033e-6],
  ['1 Btu/min', unitNamed('W'), 17.584264],
] as const;

const REFUSED = [
  ['', mm, 'nothing is typed'],
  ['wide', mm, 'does not begin with a number'],
  ['52 furlongs', mm, 'not a unit known here; use mm, cm, in, m'],
  ['52 cc', mm, 'measures volume, not length'],
  ['9,000', rpm, 'may mean 9000 or 9.000'],
  ['1.2.3', mm, 'more than one decimal mark'],
  ['1/0 in', mm, 'divides by nothing'],
  ['5 psi abs', barGauge, 'asked for above ambient'],
  ['5 psig', kPa, 'asked for absolute'],
  ['1e999', mm, 'too large'],
  ['10 %', mm, 'not length'],
] as const;

describe('parseQuantity', () => {
  it.each(READ)('reads “%s” into the right number of base units', (text, unit, value) => {
    const read = parseQuantity(text, unit);
    // Seven figures are given above.
    expect((read.ok ? read.value.value : NaN) / value).toBeCloseTo(1, 6);
  });

  it.each(REFUSED)('refuses “%s” and says why', (text, unit, reason) => {
    const read = parseQuantity(text, unit);
    expect(read.ok ? '' : read.faults[0]!.message).toContain(reason);
  });

  it('reads back what formatQuantity writes, in every unit, to the digits written', () => {
    for (const unit of UNITS) {
      const value = toSi(12.34, unit);
      const read = parseQuantity(formatQuantity(value, unit), unit);
      expect(read.ok && fromSi(read.value.value, unit), unit.symbol).toBeCloseTo(12.34, 9);
    }
  });
});

describe('formatNumber', () => {
  it('keeps four figures, drops trailing zeros, and never shows NaN', () => {
    expect([0, 52, 0.85, 1234.56, -3.5, 12345.6, 0.000123456].map((value) => formatNumber(value))).toEqual([
      '0',
      '52',
      '0.85',
      '1235',
      '−3.5',
      '12346',
      '0.0001235',
    ]);
    expect(formatNumber(NaN)).toBe('not a number');
  });

  it('writes 4.3e-9 as 4.3 × 10⁻⁹, and what it writes can be typed again', () => {
    expect([4.3e-9, 2e-10, 1.5e12].map((value) => formatNumber(value))).toEqual([
      '4.3\u202f×\u202f10⁻⁹',
      '2\u202f×\u202f10⁻¹⁰',
      '1.5\u202f×\u202f10¹²',
    ]);
    for (const value of [4.3e-9, 2e-10, 1.5e12, -7e-6]) {
      const read = parseQuantity(formatNumber(value, 9), PLAIN);
      expect(read.ok && read.value.value).toBe(value);
    }
  });
});

describe('splitKey', () => {
  it('takes the unit off a key, and leaves a plain key whole', () => {
    expect(splitKey('annandC_W_per_m2K4')).toMatchObject({ name: 'annandC', suffix: 'W_per_m2K4' });
    expect(splitKey('lambda')).toMatchObject({ name: 'lambda', suffix: null });
    expect(splitKey('bore_furlong')).toMatchObject({ name: 'bore_furlong', suffix: null });
  });
});
