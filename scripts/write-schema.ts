import { writeFileSync } from 'node:fs';
import { publishedSchema } from '../src/design/json-schema.ts';

/** Write the published JSON Schema of the design file; a test holds the file against the schema in the program. */
writeFileSync(new URL('../docs/design-schema.json', import.meta.url), publishedSchema());
