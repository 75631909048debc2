/** Studies of one design; each reads its own arguments. */
export const STUDY_NAMES = [
  'air',
  'match',
  'even',
  'fit',
  'pulses',
  'rotors',
  'leak',
  'backfire',
  'start',
  'turns',
  'walls',
  'blowers',
  'spark',
] as const;
export type StudyName = (typeof STUDY_NAMES)[number];
