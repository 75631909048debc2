import { BurnTiming } from '../../combustion/burn-timing.ts';
import type { FlameSpeedLaw } from '../../combustion/flame-speed.ts';
import { FLAME_SPEED_LAWS } from '../../combustion/flame-speed.ts';
import type { WallPatch } from '../../engine.ts';
import { AIR_INDEX, chargeFractions, FUEL_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';
import { tubeCoefficient } from '../../heat-transfer/tube-nusselt.ts';
import { TURN } from '../../units.ts';
import type { Firing } from '../sources/combustion.ts';
import { Burning } from '../sources/combustion.ts';
import { CylinderWalls } from '../sources/cylinder-walls.ts';
import type { NodeWall } from '../sources/node-walls.ts';
import { NodeWalls } from '../sources/node-walls.ts';
import type { Parts } from './flow-elements.ts';

/**
 * Film temperatures that the transport properties of the gas are taken at: above ambient, and in the collectors [K]. Typical, and
 * of little weight: the coefficient goes with about their fifth root.
 */
const PLENUM_FILM_RISE = 30;
const PASSAGE_FILM_RISE = 60;
const COLLECTOR_FILM = 900;

export function cylinderWallsOf({ model, point, pistons, gas }: Parts): CylinderWalls {
  const { engine, network } = model;
  const stroke = 2 * engine.train.crankRadius;
  const pistonSpeed = (2 * stroke * point.speed) / TURN;
  return new CylinderWalls(
    network.at.cylinders,
    engine.cylinderHeat,
    engine.cylinder.bore,
    pistonSpeed,
    pistons,
    gas,
  );
}

export function nodeWallsOf({ model, gas, design }: Parts): NodeWalls {
  const { intake, plenum, passages, collectors, ambient } = model.engine;
  const { at } = model.network;
  const wall = (node: number, patch: WallPatch, flow: number, film: number): NodeWall => {
    const { area, hydraulicDiameter, enhancement, temperature } = patch;
    const massFlux = flow / (0.25 * Math.PI * hydraulicDiameter ** 2);
    return {
      node,
      conductance: area * tubeCoefficient(hydraulicDiameter, massFlux, film, enhancement),
      temperature,
    };
  };
  const { temperature } = ambient;
  return new NodeWalls(
    [
      wall(at.box, intake.boxWall, design.total, temperature),
      wall(at.plenum, plenum.wall, design.total, temperature + PLENUM_FILM_RISE),
      ...at.passages.map((node) =>
        wall(node, passages.wall, design.perCylinder, temperature + PASSAGE_FILM_RISE),
      ),
      ...at.collectors.map((node, i) => wall(node, collectors[i].wall, design.perCollector, COLLECTOR_FILM)),
    ],
    gas,
  );
}

export function burningOf({ model, instant, memory, gas }: Parts, firing: Firing): Burning {
  const { engine, geometry, network, mixture, set } = model;
  const fresh = chargeFractions(mixture);
  const R = set.gasConstants;
  const law = (FLAME_SPEED_LAWS as Readonly<Record<string, FlameSpeedLaw>>)[engine.charge.fuel];
  const productsOverFresh =
    R[PRODUCTS_INDEX] / (fresh[AIR_INDEX] * R[AIR_INDEX] + fresh[FUEL_INDEX] * R[FUEL_INDEX]);
  return new Burning(
    network.at.cylinders.map((node, j) => ({ node, sparkAngle: geometry.cylinders[j].sparkAngle })),
    engine.combustion,
    new BurnTiming(engine.combustion, law, productsOverFresh),
    mixture.airFuelRatio,
    engine.charge.lambda,
    firing,
    instant,
    memory,
    gas,
  );
}
