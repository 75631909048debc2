import { toJsonSchema } from '@valibot/to-json-schema';
import { designSchema } from './schema/design.ts';

/** The text of the published JSON Schema: what a file may hold, before the defaults are filled in. */
export const publishedSchema = (): string =>
  `${JSON.stringify(toJsonSchema(designSchema, { typeMode: 'input' }), null, 2)}\n`;
