import { expect, it } from 'vitest';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import { lengthFromInches as inches } from '#core/units/length';
import { patternFields } from '#renderer/features/pattern/pattern-fields';

const fieldsOf = (text: string, fabrics: Parameters<typeof patternFields>[1] = []) =>
  patternFields(readCuttingList(text, 'in'), fabrics, inches(42));

it('adds up equal patches, and keeps triangles as the squares they are cut from', () => {
  const text = 'Red: (4) 3" squares\nRed: (8) 3" squares\nRed: (6) 3" squares, cut once on the diagonal';
  expect(fieldsOf(text).patches).toEqual([
    { fabric: 'Red', cutAs: 'patch', width: inches(3), length: inches(3), count: 12 },
    { fabric: 'Red', cutAs: 'cut-once', width: inches(3), length: inches(3), count: 6 },
  ]);
});

it('leaves binding, backing and batting to their own stages', () => {
  const text =
    'Red: 1 yd\nBinding: 5/8 yd\nBacking: 4 yd\nCutting\nRed: (2) 3" x WOF strips\nBinding:\n(6) 2 1/4" x WOF strips';
  const fields = fieldsOf(text);
  expect(fields.patches).toEqual([
    { fabric: 'Red', cutAs: 'strip', width: inches(3), length: inches(42), count: 2 },
  ]);
  expect(fields.stated).toEqual([{ fabric: 'Red', length: inches(36) }]);
  expect(fields.bindingStrips).toEqual([{ width: inches(2.25), count: 6 }]);
});

it('takes the fabric chosen for a name of the list, and the finished size', () => {
  const text = 'Finished size: 60" x 72"\nRed: (4) 3" squares\n(2) 5" squares from the blue';
  const fields = fieldsOf(text, [{ role: 'Red', fabric: 'Ember Batik' }]);
  expect(fields.patches.map(({ fabric }) => fabric)).toEqual(['Ember Batik', 'blue']);
  expect(fields.finishedSize).toEqual([{ width: inches(60), length: inches(72) }]);
});
