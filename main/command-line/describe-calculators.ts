import { z } from 'zod';
import type { Calculator } from '#core/calculators/calculator';
import { STARTER_MEASUREMENTS } from './starter-measurements';

const ABOUT = {
  about:
    'Run one with: npm run calc -- NAME \'{"field": value, …}\'. A length is text with its unit ("9 1/2 in", "24 cm"; a bare ' +
    'number in text is inches) or a whole number of 1/320 mm. A field left out takes its "default", which comes from a starter ' +
    'project: a hexagon 48 in across the flats with a slit to a round hole of 6 1/2 in, and the settings of a new workshop. ' +
    'A group of fields is given whole or left out whole.',
};

/** Every calculator with the JSON Schema (draft 2020-12) of its input, for people and programs that call them. */
export function describeCalculators(calculators: readonly Calculator[]): object {
  return { ...ABOUT, calculators: calculators.map(describeCalculator) };
}

function describeCalculator(calculator: Calculator): object {
  const { name, version, title, question, stageKinds } = calculator;
  return { name, version, title, question, stageKinds, input: inputSchema(calculator) };
}

/** Nothing is required: every field of the top level carries what it takes when it is left out. */
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
  const defaults = new Map<string, unknown>(Object.entries(calculator.fromProject(STARTER_MEASUREMENTS)));
  const properties = Object.entries(schema.properties ?? {}).map(([field, property]) => {
    const described = typeof property === 'object' ? property : {};
    return [field, { ...described, default: defaults.get(field) }] as const;
  });
  const { required: _required, ...rest } = schema;
  return { ...rest, properties: Object.fromEntries(properties) };
}
