import { impeller, rotors } from './cross-checks/blower.ts';
import type { CrossFault } from './cross-checks/cross-fault.ts';
import { dischargeTables } from './cross-checks/discharge-tables.ts';
import { relief, windowTops } from './cross-checks/openings.ts';
import { mixture } from './cross-checks/mixture.ts';
import { collectors, corrections, rows } from './cross-checks/rows.ts';
import { scavengingTable } from './cross-checks/scavenging-table.ts';
import { hollowParts, masterRodCentre } from './cross-checks/solid-parts.ts';
import { speeds } from './cross-checks/speeds.ts';
import { airPressure } from './cross-checks/surroundings.ts';
import type { Design } from './schema/design.ts';

/** Every combination that cannot be, at once. What follows from the geometry of rods and windows is not among them. */
export function crossCheck(design: Design): readonly CrossFault[] {
  return [
    ...airPressure(design),
    ...mixture(design),
    ...windowTops(design),
    ...rows(design),
    ...corrections(design),
    ...collectors(design),
    ...relief(design),
    ...speeds(design),
    ...scavengingTable(design),
    ...dischargeTables(design),
    ...rotors(design),
    ...impeller(design),
    ...masterRodCentre(design),
    ...hollowParts(design),
  ];
}
