import { choice, filled, group, number, numberOrNone } from './builders.ts';

const DISCHARGE_SOURCE =
  'typical; Annand & Roe, Gas Flow in the Internal Combustion Engine, 1974; Blair, Design and Simulation of Two-Stroke Engines, 1996';

/** Discharge coefficients of an opening, by the direction of the flow. */
export const discharge = (what: string, forward: number, backward: number) =>
  filled(
    group(
      `Discharge coefficient, ${what}`,
      `Effective area over geometric area of the ${what}.`,
      {
        forward: number(forward, {
          label: `Discharge coefficient of the ${what}, forward`,
          help: 'In the direction in which the charge is meant to go. 0.60 to 0.65 is a sharp edge, 0.95 a well-rounded nozzle.',
          min: 0.2,
          max: 1,
          plausible: [0.55, 0.9],
          source: DISCHARGE_SOURCE,
        }),
        backward: number(backward, {
          label: `Discharge coefficient of the ${what}, backward`,
          help: 'Against the direction in which the charge is meant to go.',
          min: 0.2,
          max: 1,
          plausible: [0.5, 0.8],
          source: DISCHARGE_SOURCE,
        }),
      },
      { detail: true },
    ),
  );

/** A wall at a given temperature beside the gas of a volume. */
export const wall = (
  what: string,
  defaults: { temperature_C: number; diameter_mm: number; enhancement: number },
) =>
  filled(
    group(
      `Wall, ${what}`,
      `What the gas of the ${what} gives heat to or takes heat from.`,
      {
        area_cm2: numberOrNone({
          label: `Wall area, ${what}`,
          min: 1,
          max: 50000,
          plausible: [20, 5000],
          otherwise: 'that of a duct with this volume and hydraulic diameter: 4 × volume / diameter',
          source: 'geometry: the hydraulic diameter is four volumes over the wetted area',
        }),
        temperature_C: number(defaults.temperature_C, {
          label: `Wall temperature, ${what}`,
          min: -40,
          max: 900,
          plausible: [0, 700],
          source: 'typical; measure it, it decides how warm the charge gets',
        }),
        hydraulicDiameter_mm: number(defaults.diameter_mm, {
          label: `Hydraulic diameter, ${what}`,
          help: 'Four times the cross-section over its perimeter; the length in the Nusselt and Reynolds numbers.',
          min: 2,
          max: 500,
          plausible: [8, 150],
          source: 'typical',
        }),
        enhancement: number(defaults.enhancement, {
          label: `Heat transfer over that of a smooth tube, ${what}`,
          help: 'Pulsing flow, bends and entry lengths carry more heat than steady flow in a long smooth tube.',
          min: 0,
          max: 10,
          plausible: [1, 4],
          source: 'typical, 1 to 4 for pulsing flow in short ducts',
        }),
      },
      { detail: true },
    ),
  );

export const butterflyOrSlide = choice(['butterfly', 'slide'], 'butterfly', {
  label: 'Kind of throttle',
  source: 'the builder’s choice',
});
