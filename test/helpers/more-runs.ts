import type * as fastCheck from 'fast-check';
import { vi } from 'vitest';

// Loaded only where `PROPERTY_TIMES` asks for it (vitest.config.ts): every property is tried that many times as often as it says.
vi.mock('fast-check', async (importOriginal) => {
  const library = await importOriginal<typeof fastCheck>();
  const times = Number(process.env['PROPERTY_TIMES']);
  function assert<Values>(
    property: fastCheck.IRawProperty<Values>,
    parameters: fastCheck.Parameters<Values> = {},
  ) {
    return library.assert(property, { ...parameters, numRuns: times * (parameters.numRuns ?? 100) });
  }
  return { ...library, default: { ...library.default, assert }, assert };
});
