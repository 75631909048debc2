import { group, number } from './builders.ts';

export const surroundings = group('Surroundings', 'The air that the engine breathes and blows into.', {
  pressure_kPa: number(101.325, {
    label: 'Air pressure',
    help: 'Absolute, at the place; about 1.2 kPa less for each 100 m of height.',
    min: 30,
    max: 120,
    plausible: [70, 104],
    source: 'ISO 2533:1975, standard atmosphere at sea level',
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
    help: 'Relative; used for the air’s density and for corrected power. The cycle itself breathes dry air.',
    min: 0,
    max: 1,
    plausible: [0, 1],
    source: 'dry, as the model’s own air',
  }),
});
