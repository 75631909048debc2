import type { Key } from './chart-types.ts';
import { inlineStyles } from './inline-styles.ts';

/** What stands round a drawing that leaves the page. */
export interface Caption {
  readonly title: string;
  /** Whose figures these are: design and setting, a line each. */
  readonly source: readonly string[];
  /** What the colours stand for. */
  readonly keys: readonly Key[];
}

export interface SavedDrawing {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

const NS = 'http://www.w3.org/2000/svg';
const edge = 16;
const line = 18;

/**
 * A chart as an SVG document that stands alone: on light paper whatever the page is in, its looks written out, its
 * title, keys and source round it, no reference to anything outside.
 */
export function savedDrawing(drawn: SVGSVGElement, { title, source, keys }: Caption): SavedDrawing {
  const box = drawn.getBoundingClientRect();
  const size = { width: Math.round(box.width), height: Math.round(box.height) };
  const { theme } = document.documentElement.dataset;
  // Put back before anything is painted.
  document.documentElement.dataset.theme = 'light';
  const copy = drawn.cloneNode(true) as SVGSVGElement;
  inlineStyles(drawn, copy);
  const look = (name: string): string => colourOf(drawn, name);

  const rows = keyRows(keys, size.width);
  const head = edge + line + rows.length * line + 4;
  const width = size.width + 2 * edge;
  const height = head + size.height + source.length * line + edge;
  const root = element('svg', { xmlns: NS, width, height, viewBox: `0 0 ${width} ${height}`, role: 'img' });
  root.setAttribute('font-family', getComputedStyle(drawn).fontFamily.replaceAll('"', "'"));
  root.append(
    element('title', {}, title),
    element('desc', {}, source.join('. ')),
    element('rect', { width, height, fill: look('--paper') }),
    element(
      'text',
      { x: edge, y: edge + 10, 'font-size': 15, 'font-weight': 600, fill: look('--ink') },
      title,
    ),
  );
  rows.forEach((row, i) => {
    for (const { key, x } of row) root.append(...keyMark(key, edge + x, edge + line * (i + 1) + 8, look));
  });
  copy.setAttribute('x', String(edge));
  copy.setAttribute('y', String(head));
  copy.setAttribute('width', String(size.width));
  copy.setAttribute('height', String(size.height));
  copy.setAttribute('overflow', 'visible');
  root.append(copy);
  source.forEach((text, i) => {
    const y = head + size.height + line * (i + 1) - 4;
    root.append(element('text', { x: edge, y, 'font-size': 11.5, fill: look('--quiet-ink') }, text));
  });
  if (theme === undefined) delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  return { text: new XMLSerializer().serializeToString(root), width, height };
}

function element(name: string, attributes: Record<string, string | number>, text = ''): SVGElement {
  const made = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key !== 'xmlns') made.setAttribute(key, String(value));
  }
  made.textContent = text;
  return made;
}

/** A custom property or a colour made of them, as it looks within a drawing. */
function colourOf(within: SVGElement, colour: string): string {
  const probe = element('rect', {});
  probe.style.fill = colour.startsWith('--') ? `var(${colour})` : colour;
  within.append(probe);
  const { fill } = getComputedStyle(probe);
  probe.remove();
  return fill;
}

interface PlacedKey {
  readonly key: Key;
  readonly x: number;
}

/** Keys side by side, as many to a row as there is room for; widths by the rule of thumb of a sans face. */
function keyRows(keys: readonly Key[], width: number): PlacedKey[][] {
  const rows: PlacedKey[][] = [];
  let x = Infinity;
  for (const key of keys) {
    const wide = 24 + 6.3 * key.label.length + 16;
    if (x + wide > width) {
      rows.push([]);
      x = 0;
    }
    rows.at(-1)!.push({ key, x });
    x += wide;
  }
  return rows;
}

function keyMark({ label, colour, mark }: Key, x: number, y: number, look: (colour: string) => string) {
  const paint = look(colour);
  const sign =
    mark === 'area'
      ? element('rect', { x, y: y - 8, width: 18, height: 8, fill: paint })
      : element('line', { x1: x, x2: x + 18, y1: y - 4, y2: y - 4, stroke: paint, 'stroke-width': 2.2 });
  if (mark === 'dashed') sign.setAttribute('stroke-dasharray', '4 3');
  return [sign, element('text', { x: x + 24, y, 'font-size': 12, fill: look('--ink') }, label)];
}
