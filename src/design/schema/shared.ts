import { choice, filled, group, number, numberOrNone, numbers } from './builders.ts';

/** Source of what nobody but the builder can know. */
export const CHOICE = 'the builder’s choice';

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

interface TypicalTable {
  readonly openings: readonly number[];
  readonly pressureRatios: readonly number[];
  readonly forward: readonly number[];
  readonly backward: readonly number[];
}

const TABLE_SOURCE =
  'typical values in the ranges printed for two-stroke ports, not measured; Annand & Roe, 1974; Benson, 1959; Blair, 1996. Measure on a flow bench';

/** Discharge coefficients of windows over opening and pressure ratio, each direction; used instead of the constant ones. */
export const dischargeTable = (what: string, typical: TypicalTable) => {
  const coefficient = (direction: 'forward' | 'backward', help: string) =>
    numbers(
      typical[direction],
      {
        label: `Coefficients of the ${what}, ${direction}`,
        help: `${help} Row by row: for each opening one for each pressure ratio.`,
        min: 0.2,
        max: 1,
        plausible: [0.5, 0.95],
        source: TABLE_SOURCE,
      },
      256,
    );
  return group(
    `Discharge table, ${what}`,
    `Coefficients of the ${what} over opening and pressure ratio, used instead of the constant ones.`,
    {
      openings: numbers(
        typical.openings,
        {
          label: `Openings of the table, ${what}`,
          help: 'Open area over full area, rising from 0 to 1.',
          min: 0,
          max: 1,
          plausible: [0, 1],
          source: TABLE_SOURCE,
        },
        16,
      ),
      pressureRatios: numbers(
        typical.pressureRatios,
        {
          label: `Pressure ratios of the table, ${what}`,
          help: 'Pressure before over pressure behind, rising from 1. Beyond the last its coefficients hold, and the results say so.',
          min: 1,
          max: 50,
          plausible: [1, 10],
          source: TABLE_SOURCE,
        },
        16,
      ),
      forward: coefficient('forward', 'In the direction in which the charge is meant to go.'),
      backward: coefficient('backward', 'Against it.'),
    },
    { table: { rows: 'openings', columns: 'pressureRatios' } },
  );
};

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
  source: CHOICE,
});
