import { wiesnerSlipFactor } from '../sim/blower/centrifugal/slip-factor.ts';
import { sectionFault } from '../sim/blower/rotors/section-fault.ts';
import type { Fault } from '../sim/outcome.ts';
import { deg, mm } from '../sim/units.ts';
import { cylinderName, readCylinderName, rowLetter } from './cylinder-name.ts';
import { dischargeTables } from './discharge-table-checks.ts';
import { formatNumber } from './format-quantity.ts';
import type { Design } from './schema/design.ts';

/** What cannot hold together, though each value alone is allowed. */
export interface CrossFault extends Fault {
  /** Paths of the values that it speaks of; where one of them is itself at fault, this is not reported. */
  readonly uses: readonly string[];
}

/** Every combination that cannot be, at once. What follows from the geometry of rods and windows is not among them. */
export function crossCheck(design: Design): readonly CrossFault[] {
  return [
    ...airPressure(design),
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

const fault = (path: string, message: string, ...uses: string[]): CrossFault => ({
  path,
  message,
  uses: [path, ...uses],
});

function* airPressure({ surroundings }: Design): Generator<CrossFault> {
  const { pressure_kPa: pressure, altitude_m: altitude } = surroundings;
  if (pressure === undefined || altitude === undefined) return;
  yield fault(
    'surroundings',
    `the air pressure is given twice: pressure_kPa is ${formatNumber(pressure)} kPa and altitude_m is ${formatNumber(altitude)} m; allowed: one of the two`,
    'surroundings.pressure_kPa',
    'surroundings.altitude_m',
  );
}

function* windowTops({ windows }: Design): Generator<CrossFault> {
  for (const kind of ['exhaust', 'transfer'] as const) {
    for (const [i, { top_mm, opens_degATDC }] of windows[kind].entries()) {
      const path = `windows.${kind}[${i}]`;
      const uses = [`${path}.top_mm`, `${path}.opens_degATDC`];
      if (top_mm === undefined && opens_degATDC === undefined) {
        yield fault(path, 'the top edge is missing: give either top_mm or opens_degATDC', ...uses);
      } else if (top_mm !== undefined && opens_degATDC !== undefined) {
        const both = `top_mm is ${formatNumber(top_mm)} mm and opens_degATDC is ${formatNumber(opens_degATDC)}°`;
        yield fault(path, `the top edge is given twice: ${both}; allowed: one of the two`, ...uses);
      }
    }
  }
}

function* rows({ crank }: Design): Generator<CrossFault> {
  for (const [i, { cylinders, master, axes_deg }] of crank.rows.entries()) {
    const path = `crank.rows[${i}]`;
    const count = `${path}.cylinders`;
    if (master > cylinders) {
      const allowed = `allowed 1 to ${cylinders}, the cylinders of row ${rowLetter(i)}`;
      yield fault(`${path}.master`, `the master rod is in cylinder ${master}; ${allowed}`, count);
    }
    if (axes_deg && axes_deg.length !== cylinders) {
      const allowed = `row ${rowLetter(i)} has ${cylinders} cylinders and needs as many`;
      yield fault(`${path}.axes_deg`, `${axes_deg.length} axis angles are given; ${allowed}`, count);
    }
    if (axes_deg) {
      const turned = axes_deg.map((axis) => ((axis % 360) + 360) % 360);
      const twice = turned.findIndex((axis, j) => turned.indexOf(axis) < j);
      if (twice >= 0) {
        const first = turned.indexOf(turned[twice]!);
        yield fault(
          `${path}.axes_deg[${twice}]`,
          `cylinders ${first + 1} and ${twice + 1} have the same axis, ${formatNumber(axes_deg[twice]!)}°; each needs its own`,
          `${path}.axes_deg`,
        );
      }
    }
  }
}

function* corrections({ crank }: Design): Generator<CrossFault> {
  const seen = new Map<string, number>();
  for (const [i, correction] of crank.corrections.entries()) {
    const path = `crank.corrections[${i}].cylinder`;
    const name = correction.cylinder;
    const { rowIndex, cylinderIndex } = readCylinderName(name)!;
    const row = crank.rows[rowIndex];
    if (!row || cylinderIndex >= row.cylinders) {
      const last = crank.rows.map(
        ({ cylinders }, r) => `${cylinderName(r, 0)} to ${cylinderName(r, cylinders - 1)}`,
      );
      yield fault(
        path,
        `there is no cylinder ${name}; allowed: ${last.join(', ')}`,
        'crank.rows',
        'crank.rows[',
      );
    } else if (row.master === cylinderIndex + 1) {
      for (const key of ['knuckle_deg', 'knuckleRadius_mm', 'rod_mm'] as const) {
        if (correction[key] === undefined) continue;
        yield fault(
          `crank.corrections[${i}].${key}`,
          `${name} carries the master rod, which has no knuckle pin; leave ${key} out`,
          path,
          `crank.rows[${rowIndex}].master`,
        );
      }
    }
    const first = seen.get(name);
    if (first !== undefined) {
      const where = `crank.corrections[${first}]`;
      yield fault(
        path,
        `${name} is corrected twice, first in ${where}; put it all in one`,
        `${where}.cylinder`,
      );
    } else {
      seen.set(name, i);
    }
  }
}

function* collectors({ crank, exhaust }: Design): Generator<CrossFault> {
  const count = exhaust.collectors.length;
  const allowed = `allowed 1 to ${count}, as many as exhaust.collectors has`;
  for (const [i, { collector }] of crank.rows.entries()) {
    if (collector > count) {
      yield fault(
        `crank.rows[${i}].collector`,
        `collector is ${collector}; ${allowed}`,
        'exhaust.collectors',
      );
    }
  }
  for (const [i, { collector }] of crank.corrections.entries()) {
    if (collector !== undefined && collector > count) {
      yield fault(
        `crank.corrections[${i}].collector`,
        `collector is ${collector}; ${allowed}`,
        'exhaust.collectors',
      );
    }
  }
}

function* relief({ plenum }: Design): Generator<CrossFault> {
  if (!plenum.relief) return;
  const { cracking_barGauge: cracking, fullOpen_barGauge: open } = plenum.relief;
  if (open <= cracking) {
    yield fault(
      'plenum.relief.fullOpen_barGauge',
      `the relief valve is fully open at ${formatNumber(open)} bar; allowed: more than ${formatNumber(cracking)} bar, at which it begins to open`,
      'plenum.relief.cracking_barGauge',
    );
  }
}

function* speeds({ wanted, blower }: Design): Generator<CrossFault> {
  const { minSpeed_rpm: min, maxSpeed_rpm: max, speed_rpm: shown, crankingSpeed_rpm: cranking } = wanted;
  const rpm = (value: number) => `${formatNumber(value, 6)} rpm`;
  if (min > max) {
    yield fault(
      'wanted.minSpeed_rpm',
      `the lowest working speed is ${rpm(min)}; allowed up to the highest, ${rpm(max)}`,
      'wanted.maxSpeed_rpm',
    );
  } else if (shown < Math.min(min, cranking) || shown > max) {
    yield fault(
      'wanted.speed_rpm',
      `the speed shown first is ${rpm(shown)}; allowed ${rpm(Math.min(min, cranking))} to ${rpm(max)}`,
      'wanted.minSpeed_rpm',
      'wanted.maxSpeed_rpm',
      'wanted.crankingSpeed_rpm',
    );
  }
  if (cranking > max) {
    yield fault(
      'wanted.crankingSpeed_rpm',
      `the cranking speed is ${rpm(cranking)}; allowed up to the highest working speed, ${rpm(max)}`,
      'wanted.maxSpeed_rpm',
    );
  }
  const ratio = blower.gears.reduce((product, { driver, driven }) => (product * driver) / driven, 1);
  if (ratio > 20 || ratio < 0.05) {
    yield fault(
      'blower.gears',
      `the rotors turn ${formatNumber(ratio)} times in a turn of the crank; allowed 0.05 to 20`,
      'blower.gears[',
    );
  }
}

function* scavengingTable({ windows }: Design): Generator<CrossFault> {
  const { law, inside, leaving } = windows.scavenging;
  if (law !== 'table') return;
  const at = 'windows.scavenging';
  const uses = [`${at}.law`, `${at}.inside`, `${at}.leaving`];
  for (const [key, list] of [
    ['inside', inside],
    ['leaving', leaving],
  ] as const) {
    const path = `${at}.${key}`;
    if (!list || list.length < 2) {
      yield fault(
        path,
        `the law is “table”, which needs at least two numbers here, not ${list?.length ?? 0}`,
        ...uses,
      );
      continue;
    }
    if (list[0] !== 0 || list.at(-1) !== 1) {
      yield fault(path, `runs from ${list[0]} to ${list.at(-1)}; allowed: from 0 to 1`, ...uses);
    }
    const fallsAt = list.findIndex(
      (value, i) => i > 0 && (value < list[i - 1]! || (key === 'inside' && value === list[i - 1])),
    );
    if (fallsAt > 0) {
      const rule = key === 'inside' ? 'each above the one before' : 'none below the one before';
      yield fault(path, `${list[fallsAt]} follows ${list[fallsAt - 1]}; allowed: ${rule}`, ...uses);
    }
  }
  if (inside && leaving && inside.length !== leaving.length) {
    yield fault(
      `${at}.leaving`,
      `has ${leaving.length} numbers; allowed: as many as inside, ${inside.length}`,
      ...uses,
    );
  }
}

/** Head falls with flow, and its curve bends downwards, where kappa (3 x0 - 2) < sigma; see speed-line.ts. */
function* impeller({ blower }: Design): Generator<CrossFault> {
  if (blower.kind !== 'centrifugal') return;
  const { bestFlow, exitWidth_mm, backsweep_deg, blades, flowWithoutHead } = blower.impeller;
  const diameter = blower.tipDiameter_mm;
  const backsweep = backsweep_deg * deg;
  const across = bestFlow * Math.tan(backsweep) * (diameter / Math.PI) * (3 * flowWithoutHead - 2);
  const least = across / (0.98 * wiesnerSlipFactor(blades, backsweep));
  const width = exitWidth_mm ?? 0.08 * diameter;
  if (width < least) {
    const path = 'blower.impeller.exitWidth_mm';
    yield fault(
      path,
      `the passages at the exit are ${formatNumber(width)} mm wide, so narrow that such blades would give the gas no swirl at high flow; allowed: ${formatNumber(least)} mm or more with this backsweep and flow coefficient`,
      'blower.tipDiameter_mm',
      'blower.impeller.bestFlow',
      'blower.impeller.backsweep_deg',
      'blower.impeller.flowWithoutHead',
      'blower.impeller.blades',
    );
  }
}

function* rotors({ blower }: Design): Generator<CrossFault> {
  if (blower.kind === 'centrifugal') return;
  const { tipDiameter_mm: diameter } = blower;
  for (const key of ['tipGap_mm', 'meshGap_mm', 'endGap_mm'] as const) {
    const limit = diameter / 20;
    if (blower[key] > limit) {
      yield fault(
        `blower.${key}`,
        `the gap is ${formatNumber(blower[key])} mm; allowed up to a twentieth of the tip diameter, ${formatNumber(limit)} mm`,
        'blower.tipDiameter_mm',
      );
    }
  }
  const { profile, centreDistance_mm, displacement_cc, lobes } = blower;
  if (blower.kind !== 'roots' || centreDistance_mm === undefined || displacement_cc !== undefined) return;
  const section = {
    profile,
    lobes,
    tipRadius: (diameter * mm) / 2,
    pitchRadius: (centreDistance_mm * mm) / 2,
  };
  const trouble = sectionFault(section);
  if (trouble) {
    const [low, high] = trouble.allowed.map((radius) => formatNumber((2 * radius) / mm));
    yield fault(
      'blower.centreDistance_mm',
      `rotors of ${formatNumber(diameter)} mm with axes ${formatNumber(centreDistance_mm)} mm apart cannot mesh: ${trouble.reason}; ` +
        `allowed at these axes: a tip diameter above ${low} and up to ${high} mm`,
      'blower.tipDiameter_mm',
      'blower.lobes',
      'blower.profile',
    );
  }
}

function* masterRodCentre({ crank }: Design): Generator<CrossFault> {
  const { masterRodCentre_mm: centre } = crank.masses;
  if (centre !== undefined && centre > crank.masterRod_mm) {
    yield fault(
      'crank.masses.masterRodCentre_mm',
      `the centre of mass is ${formatNumber(centre)} mm from the crank pin; allowed up to the length of the master rod, ${formatNumber(crank.masterRod_mm)} mm`,
      'crank.masterRod_mm',
    );
  }
}

function* hollowParts({ cylinder, crank }: Design): Generator<CrossFault> {
  const { bore_mm: bore, piston, barrel } = cylinder;
  const long = (value: number): string => `${formatNumber(value)} mm`;
  if (barrel.mouth_mm !== undefined && barrel.mouth_mm <= bore) {
    yield fault(
      'cylinder.barrel.mouth_mm',
      `the mouth is ${long(barrel.mouth_mm)} across outside; allowed: above the bore, ${long(bore)}`,
      'cylinder.bore_mm',
    );
  }
  if (piston.skirtWall_mm !== undefined && piston.skirtWall_mm >= bore / 2) {
    yield fault(
      'cylinder.piston.skirtWall_mm',
      `the wall of the skirt is ${long(piston.skirtWall_mm)}; allowed: below half the bore, ${long(bore / 2)}`,
      'cylinder.bore_mm',
    );
  }
  const crown = piston.crownThickness_mm ?? 0.1 * bore;
  const length = piston.length_mm ?? crank.stroke_mm + 0.12 * bore;
  if (crown >= length) {
    yield fault(
      piston.length_mm === undefined ? 'cylinder.piston.crownThickness_mm' : 'cylinder.piston.length_mm',
      `the crown is ${long(crown)} thick and the piston ${long(length)} long; allowed: a crown thinner than that`,
      'cylinder.piston.crownThickness_mm',
      'cylinder.piston.length_mm',
      'cylinder.bore_mm',
      'crank.stroke_mm',
    );
  }
}
