import { useDeferredValue, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { StashColumn, TableToRead } from '#core/domain/stash-table';
import { call } from '#renderer/bridge/call';
import { useRead, useWrite } from '#renderer/bridge/query';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Choice, Select } from '#renderer/ui/fields/choice';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { BringInMapping } from './bring-in-mapping';
import { BringInPreview } from './bring-in-preview';
import styles from './bring-in.module.css';

const NOTHING: TableToRead = {
  source: { kind: 'text', text: '' },
  encoding: 'utf-8',
  hasTitles: null,
  mapping: null,
  repeats: 'leave-out',
};

const ENCODINGS = [
  { value: 'utf-8', words: 'UTF-8' },
  { value: 'windows-1252', words: 'Western (Windows-1252)' },
  { value: 'utf-16le', words: 'UTF-16, little end first' },
  { value: 'utf-16be', words: 'UTF-16, big end first' },
] as const;

/** A table of fabrics: pasted or chosen, told what its columns say, looked at, and brought in whole. */
export function BringInPage() {
  const [table, setTable] = useState(NOTHING);
  const [fileName, setFileName] = useState<string | null>(null);
  const asked = useDeferredValue(table);
  const isGiven = asked.source.kind === 'file' || asked.source.text.trim() !== '';
  const { value: reading, problem } = useRead('table:read', { table: asked }, { isOn: isGiven });
  const bringing = useWrite('table:bring-in');
  const navigate = useNavigate();
  const change = (part: Partial<TableToRead>) => setTable({ ...table, ...part });
  const give = (source: TableToRead['source'], name: string | null) => {
    setTable({ ...table, source, hasTitles: null, mapping: null });
    setFileName(name);
  };
  const choose = async () => {
    const chosen = await call('shell:choose-table', {});
    if (chosen.ok && chosen.value !== null) {
      give({ kind: 'file', token: chosen.value.token }, chosen.value.name);
    }
  };
  const bring = async () => {
    const answer = await bringing.write({ table });
    if (answer.ok) void navigate('/stash');
  };
  const canBring =
    reading?.faultCount === 0 && reading.adds.fabrics + reading.adds.pieces > 0 && asked === table;
  const map = (index: number, says: StashColumn | null) => {
    if (reading === undefined) return;
    change({
      mapping: reading.mapping.map((before, at) => {
        if (at === index) return says;
        return before === says ? null : before;
      }),
    });
  };
  return (
    <Page
      title="Bring in a table"
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" disabled={!canBring || bringing.isWriting} onClick={() => void bring()}>
          Add it to the stash
        </Button>
      }
    >
      <section className={shared['stack']} aria-label="The table">
        {fileName === null ? (
          <TextField
            label="Paste a table"
            help="From a spreadsheet or a list: a line for each piece of fabric, with a name at least."
            value={table.source.kind === 'text' ? table.source.text : ''}
            maximum={4_000_000}
            isLong
            onChange={(text) => give({ kind: 'text', text }, null)}
          />
        ) : (
          <p>
            From the file <strong>{fileName}</strong>
          </p>
        )}
        <div className={shared['row']}>
          <Button onClick={() => void choose()}>
            {fileName === null ? 'Choose a file' : 'Choose another file'}
          </Button>
          {fileName !== null && (
            <Button look="quiet" onClick={() => give({ kind: 'text', text: '' }, null)}>
              Paste instead
            </Button>
          )}
        </div>
      </section>
      {isGiven && <ProblemNotice problem={bringing.problem ?? problem} />}
      {isGiven && table.source.kind === 'file' && (
        <Select
          label="Written in"
          value={table.encoding}
          options={ENCODINGS}
          onChange={(encoding) => change({ encoding })}
        />
      )}
      {!isGiven && (
        <p className={shared['quiet']}>
          Sizes may be written as people write them: 1 1/4 yd, 45 x 55 cm, FQ. Days have the year first. The
          whole stash can be <Link to="/stash/take-out">taken out as a file</Link>, too, and comes in the same
          again.
        </p>
      )}
      {isGiven && reading !== undefined && (
        <>
          <BringInMapping
            reading={reading}
            onMap={map}
            onTitles={(hasTitles) => change({ hasTitles, mapping: null })}
          />
          <BringInPreview reading={reading} />
          {reading.repeatCount + reading.alreadyHere > 0 || table.repeats === 'add' ? (
            <Choice
              label="What is here already, or stands twice"
              value={table.repeats}
              options={[
                { value: 'leave-out', words: 'Leave it out' },
                { value: 'add', words: 'Add it all the same' },
              ]}
              onChange={(repeats) => change({ repeats })}
            />
          ) : null}
        </>
      )}
      <div className={styles['end']} />
    </Page>
  );
}
