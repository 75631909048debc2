import { describe, expect, it } from 'vitest';
import { crankcaseItems } from '../../../../src/app/pages/breathing/crankcase.ts';
import { metric, workshop } from '../solved.ts';

const node = {
  meanPressure: 1.02e5,
  minPressure: 0.9e5,
  maxPressure: 1.2e5,
  meanTemperature: 330,
  volumeSwing: 50e-6,
  pumpingPower: 90,
  blowBy: 30e-6,
  breathed: 30e-6,
  purity: 0.4,
};

describe('crankcaseItems', () => {
  it('tells pressure with its bounds, blow-by and breather, and the undersides’ power, in the reader’s units', () => {
    const [pressure, rings, undersides] = crankcaseItems(node, metric);
    expect(pressure!.text).toMatch(/^1\.02\sbar$/);
    expect(pressure!.beside).toMatch(/^0\.9\d*\sbar to 1\.20?\sbar$/);
    expect(rings!.text).toMatch(/^30(\.0)?\smg\/s$/);
    expect(rings!.beside).toMatch(/breather 30(\.0)?\smg\/s; 40(\.0)?\s% unburned/);
    expect(undersides!.beside).toMatch(/50(\.0)?\scc/);
    expect(crankcaseItems(node, workshop)[0]!.text).toContain('psi');
  });
});
