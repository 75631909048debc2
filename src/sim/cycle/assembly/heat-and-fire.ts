import { BurnTiming } from '../../combustion/burn-timing.ts';
import { flameOf } from '../../combustion/flame.ts';
import type { WallPatch } from '../../engine.ts';
import { AIR_INDEX, chargeFractions, FUEL_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';
import { tubeCoefficient } from '../../heat-transfer/tube-nusselt.ts';
import { TURN } from '../../units.ts';
import type { Firing } from '../sources/combustion.ts';
import { Burning } from '../sources/combustion.ts';
import { AnnandFilm } from '../films/annand-film.ts';
import type { Film } from '../films/film.ts';
import { HohenbergFilm } from '../films/hohenberg-film.ts';
import { WoschniFilm } from '../films/woschni-film.ts';
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

/** The law of the coefficient that the design names. */
function filmOf({ model, point, pistons, gas, instant, memory }: Parts): Film {
  const { cylinderHeat, cylinder, train } = model.engine;
  const { bore } = cylinder;
  const pistonSpeed = (4 * train.crankRadius * point.speed) / TURN;
  const nodes = model.network.at.cylinders;
  switch (cylinderHeat.law) {
    case 'Annand':
      return new AnnandFilm(cylinderHeat.annandA, cylinderHeat.annandB, bore, pistonSpeed, nodes, gas);
    case 'Woschni':
      return new WoschniFilm(cylinderHeat, bore, pistonSpeed, nodes, pistons, instant, memory, gas);
    case 'Hohenberg':
      return new HohenbergFilm(cylinderHeat.filmFactor, pistonSpeed, nodes, gas);
  }
}

export function cylinderWallsOf(parts: Parts): CylinderWalls {
  const { model, pistons, gas, memory } = parts;
  const { network, engine } = model;
  const { crownTemperature, headTemperature, linerTemperature } = engine.cylinderHeat;
  const given = network.at.cylinders.flatMap(() => [crownTemperature, headTemperature, linerTemperature]);
  return new CylinderWalls(
    network.at.cylinders,
    engine.cylinderHeat,
    engine.cylinder.bore,
    memory.walls.length > 0 ? memory.walls : Float64Array.from(given),
    filmOf(parts),
    pistons,
    gas,
  );
}

export function nodeWallsOf({ model, point, gas, design }: Parts): NodeWalls {
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
  // Cranks stir a crankcase's gas about their own speed.
  const stirred = ({ hydraulicDiameter }: WallPatch): number =>
    0.25 * Math.PI * hydraulicDiameter ** 2 * density * model.engine.train.crankRadius * point.speed;
  const density = ambient.pressure / (gas.set.gasConstants[AIR_INDEX] * temperature);
  const { crankcase } = model.engine;
  return new NodeWalls(
    [
      wall(at.box, intake.boxWall, design.total, temperature),
      wall(at.plenum, plenum.wall, design.total, temperature + PLENUM_FILM_RISE),
      ...at.passages.map((node) =>
        wall(node, passages.wall, design.perCylinder, temperature + PASSAGE_FILM_RISE),
      ),
      ...at.collectors.map((node, i) => wall(node, collectors[i].wall, design.perCollector, COLLECTOR_FILM)),
      ...(crankcase
        ? [wall(at.crankcase, crankcase.wall, stirred(crankcase.wall), temperature + PASSAGE_FILM_RISE)]
        : []),
    ],
    gas,
  );
}

export function burningOf({ model, instant, memory, gas }: Parts, firing: Firing): Burning {
  const { engine, geometry, network, mixture, set } = model;
  const fresh = chargeFractions(mixture);
  const R = set.gasConstants;
  const productsOverFresh =
    R[PRODUCTS_INDEX] / (fresh[AIR_INDEX] * R[AIR_INDEX] + fresh[FUEL_INDEX] * R[FUEL_INDEX]);
  return new Burning(
    network.at.cylinders.map((node, j) => ({ node, sparkAngle: geometry.cylinders[j].sparkAngle })),
    engine.combustion,
    new BurnTiming(engine.combustion, flameOf(engine.charge), productsOverFresh),
    mixture.airFuelRatio,
    engine.charge.lambda,
    firing,
    instant,
    memory,
    gas,
  );
}
