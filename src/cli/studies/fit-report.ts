import type { FitCheck, FitPlace, FitReport } from '../../sim/fit/fit-check.ts';
import {
  FIT_CAUTION,
  FIT_LABELS,
  angleWords,
  fitSentence,
  partsWords,
  verdictWords,
} from '../../sim/fit/fit-words.ts';
import { deg, mm } from '../../sim/units.ts';
import { table } from '../table.ts';

export function fitReport(name: string, report: FitReport): string {
  const long = (value: number): string => `${(value / mm).toFixed(2)} mm`;
  const figures = table(
    ['', 'clearance', '±', 'at'],
    report.checks.map((check) => [
      FIT_LABELS[check.kind],
      long(check.clearance),
      (check.tolerance / mm).toFixed(2),
      angleWords(check.angle),
    ]),
  ).split('\n');
  const widest = Math.max(...figures.map((line) => line.length));
  const verdicts = report.checks.map((check) => verdictWords(check));
  const longest = Math.max(...verdicts.map((words) => words.length));
  const lines = figures.map((line, i) =>
    i === 0
      ? line
      : `${line.padEnd(widest)}  ${verdicts[i - 1]!.padEnd(longest)}  ${partsWords(report.checks[i - 1]!)}`,
  );
  const cylinders = report.checks.flatMap(({ kind, each }) =>
    each.length < 2
      ? []
      : ['', `${FIT_LABELS[kind]}, each at its own top dead centre`, eachTable(each, long)],
  );
  return [
    `${name}: ${fitSentence(report, long)}`,
    '',
    ...lines,
    ...cylinders,
    '',
    `Outer size: diameter ${(report.diameter / mm).toFixed(1)} mm about the crank axis, length ${(report.length / mm).toFixed(1)} mm.`,
    FIT_CAUTION,
    '',
  ].join('\n');
}

const eachTable = (each: readonly FitPlace[], long: (value: number) => string): string =>
  table(
    ['', 'clearance', 'at'],
    each.map(({ parts, clearance, angle }) => [parts[0], long(clearance), angleWords(angle)]),
  );

export function fitJson(name: string, { checks, diameter, length }: FitReport) {
  const place = ({ parts, clearance, angle }: FitPlace) => ({
    parts,
    clearance_m: clearance,
    angle_deg: angle === null ? null : angle / deg,
  });
  return {
    design: name,
    goesTogether: checks.every(({ verdict }) => verdict !== 'collides'),
    diameter_m: diameter,
    length_m: length,
    checks: checks.map((check: FitCheck) => ({
      kind: check.kind,
      verdict: check.verdict,
      ...place(check),
      tolerance_m: check.tolerance,
      each: check.each.map(place),
    })),
  };
}
