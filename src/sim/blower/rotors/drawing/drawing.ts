import type { Blower } from '../../../engine.ts';
import { mm } from '../../../units.ts';
import { matingAngle } from '../mesh-gap.ts';
import type { Spot } from '../profile.ts';
import type { RotorPair } from '../rotor-pair.ts';
import { turned } from '../turned.ts';

/** Layers of a drawing, by what they hold. */
export const LAYERS = ['OUTLINE', 'BORE', 'CENTRES', 'CASING', 'NOTES'] as const;
export type Layer = (typeof LAYERS)[number];

/** What stands on a drawing; lengths in millimetres, x to the right, y up, angles anticlockwise from x. */
export type Mark =
  | { readonly kind: 'closed line'; readonly layer: Layer; readonly corners_mm: readonly Spot[] }
  | { readonly kind: 'line'; readonly layer: Layer; readonly from_mm: Spot; readonly to_mm: Spot }
  | { readonly kind: 'circle'; readonly layer: Layer; readonly centre_mm: Spot; readonly radius_mm: number }
  | {
      readonly kind: 'arc';
      readonly layer: Layer;
      readonly centre_mm: Spot;
      readonly radius_mm: number;
      readonly from_deg: number;
      readonly to_deg: number;
    }
  | {
      readonly kind: 'text';
      readonly layer: Layer;
      readonly at_mm: Spot;
      readonly height_mm: number;
      readonly text: string;
    };

export interface Drawing {
  readonly title: string;
  readonly marks: readonly Mark[];
  /** Corners of the sheet. */
  readonly least_mm: Spot;
  readonly most_mm: Spot;
}

const TEXT_HEIGHT_MM = 2.5;
const LINE_SPACING = 1.7;
/** Mean width of a letter over its height, of common drawing letters. */
const LETTER = 0.62;
const MARGIN_MM = 5;
/** Width over which notes run, so that small rotors print on one common sheet. */
const NOTES_MM = 175;
/** A length to measure on the printed sheet, which tells whether it was printed in true size. */
const GAUGE_MM = 50;

/**
 * Both rotors in mesh in their casing, in true size: the left one about the origin with a lobe towards the right one.
 * Ports are not drawn. Of twisted rotors this is the section across the axes; the two are of opposite hand.
 */
export function rotorDrawing(
  title: string,
  { tipDiameter, lobes, rotors }: Blower,
  pair: RotorPair,
  notes: readonly string[],
): Drawing {
  const { gaps, bore } = rotors;
  const distance = rotors.centreDistance / mm;
  const casing = (tipDiameter / 2 + gaps.tip) / mm;
  const axes: readonly Spot[] = [
    { x: 0, y: 0 },
    { x: distance, y: 0 },
  ];
  const outlineAt = (axis: Spot, angle: number): Mark => ({
    kind: 'closed line',
    layer: 'OUTLINE',
    corners_mm: pair.outline.map(({ x, y }) => {
      const place = turned(x / mm, y / mm, angle);
      return { x: place.x + axis.x, y: place.y };
    }),
  });
  const cross = ({ x, y }: Spot): Mark[] => {
    const arm = 0.06 * casing;
    return [
      { kind: 'line', layer: 'CENTRES', from_mm: { x: x - arm, y }, to_mm: { x: x + arm, y } },
      { kind: 'line', layer: 'CENTRES', from_mm: { x, y: y - arm }, to_mm: { x, y: y + arm } },
    ];
  };
  const half_deg = (Math.acos(distance / 2 / casing) * 180) / Math.PI;
  const below = -casing - MARGIN_MM;
  const width = Math.max(NOTES_MM, distance + 2 * casing);
  const lines = [
    `This line is ${GAUGE_MM} mm long: measure it once printed.`,
    ...notes.flatMap((note) => wrapped(note, Math.floor(width / (LETTER * TEXT_HEIGHT_MM)))),
  ];
  const heightOf = (line: number) => below - (line + 1) * LINE_SPACING * TEXT_HEIGHT_MM;
  const texts = lines.map((text, i): Mark => ({
    kind: 'text',
    layer: 'NOTES',
    at_mm: { x: -casing, y: heightOf(i) },
    height_mm: TEXT_HEIGHT_MM,
    text,
  }));
  const gauge: Mark = {
    kind: 'line',
    layer: 'NOTES',
    from_mm: { x: -casing, y: below },
    to_mm: { x: GAUGE_MM - casing, y: below },
  };
  return {
    title,
    marks: [
      outlineAt(axes[0]!, 0),
      outlineAt(axes[1]!, matingAngle(0, lobes)),
      ...(bore > 0
        ? axes.map((centre): Mark => ({
            kind: 'circle',
            layer: 'BORE',
            centre_mm: centre,
            radius_mm: bore / 2 / mm,
          }))
        : []),
      ...axes.flatMap(cross),
      {
        kind: 'arc',
        layer: 'CASING',
        centre_mm: axes[0]!,
        radius_mm: casing,
        from_deg: half_deg,
        to_deg: 360 - half_deg,
      },
      {
        kind: 'arc',
        layer: 'CASING',
        centre_mm: axes[1]!,
        radius_mm: casing,
        from_deg: 180 + half_deg,
        to_deg: 540 - half_deg,
      },
      gauge,
      ...texts,
    ],
    least_mm: { x: -casing - MARGIN_MM, y: heightOf(lines.length) },
    most_mm: { x: width - casing + MARGIN_MM, y: casing + MARGIN_MM },
  };
}

/** A note in lines of no more than so many letters, broken between words. */
function wrapped(note: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of note.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
