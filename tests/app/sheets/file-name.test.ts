import { describe, expect, it } from 'vitest';
import { fileName } from '../../../src/app/sheets/file-name.ts';

describe('fileName', () => {
  it('makes names that every file system takes', () => {
    expect(['Lovage 7', 'Très gros / 9!', '***'].map(fileName)).toEqual([
      'lovage-7.json',
      'tres-gros-9.json',
      'design.json',
    ]);
  });
});
