import { gearWarnings } from '../sim/blower/gear-train.ts';
import type { Fault } from '../sim/outcome.ts';
import { FIELDS, showValue } from './fields.ts';
import type { Field } from './fields.ts';
import { valueAt, writePath } from './path.ts';
import type { Path } from './path.ts';
import type { Design } from './schema/design.ts';

/** Values that are allowed but lie outside what sound designs have: worth a second look, no more. */
export function remarks(design: Design): readonly Fault[] {
  const ofFields = FIELDS.flatMap((field) =>
    placesOf(design, field.path).flatMap(({ steps, value }) => {
      const message = typeof value === 'number' ? remark(field, value) : null;
      return message === null ? [] : [{ path: writePath(steps), message }];
    }),
  );
  return [...ofFields, ...gearRemarks(design), ...blendRemarks(design)];
}

const blendRemarks = ({ fuel }: Design): readonly Fault[] =>
  fuel.blend?.kind === fuel.kind
    ? [
        {
          path: 'fuel.blend.kind',
          message: `The second fuel is ${fuel.kind}, as the first is: the blend changes nothing`,
        },
      ]
    : [];

const gearRemarks = ({ blower }: Design): readonly Fault[] =>
  [
    { path: 'blower', gears: blower.gears },
    ...(blower.secondStage ? [{ path: 'blower.secondStage', gears: blower.secondStage.gears }] : []),
  ].flatMap(({ path, gears }) =>
    gearWarnings(
      gears.map(({ driver, driven, efficiency }) => ({
        driverTeeth: driver,
        drivenTeeth: driven,
        efficiency,
      })),
    ).map(({ stage, message }) => ({ path: `${path}.gears[${stage}]`, message })),
  );

/** What is unusual about a value of a field, in the field's own unit; null where nothing is. */
export function remark(field: Field, value: number): string | null {
  if (!field.plausible) return null;
  const [low, high] = field.plausible;
  if (value >= low && value <= high) return null;
  const { unit } = field;
  return `${field.label} is ${showValue(value, unit)}; usual are ${showValue(low, unit)} to ${showValue(high, unit)}`;
}

/** Every place of a design to which an open path leads. */
function placesOf(design: Design, open: string): { steps: Path; value: unknown }[] {
  let places: Path[] = [[]];
  for (const part of open.split('.')) {
    const key = part.replace('[]', '');
    places = places.map((steps) => [...steps, key]);
    if (part.endsWith('[]')) {
      places = places.flatMap((steps) => {
        const list = valueAt(design, steps);
        return Array.isArray(list) ? list.map((_, index) => [...steps, index]) : [];
      });
    }
  }
  return places.map((steps) => ({ steps, value: valueAt(design, steps) }));
}
