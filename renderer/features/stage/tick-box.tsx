import { useState } from 'react';
import type { ChecklistItem } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

interface TickBoxProps {
  readonly item: ChecklistItem;
  /** Ticked, or settled by the stage that settles it. */
  readonly isClosed: boolean;
}

/**
 * A checklist line with its box. The tick shows at once and stays until the store’s data says the same, whatever else is being
 * read meanwhile; it is removed if the store refuses it.
 */
export function TickBox({ item, isClosed }: TickBoxProps) {
  const [pressed, setPressed] = useState<boolean | null>(null);
  const ticking = useWrite('checklist:tick');
  if (pressed === item.isTicked) setPressed(null);
  const isClosedByStage = isClosed && !item.isTicked && pressed === null;
  const tick = async (ticked: boolean) => {
    setPressed(ticked);
    const answer = await ticking.write({ checklistItemId: item.id, ticked });
    if (!answer.ok) setPressed(null);
  };
  return (
    <>
      <Checkbox
        label={item.text}
        isChecked={pressed ?? isClosed}
        isDisabled={isClosedByStage}
        help={isClosedByStage ? 'Checked off by its own stage' : undefined}
        onChange={(ticked) => void tick(ticked)}
      />
      <ProblemNotice problem={ticking.problem} />
    </>
  );
}
