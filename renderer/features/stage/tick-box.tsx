import { useState } from 'react';
import { type ChecklistItem, isClosed, isKnownByStages, type Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

interface TickBoxProps {
  readonly item: ChecklistItem;
  /** The stages of its project, which know some of the lines. */
  readonly stages: readonly Stage[];
}

/**
 * A checklist line with its box. The tick shows at once and stays until the store’s data says the same, whatever else is being
 * read meanwhile; it is removed if the store refuses it.
 */
export function TickBox({ item, stages }: TickBoxProps) {
  const [pressed, setPressed] = useState<boolean | null>(null);
  const ticking = useWrite('checklist:tick');
  if (pressed === item.isTicked) setPressed(null);
  const isKnown = isKnownByStages(item, stages);
  const isDone = isClosed(item, stages);
  const tick = async (ticked: boolean) => {
    setPressed(ticked);
    const answer = await ticking.write({ checklistItemId: item.id, ticked });
    if (!answer.ok) setPressed(null);
  };
  return (
    <>
      <Checkbox
        label={item.text}
        isChecked={pressed ?? isDone}
        isDisabled={isKnown}
        help={isKnown ? knownWords(isDone) : undefined}
        onChange={(ticked) => void tick(ticked)}
      />
      <ProblemNotice problem={ticking.problem} />
    </>
  );
}

function knownWords(isDone: boolean): string {
  return isDone ? 'Checked off by its own stage' : 'Checks itself off when its own stage is done';
}
