import * as v from 'valibot';
import { filled, text } from './builders.ts';
import { blower } from './blower.ts';
import { cooling } from './cooling.ts';
import { crank } from './crank.ts';
import { cylinder } from './cylinder.ts';
import { exhaust } from './exhaust.ts';
import { fuel } from './fuel.ts';
import { plenum } from './plenum.ts';
import { CHOICE } from './shared.ts';
import { surroundings } from './surroundings.ts';
import { wanted } from './wanted.ts';
import { windows } from './windows.ts';

/** The version that this program writes; files of older versions are brought up to it by migrate.ts. */
export const DESIGN_VERSION = 1;

/**
 * The design file: the only list of its fields. Types, form fields, messages and the published JSON Schema are
 * derived from it. The order of the parts is the order in which they are shown.
 */
export const designSchema = v.pipe(
  v.strictObject({
    version: v.pipe(
      v.literal(DESIGN_VERSION),
      v.title('Version of the file'),
      v.description('Of the form of the file, not of the design.'),
    ),
    name: text('Untitled', 80, { label: 'Name', source: CHOICE }),
    note: text('', 2000, {
      label: 'Note',
      help: 'What the design is for, what it teaches.',
      source: CHOICE,
    }),
    crank: filled(crank),
    cylinder: filled(cylinder),
    windows: filled(windows),
    blower: filled(blower),
    plenum: filled(plenum),
    exhaust: filled(exhaust),
    fuel: filled(fuel),
    cooling: filled(cooling),
    surroundings: filled(surroundings),
    wanted: filled(wanted),
  }),
  v.title('Umbel design file'),
  v.description('A blown radial two-stroke. Every key with a dimension carries its unit.'),
);

/** As typed in a file: whatever has a default may be left out. */
export type DesignInput = v.InferInput<typeof designSchema>;
/** Complete: every default filled in. */
export type Design = v.InferOutput<typeof designSchema>;
