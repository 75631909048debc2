import { fieldAt, showValue } from '../../design/fields.ts';
import { openPath } from '../../design/path.ts';
import type { Design } from '../../design/schema/design.ts';

/** A field in which two designs differ, in words. */
export interface Change {
  readonly label: string;
  readonly from: string;
  readonly to: string;
}

/** Fields in which `to` differs from `from`, in the order of the schema; name and note are not compared. */
export function designChanges(from: Design, to: Design): Change[] {
  const before = leaves(from);
  const after = leaves(to);
  const paths = [...new Set([...before.keys(), ...after.keys()])];
  return paths.flatMap((path) => {
    const [old, now] = [before.get(path), after.get(path)];
    const field = fieldAt(openPath(path));
    if (!field || old === now || field.part === '') return [];
    const text = (value: unknown): string =>
      value === undefined || value === null
        ? 'none'
        : typeof value === 'string'
          ? value
          : showValue(value, field.unit);
    const label = field.label.charAt(0).toLowerCase() + field.label.slice(1);
    return [{ label, from: text(old), to: text(now) }];
  });
}

/** The values of a design by their paths; a list of numbers is one value, written out. */
function leaves(design: Design): Map<string, unknown> {
  const found = new Map<string, unknown>();
  const visit = (value: unknown, path: string): void => {
    if (Array.isArray(value) && value.some((item) => typeof item === 'object')) {
      value.forEach((item, i) => visit(item, `${path}[${i}]`));
    } else if (Array.isArray(value)) found.set(path, value.join('; '));
    else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) visit(inner, path === '' ? key : `${path}.${key}`);
    } else found.set(path, value);
  };
  visit(design, '');
  return found;
}

/** The first few changes in one breath: `bore 42 mm, stroke 40 mm and 3 more`. */
export function changesText(changes: readonly Change[], most = 3): string {
  const told = changes.slice(0, most).map(({ label, to }) => `${label} ${to}`);
  const more = changes.length - told.length;
  return told.join(', ') + (more > 0 ? ` and ${more} more` : '');
}
