import { describe, expect, it } from 'vitest';
import { csv, fileName } from '../../src/charts/csv.ts';

describe('csv', () => {
  it('writes unrounded figures under their headings, lines ended as RFC 4180 asks', () => {
    const columns = [
      { heading: 'speed', values: [500, 1000] },
      { heading: 'ratio', values: [1 / 3, 2] },
    ];
    expect(csv(columns)).toBe('speed,ratio\r\n500,0.3333333333333333\r\n1000,2\r\n');
  });

  it('quotes a cell with a comma, a quote or a line end, and doubles its quotes', () => {
    expect(csv([{ heading: 'air, g/s', values: ['3.2" bore', 'two\nlines'] }])).toBe(
      '"air, g/s"\r\n"3.2"" bore"\r\n"two\nlines"\r\n',
    );
  });

  it('leaves a cell empty for NaN, infinity, null and a column that is shorter than the others', () => {
    const columns = [
      { heading: 'a', values: [NaN, null, Infinity, 4] },
      { heading: 'b', values: [1] },
    ];
    expect(csv(columns)).toBe('a,b\r\n,1\r\n,\r\n,\r\n4,\r\n');
  });

  it('writes the headings alone when there is no row', () => {
    expect(csv([{ heading: 'a', values: [] }])).toBe('a\r\n');
  });
});

describe('fileName', () => {
  it('makes small letters and single hyphens of a title', () => {
    expect(fileName('Where the fuel’s energy goes, 6000 rpm', 'csv')).toBe(
      'where-the-fuel-s-energy-goes-6000-rpm.csv',
    );
  });
});
