/** A path in a design file: `windows.exhaust[0].width_mm`; list positions count from 0, as in the file. */
export type Path = readonly (string | number)[];

export function writePath(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** The path with its positions left open, as the fields of a list are described: `windows.exhaust[].width_mm`. */
export const openPath = (path: string): string => path.replace(/\[[^\]]*\]/g, '[]');

/** Steps of a written path; a step in brackets that is not a number is kept as text: `corrections[A3]`. */
export function readPath(text: string): Path | null {
  const steps: (string | number)[] = [];
  for (const part of text.trim().split('.')) {
    const found = /^([A-Za-z]\w*)((?:\[\w+\])*)$/.exec(part);
    if (!found) return null;
    steps.push(found[1]!);
    for (const [, inside] of found[2]!.matchAll(/\[(\w+)\]/g)) {
      steps.push(/^\d+$/.test(inside!) ? Number(inside) : inside!);
    }
  }
  return steps;
}

export function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((at, step) => {
    if (at === null || typeof at !== 'object' || !Object.hasOwn(at, step)) return undefined;
    return (at as Record<string | number, unknown>)[step];
  }, data);
}
