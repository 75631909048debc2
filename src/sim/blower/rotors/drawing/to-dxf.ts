import { LAYERS } from './drawing.ts';
import type { Drawing, Mark } from './drawing.ts';

/** Of a millimetre: hundredths of a micrometre. */
const DIGITS = 5;

/**
 * A drawing as a Drawing Interchange Format file, release 12, text form; lengths in millimetres (release 12 states no unit,
 * so a note on the drawing should).
 *
 * Source: group codes of the release 12 reference: POLYLINE with VERTEX and SEQEND, LINE, CIRCLE, ARC, TEXT, LAYER table.
 */
export function toDxf({ marks, least_mm, most_mm }: Drawing): string {
  const groups: (readonly [code: number, value: string | number])[] = [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$EXTMIN'],
    ...place(least_mm),
    [9, '$EXTMAX'],
    ...place(most_mm),
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'TABLES'],
    [0, 'TABLE'],
    [2, 'LTYPE'],
    [70, 1],
    [0, 'LTYPE'],
    [2, 'CONTINUOUS'],
    [70, 0],
    [3, 'Solid line'],
    [72, 65],
    [73, 0],
    [40, '0.0'],
    [0, 'ENDTAB'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, LAYERS.length],
    ...LAYERS.flatMap((layer, i): Group[] => [
      [0, 'LAYER'],
      [2, layer],
      [70, 0],
      [62, i + 1],
      [6, 'CONTINUOUS'],
    ]),
    [0, 'ENDTAB'],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...marks.flatMap(entity),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

type Group = readonly [code: number, value: string | number];

const length = (value: number): string => value.toFixed(DIGITS);

/** Three coordinates; `second` for the other end of a line. */
const place = ({ x, y }: { readonly x: number; readonly y: number }, second = 0): Group[] => [
  [10 + second, length(x)],
  [20 + second, length(y)],
  [30 + second, '0.0'],
];

function entity(mark: Mark): Group[] {
  const layer: Group = [8, mark.layer];
  switch (mark.kind) {
    case 'closed line':
      return [
        [0, 'POLYLINE'],
        layer,
        [66, 1],
        ...place({ x: 0, y: 0 }),
        [70, 1],
        ...mark.corners_mm.flatMap((corner): Group[] => [[0, 'VERTEX'], layer, ...place(corner)]),
        [0, 'SEQEND'],
        layer,
      ];
    case 'line':
      return [[0, 'LINE'], layer, ...place(mark.from_mm), ...place(mark.to_mm, 1)];
    case 'circle':
      return [[0, 'CIRCLE'], layer, ...place(mark.centre_mm), [40, length(mark.radius_mm)]];
    case 'arc':
      return [
        [0, 'ARC'],
        layer,
        ...place(mark.centre_mm),
        [40, length(mark.radius_mm)],
        [50, (mark.from_deg % 360).toFixed(6)],
        [51, (mark.to_deg % 360).toFixed(6)],
      ];
    case 'text':
      return [[0, 'TEXT'], layer, ...place(mark.at_mm), [40, length(mark.height_mm)], [1, plain(mark.text)]];
  }
}

/** Release 12 text is ASCII; %%d is its degree sign. */
const plain = (text: string): string =>
  text
    .replace(/°/g, '%%d')
    .replace(/×/g, 'x')
    .replace(/[–−]/g, '-')
    .replace(/[’‘]/g, "'")
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[^ -~]/g, '?');
