import type { Engine } from '../engine.ts';
import type { EngineGeometry } from '../geometry/cylinder-geometry.ts';
import { TURN } from '../units.ts';
import { crossedPairs } from './crossed-pairs.ts';
import { cylinderChecks } from './cylinder-checks.ts';
import { FIT_KINDS, verdictOf } from './fit-check.ts';
import type { Contact, FitCheck, FitPlace, FitReport, Pair } from './fit-check.ts';
import { knuckleWalls } from './knuckle-walls.ts';
import { ALIKE, FIT_SAMPLES, leastOverTurn } from './least-over-turn.ts';
import { engineSize, rowsApart, spaceChecks } from './outer-size.ts';
import { movingPairs, stillPairs } from './row-pairs.ts';
import { RowParts } from './row-parts.ts';
import { strokePairs } from './stroke-pairs.ts';
import { toleranceStack } from './tolerance-stack.ts';

/** A clearance before its tolerance is known. */
export type Found = FitPlace & Pick<FitCheck, 'kind' | 'curve' | 'each'>;

/**
 * Whether the engine goes together: every clearance that plane geometry can tell, at its least over a whole turn.
 *
 * Rods, skirts and barrels are taken in the plane of their row, in which they come nearest; barrels of different rows in space.
 * Not looked at: ducts, studs, nuts, counterweights, the case itself.
 *
 * Numerics: places by rotation are exact; gaps are those of `gap`, their least over the turn that of `leastOverTurn`.
 */
export class FitModel {
  readonly report: FitReport;
  private readonly rows: readonly { readonly parts: RowParts; readonly moving: readonly Pair[] }[];
  private readonly still: readonly Pair[];
  private readonly strokes: readonly Pair[];

  constructor(engine: Engine, geometry: EngineGeometry) {
    this.rows = engine.train.rows.map((_, rowIndex) => {
      const parts = new RowParts(engine, geometry, rowIndex);
      return { parts, moving: movingPairs(parts) };
    });
    const parts = this.rows.map((row) => row.parts);
    this.still = [...parts.flatMap(stillPairs), ...crossedPairs(engine, parts)];
    this.strokes = parts.flatMap((row) => strokePairs(engine, row));
    const found = [
      ...this.leastMoving(),
      ...leastStill(this.still),
      ...cylinderChecks(engine, parts),
      ...knuckleWalls(engine, parts),
      ...rowsApart(engine, parts),
      ...spaceChecks(engine, parts),
    ];
    const { tolerances } = engine.dimensions;
    const checks = FIT_KINDS.flatMap((kind) => {
      const least = leastOf(found.filter((each) => each.kind === kind));
      if (!least) return [];
      const tolerance = toleranceStack(kind, tolerances);
      return [{ ...least, tolerance, verdict: verdictOf(least.clearance, tolerance) }];
    });
    this.report = { checks, ...engineSize(engine, parts) };
  }

  /** Everything that overlaps at a crank angle, and where the parts of a chosen check are nearest then; what a view along the crank cannot show is left out. */
  contactsAt(angle: number, chosen: FitCheck | null): { collisions: Contact[]; nearest: Contact | null } {
    for (const { parts } of this.rows) parts.place(angle);
    const pairs = [...this.rows.flatMap(({ moving }) => moving), ...this.still, ...this.strokes];
    const collisions = pairs.flatMap((pair) => {
      const contact = pair.gapNow() < 0 ? pair.contactNow() : null;
      return contact ? [contact] : [];
    });
    const pair =
      chosen && pairs.find((each) => each.kind === chosen.kind && each.parts.join() === chosen.parts.join());
    return { collisions, nearest: pair?.contactNow() ?? null };
  }

  private leastMoving(): Found[] {
    return this.rows.flatMap(({ parts, moving }) => {
      const sampled = moving.map(() => new Float64Array(FIT_SAMPLES));
      for (let k = 0; k < FIT_SAMPLES; k++) {
        parts.place((k * TURN) / FIT_SAMPLES);
        moving.forEach((pair, i) => (sampled[i]![k] = pair.gapNow()));
      }
      const kinds = [...new Set(moving.map(({ kind }) => kind))];
      return kinds.map((kind): Found => {
        const members = moving.flatMap((pair, i) => (pair.kind === kind ? [i] : []));
        const least = leastOverTurn(
          members.map((i) => sampled[i]!),
          (member, angle) => {
            parts.place(angle);
            return moving[members[member]!]!.gapNow();
          },
        );
        const worst = members[least.pair]!;
        const curve = sampled[worst]!;
        const { parts: names } = moving[worst]!;
        const stays = curve.every((value) => Math.abs(value - least.value) < ALIKE);
        return {
          kind,
          parts: names,
          clearance: least.value,
          angle: stays ? null : least.angle,
          curve: stays ? null : curve,
          each: [],
        };
      });
    });
  }
}

function leastStill(pairs: readonly Pair[]): Found[] {
  return pairs.map(({ kind, parts, gapNow }) => ({
    kind,
    parts,
    clearance: gapNow(),
    angle: null,
    curve: null,
    each: [],
  }));
}

/** The one with the least clearance; what was asked place by place is put together. */
function leastOf(found: readonly Found[]): Found | null {
  const [first, ...more] = found;
  if (!first) return null;
  const least = more.reduce((best, each) => (each.clearance < best.clearance - ALIKE ? each : best), first);
  return { ...least, each: found.flatMap(({ each }) => each) };
}
