import type { SavedDrawing } from './saved-drawing.ts';

/** Dots for each unit of the drawing. */
export const PICTURE_SCALE = 2;

/**
 * A saved drawing as a PNG of twice its size. An image may not use the fonts of the page, so those it names are
 * written into the drawing first.
 */
export async function savedPicture({ text, width, height }: SavedDrawing): Promise<Blob> {
  const faces = await embeddedFaces(text);
  const whole = text.replace(/<desc/, `<style>${faces}</style><desc`);
  const url = URL.createObjectURL(new Blob([whole], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = PICTURE_SCALE * width;
    canvas.height = PICTURE_SCALE * height;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob(
        (blob) => (blob ? resolve(blob) : reject(new Error('the picture is too large'))),
        'image/png',
      );
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** The page's own faces that a drawing names, with their files inside. A face that cannot be read is left out. */
async function embeddedFaces(text: string): Promise<string> {
  const named = fontFaces().filter((face) =>
    text.includes(face.style.getPropertyValue('font-family').replaceAll('"', '')),
  );
  const written = await Promise.all(
    named.map(async ({ style, parentStyleSheet }) => {
      const file = /url\("?([^")]+\.woff2)"?\)/.exec(style.getPropertyValue('src'))?.[1];
      const reply =
        file && (await fetch(new URL(file, parentStyleSheet?.href ?? location.href)).catch(() => null));
      if (!reply || !reply.ok) return '';
      const data = await asDataUrl(await reply.blob());
      const rest = ['font-family', 'font-weight', 'font-style'].map(
        (name) => `${name}:${style.getPropertyValue(name).replaceAll('"', "'") || 'normal'};`,
      );
      return `@font-face{${rest.join('')}src:url(${data})}`;
    }),
  );
  return written.join('');
}

const fontFaces = (): CSSFontFaceRule[] =>
  [...document.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules].filter((rule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule),
  );

function asDataUrl(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result as string);
    reader.onerror = () => reject(reader.error ?? new Error('a font cannot be read'));
    reader.readAsDataURL(blob);
  });
}
