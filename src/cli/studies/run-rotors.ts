import { writeFileSync } from 'node:fs';
import { toDesignPath } from '../../design/geometry-faults.ts';
import { rotorDrawing } from '../../sim/blower/rotors/drawing/drawing.ts';
import { heatEstimate, rotorNotes } from '../../sim/blower/rotors/drawing/notes.ts';
import { toDxf } from '../../sim/blower/rotors/drawing/to-dxf.ts';
import { toSvg } from '../../sim/blower/rotors/drawing/to-svg.ts';
import { rotorPair } from '../../sim/blower/rotors/rotor-pair.ts';
import { solvePoint } from '../../sim/index.ts';
import { readSpeeds } from '../arguments.ts';
import { BAD_INPUT, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { rotorsJson, rotorsReport } from './rotors-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/** `rotors FILE [--speed 6000] [--svg OUT] [--dxf OUT] [--json]`: what the rotors are before they are cut. */
export function runRotors(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    speed: { type: 'string' },
    svg: { type: 'string' },
    dxf: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const { engine } = model;
  if (engine.blower.kind !== 'roots') {
    const message = `is ${engine.blower.kind}; rotors are drawn for Roots blowers only`;
    return tell([{ path: 'blower.kind', message }], streams);
  }
  const typed = values['speed'] as string | undefined;
  const speeds = typed === undefined ? null : readSpeeds('one', typed);
  if (speeds && !speeds.ok) return tell(speeds.faults, streams);
  const speed = speeds?.value[0] ?? engine.wanted.maxSpeed;
  const pair = rotorPair(engine.blower);
  if (!pair.ok)
    return tell(
      pair.faults.map((fault) => toDesignPath(fault, design)),
      streams,
    );
  const point = solvePoint(model, { speed, throttle: 1 });
  const heat = point.converged ? heatEstimate(engine.blower, engine.ambient.temperature, point) : null;
  const notes = rotorNotes(design.name, engine.blower, pair.value, heat);
  const drawing = rotorDrawing(`${design.name}: rotors`, engine.blower, pair.value, notes);
  for (const [kind, text] of [
    ['svg', toSvg],
    ['dxf', toDxf],
  ] as const) {
    const out = values[kind] as string | undefined;
    if (out === undefined) continue;
    try {
      writeFileSync(out, text(drawing));
    } catch (error) {
      streams.err(`--${kind}: ${out} cannot be written: ${(error as Error).message}\n`);
      return BAD_INPUT;
    }
  }
  streams.out(
    values['json']
      ? `${JSON.stringify(rotorsJson(design.name, model, pair.value, heat), null, 2)}\n`
      : rotorsReport(design.name, model, pair.value, notes),
  );
  return SOLVED;
}
