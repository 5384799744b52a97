import { existsSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { bareUnitOf } from '#core/calculators/complete-input';
import { readInput } from '#core/calculators/read-input';
import { flagField } from '#core/domain/fields';
import { type Measurements, measurementsOfProject } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { settingChanges, type SettingChanges } from '#core/domain/workshop';
import type { FieldProblem } from '#core/field-problem';
import { failure, type Result, success } from '#core/result';
import { clipRead } from '#core/units/typed-text';
import { SAMPLE_MEASUREMENTS } from './sample-measurements';

export interface Arguments {
  readonly positionals: readonly string[];
  /** The project whose values stand for every field that is left out. */
  readonly measurements: Measurements;
  readonly asText: boolean;
}

const projectInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable(),
    hasSlit: flagField({ title: 'Slit' }),
    settingChanges,
  })
  .readonly();

/** Reads the options; what is left are the positionals. A fault names its option. */
export function readArguments(args: readonly string[]): Result<Arguments, FieldProblem> {
  const parsed = parseOptions(args);
  if (!parsed.ok) return parsed;
  const { positionals, values } = parsed.value;
  const settings = readUnits(values.units, values.step);
  if (!settings.ok) return settings;
  const measurements = readProject(values.project, settings.value);
  if (!measurements.ok) return measurements;
  return success({ positionals, measurements: measurements.value, asText: values.text === true });
}

function parseOptions(args: readonly string[]) {
  try {
    const option = { type: 'string' } as const;
    const options = { units: option, step: option, project: option, text: { type: 'boolean' } } as const;
    return success(parseArgs({ args: [...args], options, allowPositionals: true }));
  } catch {
    const read = clipRead(args.filter((one) => one.startsWith('-')).join(' '));
    const expected = '--units inch|metric, --step 1/4|1/8|1/16, --project FILE or JSON, --text';
    return failure({ path: [], read, expected });
  }
}

function readUnits(
  units: string | undefined,
  step: string | undefined,
): Result<SettingChanges, FieldProblem> {
  if (units !== undefined && units !== 'inch' && units !== 'metric')
    return failure({ path: ['--units'], read: `"${clipRead(units)}"`, expected: 'inch or metric' });
  const inchStep = step === undefined ? undefined : ([4, 8, 16] as const).find((one) => step === `1/${one}`);
  if (step !== undefined && inchStep === undefined)
    return failure({
      path: ['--step'],
      read: `"${clipRead(step)}"`,
      expected: '1/4, 1/8 or 1/16 of an inch',
    });
  return success({
    ...(units === undefined ? {} : { unitSystem: units }),
    ...(inchStep === undefined ? {} : { inchStep }),
  });
}

/** The sample project, or the given one; the options go before the project's own settings. */
function readProject(given: string | undefined, options: SettingChanges): Result<Measurements, FieldProblem> {
  const workshop = SAMPLE_MEASUREMENTS.settings;
  if (given === undefined)
    return success({
      ...SAMPLE_MEASUREMENTS,
      settings: { ...workshop, ...options } as Measurements['settings'],
    });
  const raw = jsonOf(given);
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    const expected = 'a JSON object or a file with one: {"outline": {…}, "hole": {…}, "hasSlit": true}';
    return failure({ path: ['--project'], read: `"${clipRead(given)}"`, expected });
  }
  const complete = { hole: null, hasSlit: false, settingChanges: {}, ...raw };
  const project = readInput(projectInput, complete, bareUnitOf(systemOf(complete.settingChanges, options)));
  if (!project.ok) {
    const [first = { path: [], read: 'nothing', expected: 'a project' }] = project.error;
    return failure({ ...first, path: ['--project', ...first.path] });
  }
  const changes = { ...project.value.settingChanges, ...options };
  return success(measurementsOfProject({ ...project.value, settingChanges: changes }, workshop));
}

/** A number without a unit is in the project's units. */
function systemOf(changes: unknown, { unitSystem }: SettingChanges): 'inch' | 'metric' {
  if (unitSystem !== undefined) return unitSystem;
  const isMetric = typeof changes === 'object' && changes !== null && 'unitSystem' in changes;
  return isMetric && changes.unitSystem === 'metric' ? 'metric' : 'inch';
}

/** Undefined when neither the text nor the file it names is JSON. */
function jsonOf(given: string): unknown {
  try {
    return JSON.parse(existsSync(given) ? readFileSync(given, 'utf8') : given) as unknown;
  } catch {
    return undefined;
  }
}
