import * as v from 'valibot';
import { displacing } from './blower-kinds.ts';
import { blowerEntries } from './blower-entries.ts';
import { group, number, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

const cooler = group('Intercooler', 'Cools the gas on its way from the first stage to the second.', {
  effectiveness: number(0.6, {
    label: 'Effectiveness',
    help: 'How far it brings the gas towards the coolant: 1 would be all the way.',
    min: 0,
    max: 1,
    plausible: [0.3, 0.85],
    source: 'typical of air-to-air coolers, 0.5 to 0.8; Incropera & DeWitt, 2002, ch. 11',
  }),
  coolant_C: numberOrNone({
    label: 'Temperature of the coolant',
    min: -40,
    max: 120,
    plausible: [0, 60],
    otherwise: 'that of the air outside',
    source: CHOICE,
  }),
  bore_mm: number(32, {
    detail: true,
    label: 'Bore that the pressure loss is counted with',
    min: 4,
    max: 300,
    plausible: [15, 80],
    source: CHOICE,
  }),
  lossFactor: number(4, {
    detail: true,
    label: 'Pressure loss factor',
    help: 'Loss over the dynamic pressure of the gas in that bore.',
    min: 0.1,
    max: 200,
    plausible: [1, 20],
    source: 'typical, headers and core together; Kays & London, Compact Heat Exchangers, 1984',
  }),
  volume_cc: number(300, {
    detail: true,
    label: 'Volume of the cooler and the pipe behind it',
    min: 5,
    max: 50000,
    plausible: [50, 2000],
    source: 'typical',
  }),
});

/** The first stage's fields of these names. */
const pick = <K extends keyof typeof blowerEntries>(...keys: K[]): Pick<typeof blowerEntries, K> =>
  Object.fromEntries(keys.map((key) => [key, blowerEntries[key]])) as Pick<typeof blowerEntries, K>;

export const secondStage = group(
  'Second stage',
  'One more blower between the first stage and the plenum. It has to displace less than the first for the first to compress at all.',
  {
    ...pick('kind', 'tipDiameter_mm'),
    rotorLength_mm: number(35, {
      ...displacing,
      label: 'Rotor length',
      min: 5,
      max: 800,
      plausible: [20, 200],
      source: CHOICE,
    }),
    ...pick('lobes', 'helix_deg', 'displacement_cc', 'volumeRatio', 'impeller', 'gears'),
    interstage_cc: number(300, {
      label: 'Volume between the stages',
      help: 'Pipe from the first stage to the second, or to the cooler.',
      min: 5,
      max: 50000,
      plausible: [50, 2000],
      source: 'typical',
    }),
    cooler: v.optional(v.nullable(cooler), null),
    ...pick('ripple', 'phase_deg', 'tipGap_mm', 'meshGap_mm', 'endGap_mm'),
    ...pick('clearanceArea_mm2', 'clearanceDischarge'),
    ...pick('mechanicalEfficiency', 'drag_N_m', 'casingHeatShare', 'maxTipSpeed_m_per_s', 'maxSpeed_rpm'),
  },
);
