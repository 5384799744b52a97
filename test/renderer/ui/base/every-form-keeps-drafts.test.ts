import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '#test/helpers/project-root';

/** Fields that are a question or a look, not an entry: they start over with their page. */
const NOT_ENTRIES: Readonly<Record<string, readonly string[]>> = {
  'renderer/features/projects/projects-page.tsx': ['setSearch'],
  'renderer/features/stage/clock/own-estimate.tsx': ['setAsked'],
  'renderer/features/stash/labels-dialog.tsx': ['setStartAt'],
};

const FIELD = /<(?:[A-Z]\w*Field|[A-Z]\w*Fields|SchemaForm|textarea|input)\b[\s\S]*?\/>/gu;
const STATE = /const \[\w+, (?<setter>set\w+)\] = useState/gu;

/** The setters of plain state that a field of the file calls: what they hold is lost when the page is left. */
function looseFields(source: string): readonly string[] {
  const fields = [...source.matchAll(FIELD)].map(([field]) => field).join('\n');
  return [...source.matchAll(STATE)]
    .map(({ groups }) => groups?.['setter'] ?? '')
    .filter((setter) => new RegExp(`\\b${setter}\\b`, 'u').test(fields));
}

const files = ['app', 'features', 'shared'].flatMap((room) =>
  readdirSync(path.join(projectRoot, 'renderer', room), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/u.test(name))
    .map((name) => `renderer/${room}/${name}`),
);

describe('every form', () => {
  it.each(files.toSorted())('%s keeps what is entered in a draft', (file) => {
    const source = readFileSync(path.join(projectRoot, file), 'utf8');
    expect(looseFields(source)).toEqual(NOT_ENTRIES[file] ?? []);
  });

  it('is found by this test when it loses what is entered', () => {
    const source = `
      const [name, setName] = useState('');
      return <TextField label="Name" value={name} onChange={(next) => setName(next)} />;`;
    expect(looseFields(source)).toEqual(['setName']);
    expect(files.length).toBeGreaterThan(150);
  });
});
