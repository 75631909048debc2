import { LAYERS } from './drawing.ts';
import type { Drawing, Mark } from './drawing.ts';

/** Tenths of a micrometre: far inside what an outline is true to. */
const DIGITS = 4;

/** A drawing as a Scalable Vector Graphics file of true size: one unit is a millimetre. Source: SVG 1.1, W3C 2011. */
export function toSvg({ title, marks, least_mm, most_mm }: Drawing): string {
  const width = (most_mm.x - least_mm.x).toFixed(DIGITS);
  const height = (most_mm.y - least_mm.y).toFixed(DIGITS);
  const box = [least_mm.x, -most_mm.y].map((value) => value.toFixed(DIGITS)).join(' ');
  const groups = LAYERS.map((layer) => {
    const own = marks.filter((mark) => mark.layer === layer).map(element);
    return [`<g id="${layer}" fill="none" stroke="black" stroke-width="0.1">`, ...own, '</g>'].join('\n');
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${box} ${width} ${height}">`,
    `<title>${escaped(title)}</title>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

const at = (x: number, y: number): string => `${x.toFixed(DIGITS)},${(-y).toFixed(DIGITS)}`;

function element(mark: Mark): string {
  switch (mark.kind) {
    case 'closed line':
      return `<path d="M${mark.corners_mm.map(({ x, y }) => at(x, y)).join('L')}Z"/>`;
    case 'line':
      return `<path d="M${at(mark.from_mm.x, mark.from_mm.y)}L${at(mark.to_mm.x, mark.to_mm.y)}"/>`;
    case 'circle': {
      const { centre_mm: c, radius_mm } = mark;
      return `<circle cx="${c.x.toFixed(DIGITS)}" cy="${(-c.y).toFixed(DIGITS)}" r="${radius_mm.toFixed(DIGITS)}"/>`;
    }
    case 'arc': {
      const { centre_mm: c, radius_mm: r, from_deg, to_deg } = mark;
      const end = (angle_deg: number) => {
        const angle = (angle_deg * Math.PI) / 180;
        return at(c.x + r * Math.cos(angle), c.y + r * Math.sin(angle));
      };
      const large = to_deg - from_deg > 180 ? 1 : 0;
      return `<path d="M${end(from_deg)}A${r.toFixed(DIGITS)},${r.toFixed(DIGITS)} 0 ${large} 0 ${end(to_deg)}"/>`;
    }
    case 'text':
      return `<text x="${mark.at_mm.x.toFixed(DIGITS)}" y="${(-mark.at_mm.y).toFixed(DIGITS)}" fill="black" stroke="none" font-family="sans-serif" font-size="${mark.height_mm}">${escaped(mark.text)}</text>`;
  }
}

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
