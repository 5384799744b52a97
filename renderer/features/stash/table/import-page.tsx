import { useNavigate } from 'react-router';
import { useWrite } from '#renderer/bridge/query';
import { Choice } from '#renderer/ui/fields/choice';
import { Button } from '#renderer/ui/page/button';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { Page } from '#renderer/ui/page/page';
import { CellsToMend } from './cells-to-mend';
import { ImportColumns } from './import-columns';
import { ImportPreview } from './import-preview';
import { ImportSource } from './import-source';
import styles from './import.module.css';
import { rememberMapping } from './remembered-columns';
import { useTableToImport } from './use-table-to-import';

/** Imports a table of fabrics: paste it or choose a file, check what the columns mean, look at the result, add it to the stash. */
export function ImportPage() {
  const input = useTableToImport();
  const { table, reading, isGiven } = input;
  const importing = useWrite('table:import');
  const navigate = useNavigate();
  const addToStash = async () => {
    const answer = await importing.write({ table });
    if (!answer.ok) return;
    if (reading !== undefined) rememberMapping(reading);
    input.draft.forget();
    void navigate('/stash');
  };
  const canImport =
    input.isUpToDate && reading !== undefined && reading.adds.fabrics + reading.adds.pieces > 0;
  const hasRepeats = reading !== undefined && reading.repeatCount + reading.alreadyHere > 0;
  return (
    <Page
      title="Import a spreadsheet"
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <>
          <DiscardEntries draft={input.draft} />
          <Button look="main" disabled={!canImport || importing.isWriting} onClick={() => void addToStash()}>
            Add to stash
          </Button>
        </>
      }
    >
      <ImportSource input={input} problem={importing.problem ?? input.problem} />
      {isGiven && reading !== undefined && (
        <>
          <ImportColumns
            reading={reading}
            onMap={input.mapColumn}
            onTitles={(hasTitles) => input.change({ hasTitles, mapping: null })}
          />
          <CellsToMend draft={input.draft} reading={reading} onMend={input.mend} />
          <ImportPreview reading={reading} onMore={input.showMore} />
          {(reading.sameNameCount > 0 || table.sameNames === 'one-fabric') && (
            <Choice
              label="Rows with the same name and color, but other details"
              value={table.sameNames}
              options={[
                { value: 'apart', words: 'Are different fabrics' },
                { value: 'one-fabric', words: 'Are one fabric' },
              ]}
              onChange={(sameNames) => input.change({ sameNames })}
            />
          )}
          {(hasRepeats || table.repeats === 'add') && (
            <Choice
              label="Rows already in your stash or listed twice"
              value={table.repeats}
              options={[
                { value: 'leave-out', words: 'Leave out' },
                { value: 'add', words: 'Add anyway' },
              ]}
              onChange={(repeats) => input.change({ repeats })}
            />
          )}
        </>
      )}
      <div className={styles['end']} />
    </Page>
  );
}
