import { z } from 'zod';
import type { Calculator } from '#core/calculators/calculator';
import { SAMPLE_MEASUREMENTS } from './sample-measurements';

const ABOUT = {
  about:
    'Run one with: npm run calc -- NAME \'{"field": value, …}\'. A length is text with its unit ("9 1/2 in", "24 cm"; without ' +
    'a unit it is inches) or a whole number of 1/320 mm. A field left out takes its "default", from a sample project: ' +
    'a hexagon 48 in across the flats with a slit to a round hole of 6 1/2 in, and the settings of a new workshop. ' +
    'Give a group of fields complete, or leave it out.',
};

/** Every calculator with the JSON Schema (draft 2020-12) of its input, for people and programs. */
export function describeCalculators(calculators: readonly Calculator[]): object {
  return { ...ABOUT, calculators: calculators.map(describeCalculator) };
}

function describeCalculator(calculator: Calculator): object {
  const { name, version, title, question, stageKinds } = calculator;
  return { name, version, title, question, stageKinds, input: inputSchema(calculator) };
}

/** No field is required: each field at the top level carries its default. */
function inputSchema(calculator: Calculator): object {
  const schema = z.toJSONSchema(calculator.input, {
    override: ({ zodSchema, jsonSchema }) => {
      if (z.globalRegistry.get(zodSchema)?.['kind'] !== 'length') return;
      const { minimum, maximum } = jsonSchema;
      delete jsonSchema.type;
      delete jsonSchema.minimum;
      delete jsonSchema.maximum;
      delete jsonSchema['unit'];
      jsonSchema.anyOf = [
        {
          type: 'integer',
          ...(minimum === undefined ? {} : { minimum }),
          ...(maximum === undefined ? {} : { maximum }),
          description: 'Whole 1/320 mm',
        },
        { type: 'string', maxLength: 80, description: 'Text with its unit', examples: ['9 1/2 in', '24 cm'] },
      ];
    },
  });
  const defaults = new Map<string, unknown>(Object.entries(calculator.fromProject(SAMPLE_MEASUREMENTS)));
  const properties = Object.entries(schema.properties ?? {}).map(([field, property]) => {
    const described = typeof property === 'object' ? property : {};
    return [field, { ...described, default: defaults.get(field) }] as const;
  });
  const { required: _required, ...rest } = schema;
  return { ...rest, properties: Object.fromEntries(properties) };
}
