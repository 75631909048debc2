/** What a drawing's looks consist of; each may stand as an attribute of its own. */
const INHERITED = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'fill-opacity',
  'stroke-opacity',
  'paint-order',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'text-anchor',
  'visibility',
] as const;
const OWN = { opacity: '1' } as const;
/** What says who may do what with an element, and what an older style sheet did: of no use on paper. */
const DROPPED = /^(class|style|role|tabindex|aria-.*|data-.*)$/;

/**
 * Write the computed looks of a drawing into a copy of it as attributes, so that it needs no style sheet. Only what
 * differs from the element around it is written. Elements marked `data-passing`, which belong to the pointer and not
 * to the figures, are left out, and so is what is not shown.
 */
export function inlineStyles(drawn: Element, copy: Element, around: CSSStyleDeclaration | null = null): void {
  const style = getComputedStyle(drawn);
  for (const { name } of [...copy.attributes]) if (DROPPED.test(name)) copy.removeAttribute(name);
  for (const name of INHERITED) {
    const value = style.getPropertyValue(name);
    if (around === null || value !== around.getPropertyValue(name)) copy.setAttribute(name, written(value));
    else copy.removeAttribute(name);
  }
  for (const [name, usual] of Object.entries(OWN)) {
    const value = style.getPropertyValue(name);
    if (value !== usual) copy.setAttribute(name, value);
  }
  const inner = [...copy.children];
  [...drawn.children].forEach((child, i) => {
    const own = inner[i]!;
    if (child.hasAttribute('data-passing') || getComputedStyle(child).display === 'none') own.remove();
    else inlineStyles(child, own, style);
  });
}

const written = (value: string): string => (isNewColour(value) ? asRgb(value) : value.replaceAll('"', "'"));

const isNewColour = (value: string): boolean => /^(oklab|oklch|lab|lch|color|color-mix)\(/.test(value);

/** A colour in the form that every viewer knows. */
function asRgb(colour: string): string {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const context = canvas.getContext('2d')!;
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [red, green, blue] = context.getImageData(0, 0, 1, 1).data;
  return `rgb(${red}, ${green}, ${blue})`;
}
