import { describe, expect, it } from 'vitest';
import { labelPlaces } from '../../src/charts/label-places.ts';

const room = { left: 50, right: 450, top: 46, bottom: 218 };
const at = (x: number, y: number) => ({ label: `${x}, ${y}`, colour: 'var(--ink)', x, y });

describe('labelPlaces', () => {
  it('lets a label within 60 px of a side run away from it, and centres any other', () => {
    const anchors = labelPlaces([at(109, 60), at(111, 90), at(389, 120), at(391, 150)], 14, room).map(
      ({ anchor }) => anchor,
    );
    expect(anchors).toEqual(['start', 'middle', 'middle', 'end']);
  });

  it('parts two labels of one height by the gap and leaves their x alone', () => {
    const [one, other] = labelPlaces([at(450, 100), at(250, 100)], 14, room);
    expect(one).toMatchObject({ x: 450, y: 93 });
    expect(other).toMatchObject({ x: 250, y: 107 });
  });

  it('has no place for a label of a curve without figures', () => {
    expect(labelPlaces([at(NaN, 100), at(250, NaN), at(250, 100)], 14, room)).toHaveLength(1);
  });

  it('keeps labels above the room’s floor and no more than 4 px over its top', () => {
    const heights = labelPlaces([at(250, -90), at(250, 400)], 14, room).map(({ y }) => y);
    expect(heights).toEqual([42, 210]);
  });
});
