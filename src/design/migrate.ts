import { failure, success } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';
import { DESIGN_VERSION } from './schema/design.ts';

type Data = Readonly<Record<string, unknown>>;
/** Brings data of one version to the next; it need not set the version. It may trust nothing but what it checks. */
export type Migration = (data: Data) => Data;

/** By the version from which they lead. The first change of the file's form adds the entry 1. */
export const MIGRATIONS: Readonly<Record<number, Migration>> = {};

/** Bring data of any older version to the present one; refuse what has no version, or a newer one. */
export function migrate(
  data: unknown,
  migrations: Readonly<Record<number, Migration>> = MIGRATIONS,
  present: number = DESIGN_VERSION,
): Outcome<unknown> {
  const refuse = (message: string) => failure([{ path: 'version', message }]);
  if (data === null || typeof data !== 'object' || Array.isArray(data)) return success(data);
  const { version } = data as Data;
  if (version === undefined) return refuse(`the version is missing; allowed: ${present}, or an older one`);
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse(`the version is ${JSON.stringify(version)}; allowed: a whole number, 1 to ${present}`);
  }
  if (version > present) {
    return refuse(
      `the file is of version ${version}, newer than this program, which reads up to ${present}: open it with a newer one`,
    );
  }
  let migrated = data as Data;
  for (let from = version; from < present; from++) {
    const step = migrations[from];
    if (!step) return refuse(`the file is of version ${version}, which can no longer be read`);
    migrated = { ...step(migrated), version: from + 1 };
  }
  return success(migrated);
}
