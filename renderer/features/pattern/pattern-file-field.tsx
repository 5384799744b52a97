import { type ChangeEvent, useRef } from 'react';
import type { ProjectId } from '#core/domain/ids';
import type { PatternFile } from '#core/domain/pattern';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';

interface PatternFileFieldProps {
  readonly projectId: ProjectId;
  readonly file: PatternFile | null;
}

/** A PDF or picture of the pattern. It is kept beside the workshop file and opened by the system’s own program. */
export function PatternFileField({ projectId, file }: PatternFileFieldProps) {
  const picker = useRef<HTMLInputElement>(null);
  const setting = useWrite('pattern:set-file');
  const opening = useWrite('shell:open-pattern');
  const pick = async (event: ChangeEvent<HTMLInputElement>) => {
    const [chosen] = event.target.files ?? [];
    event.target.value = '';
    if (chosen === undefined) return;
    const bytes = new Uint8Array(await chosen.arrayBuffer());
    await setting.write({ projectId, file: { name: chosen.name.slice(-200), bytes } });
  };
  return (
    <div className={layout['part']}>
      <span className={layout['quiet']}>{file === null ? 'PDF or picture of the pattern' : file.name}</span>
      <div className={layout['row']}>
        {file !== null && (
          <Button isSmall onClick={() => void opening.write({ projectId })}>
            Open the file
          </Button>
        )}
        <Button isSmall disabled={setting.isWriting} onClick={() => picker.current?.click()}>
          {file === null ? 'Add a file' : 'Choose another'}
        </Button>
        {file !== null && (
          <Button
            look="quiet"
            isSmall
            disabled={setting.isWriting}
            onClick={() => void setting.write({ projectId, file: null })}
          >
            Delete the file
          </Button>
        )}
      </div>
      <input
        ref={picker}
        type="file"
        accept="application/pdf,image/jpeg,image/png,image/webp"
        hidden
        aria-label="File of the pattern"
        onChange={(event) => void pick(event)}
      />
      <ProblemNotice problem={setting.problem ?? opening.problem} />
    </div>
  );
}
