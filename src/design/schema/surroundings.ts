import { group, number, numberOrNone } from './builders.ts';

export const surroundings = group('Surroundings', 'The air that the engine breathes and blows into.', {
  pressure_kPa: numberOrNone({
    label: 'Air pressure',
    help: 'Absolute, at the place. From the altitude, unless it is typed.',
    min: 30,
    max: 120,
    plausible: [70, 104],
    source: 'ISO 2533:1975, standard atmosphere at sea level, 101.325 kPa',
    otherwise: 'that of the standard atmosphere at the altitude',
    insteadOf: 'altitude_m',
  }),
  altitude_m: numberOrNone({
    label: 'Altitude',
    help: 'Above sea level; gives the air pressure of the standard atmosphere there. The temperature is typed by itself.',
    min: -450,
    max: 9000,
    plausible: [0, 3000],
    source: 'sea level',
    otherwise: 'where the standard atmosphere has the air pressure; sea level if neither is typed',
    insteadOf: 'pressure_kPa',
  }),
  temperature_C: number(20, {
    label: 'Air temperature',
    min: -40,
    max: 60,
    plausible: [-10, 40],
    source: 'typical',
  }),
  humidity: number(0, {
    label: 'Humidity of the air',
    help: 'Relative; its water vapour takes the place of air, oxygen included, in the whole engine.',
    min: 0,
    max: 1,
    plausible: [0, 1],
    source: 'dry air',
  }),
});
