import { failure } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';
import { migrate } from './migrate.ts';
import type { Design } from './schema/design.ts';
import { validate } from './validate.ts';

/** The text of a design file to a complete design, or everything that is wrong with it. */
export function readDesign(text: string): Outcome<Design> {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const where = error instanceof Error ? error.message : String(error);
    return failure([{ path: '', message: `the file is not JSON: ${where}` }]);
  }
  return readDesignData(data);
}

/** What a design file holds, of this version or an older one, to a complete design, or everything that is wrong with it. */
export function readDesignData(data: unknown): Outcome<Design> {
  const migrated = migrate(data);
  return migrated.ok ? validate(migrated.value) : migrated;
}

/** The text of a design file, every value written out. */
export const writeDesign = (design: Design): string => `${JSON.stringify(design, null, 2)}\n`;
