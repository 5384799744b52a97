import { Link } from 'react-router';
import type { Problem } from '#core/contract/problem';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import type { TableToImport } from './use-table-to-import';

const ENCODINGS = [
  { value: 'utf-8', words: 'UTF-8' },
  { value: 'windows-1252', words: 'Western (Windows-1252)' },
  { value: 'utf-16le', words: 'UTF-16 (little endian)' },
  { value: 'utf-16be', words: 'UTF-16 (big endian)' },
] as const;

interface ImportSourceProps {
  readonly input: TableToImport;
  readonly problem: Problem | null;
}

/** Where the table comes from: pasted text or a file. */
export function ImportSource({ input, problem }: ImportSourceProps) {
  const { table, fileName, isGiven, paste, chooseFile, change } = input;
  return (
    <>
      <section className={layout['stack']} aria-label="The table">
        {fileName === null ? (
          <TextField
            label="Paste a table"
            help="From a spreadsheet or a list: a row for each piece of fabric, with at least a name."
            value={table.source.kind === 'text' ? table.source.text : ''}
            maximum={4_000_000}
            isLong
            onChange={paste}
          />
        ) : (
          <p>
            From the file <strong>{fileName}</strong>
          </p>
        )}
        <div className={layout['row']}>
          <Button onClick={() => void chooseFile()}>
            {fileName === null ? 'Choose a file' : 'Choose another file'}
          </Button>
          {fileName !== null && (
            <Button look="quiet" onClick={() => paste('')}>
              Paste instead
            </Button>
          )}
        </div>
      </section>
      {isGiven && <ProblemNotice problem={problem} />}
      {isGiven && table.source.kind === 'file' && (
        <Select
          label="Text encoding"
          value={table.encoding}
          options={ENCODINGS}
          onChange={(encoding) => change({ encoding })}
        />
      )}
      {!isGiven && (
        <p className={layout['quiet']}>
          Sizes and dates are read as you usually write them: 1 1/4 yd, half yard, 45 x 55 cm, FQ x 3;
          3/14/2027, Dec 2026. You can also <Link to="/stash/export">export your whole stash</Link> and import
          it again later.
        </p>
      )}
    </>
  );
}
