import * as v from 'valibot';
import { blowerEntries } from './blower-entries.ts';
import { group } from './builders.ts';
import { secondStage } from './second-stage.ts';

export const blower = group('Blower and drive', 'Blowers, alike, side by side, geared to the crank.', {
  ...blowerEntries,
  secondStage: v.optional(v.nullable(secondStage), null),
});
