import { describe, expect, it } from 'vitest';
import { airColumns, airDetail } from '../../../src/app/pages/air.ts';
import { rpm } from '../../../src/sim/units.ts';
import { engine, lovage, metric, unsolvedPoint, workshop } from './solved.ts';

describe('airColumns', () => {
  it('leaves a gap in every figure at a speed without an answer, not in the speed', () => {
    const columns = airColumns([unsolvedPoint(3000 * rpm), lovage()], engine.ambient.pressure);
    const { speed_rpm, ...figures } = columns;
    expect(speed_rpm.map(Math.round)).toEqual([3000, 6000]);
    for (const column of Object.values(figures)) {
      expect(column[0]).toBeNaN();
      expect(column[1]).toBeGreaterThan(0);
    }
  });

  it('counts pressure from ambient', () => {
    const { gauge } = airColumns([lovage()], engine.ambient.pressure);
    expect(gauge[0]! + engine.ambient.pressure).toBeCloseTo(lovage().plenum.meanPressure, 6);
  });

  it('turns the rotors twice for each turn of Lovage 7’s crank, 36 teeth on 18', () => {
    expect(airColumns([lovage()], engine.ambient.pressure).rotor_rpm[0]).toBeCloseTo(12000, 6);
  });
});

describe('airDetail', () => {
  it('says pressure in bar and psi and the mass flow in one breath, in the reader’s units first', () => {
    expect(airDetail(lovage(), engine.ambient.pressure, metric)).toMatch(
      /read [\d.]+\u00a0bar \([\d.]+\u00a0psi\), with [\d.]+\u00a0g\/s of air/,
    );
    expect(airDetail(lovage(), engine.ambient.pressure, workshop)).toMatch(
      /read [\d.]+\u00a0psi \([\d.]+\u00a0bar\), with [\d.]+\u00a0lb\/min of air/,
    );
  });

  it('says what stays, and that nobody can tell where nothing burns', () => {
    const point = lovage();
    expect(airDetail(point, engine.ambient.pressure, metric)).toMatch(
      /, of which 46\s% stays in the cylinders\.$/,
    );
    const cylinders = point.cylinders.map((each) => ({ ...each, burnedShare: 0 }));
    expect(airDetail({ ...point, cylinders }, engine.ambient.pressure, metric)).toMatch(
      /swept volumes\. Nothing burns, so what stays of it cannot be told from what was there\.$/,
    );
  });
});
