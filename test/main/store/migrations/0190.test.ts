import path from 'node:path';
import { expect, test } from 'vitest';
import { completeInput } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { StageId } from '#core/domain/ids';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { OLD_STAGE, startOldRing } from '#test/helpers/older-stores';
import { createStoreAt, inches, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const CLEARANCE = {
  holeDiameter: inches(6.5),
  seamAllowance: inches(0.25),
  backCover: inches(0.125),
  patchShape: 'circle',
  patchAcross: inches(18),
  patchSides: 6,
  offsetAcross: 0,
  offsetDown: 0,
  accuracy: inches(0.125),
  cutStep: inches(0.125),
};
const PATCH = {
  what: 'one-patch',
  patchShape: 'circle',
  patchAcross: inches(18),
  patchSides: 6,
  offsetAcross: 0,
  offsetDown: 0,
  accuracy: inches(0.125),
};

const SIX = {
  top: inches(48),
  right: inches(36),
  bottom: inches(48),
  left: inches(36),
  downToRight: inches(60),
  upToRight: inches(60),
};
const MOTIF = { hasMotif: true, motifFromLeft: inches(24.5), motifFromTop: inches(18) };
const CENTER = { ...SIX, ...MOTIF, accuracy: inches(0.125) };

const CASES = [
  [
    'center-find',
    CENTER,
    { top: inches(48), accuracy: inches(0.125) },
    { measured: { way: 'four-sides', ...SIX, ...MOTIF }, accuracy: inches(0.125) },
  ],
  ['center-find', CENTER, { accuracy: inches(0.125) }, { accuracy: inches(0.125) }],
  ['center-find', CENTER, {}, {}],
  [
    'center-clearance',
    CLEARANCE,
    { patchShape: 'circle', holeDiameter: inches(6.5) },
    { middle: PATCH, holeDiameter: inches(6.5) },
  ],
  ['center-clearance', CLEARANCE, { holeDiameter: inches(6.5) }, { holeDiameter: inches(6.5) }],
  ['center-clearance', CLEARANCE, { cutStep: inches(0.125) }, {}],
  ['hole-size', { measure: inches(6) }, { measure: inches(6) }, { measure: inches(6) }],
] as const;

test.each(CASES)('an answer of %s keeps its numbers', (name, input, own, now) => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(180, file);
  startOldRing(older, 'Saved an answer');
  older
    .prepare(
      `INSERT INTO calculation (id, stage_id, calculator, version, input_json, own_input_json, answer_json, kept_at)
        VALUES ('00000000-0000-4000-8000-0000000000c1', ?, ?, 3, ?, ?, '{"figures":[],"tables":[],"notes":[]}', 1)`,
    )
    .run(OLD_STAGE, name, JSON.stringify(input), JSON.stringify(own));
  older.exec('UPDATE current_change SET change_seq = NULL');
  older.close();
  const { context, get } = openWorkshop(file);
  const [saved] = get('calculation:list', { stageId: OLD_STAGE as StageId });
  expect(saved?.ownInput).toEqual(now);
  if (name === 'hole-size') return;
  const calculator = calculatorByName(name)!;
  expect(completeInput(calculator, SAMPLE_MEASUREMENTS, saved?.ownInput).ok).toBe(true);
  const [stored] = context.store.database
    .prepare<[], string>('SELECT input_json FROM calculation')
    .pluck()
    .all();
  expect(calculator.input.safeParse(JSON.parse(stored!)).success).toBe(true);
  const history = context.store.database
    .prepare<[], string>(`SELECT after_json FROM change_row WHERE table_name = 'calculation'`)
    .pluck()
    .all();
  expect(history).toHaveLength(1);
  const kept = JSON.parse(history[0]!) as { readonly input_json: string; readonly own_input_json: string };
  expect(kept.input_json).toBe(stored);
  expect(JSON.parse(kept.own_input_json)).toEqual(now);
});
