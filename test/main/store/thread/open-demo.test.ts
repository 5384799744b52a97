import path from 'node:path';
import { expect, test } from 'vitest';
import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import { currentStage } from '#core/domain/stage';
import { openDemo } from '#main/store/thread/open-demo';
import { answerCall } from '#main/store/thread/answer-call';
import { closeStore } from '#main/store/opening/open-store';
import { systemClockAndIds } from '#main/store/base/clock-and-ids';
import { temporaryFolder } from '#test/helpers/workshop';

test('the demo workshop has projects in many stages and two at the quilter, one of them overdue', () => {
  const opened = openDemo({
    file: path.join(temporaryFolder(), 'workshop.sqlite'),
    programVersion: '0.0.0',
    isDemo: true,
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  const context = opened.value;
  const call = <Name extends StoreChannelName>(
    name: Name,
    input: ChannelInput<Name>,
  ): ChannelOutput<Name> => {
    const answer = answerCall(context, name, input);
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    return answer.value as ChannelOutput<Name>;
  };

  const open = call('project:list', { archived: false }).items;
  const kinds = new Set(open.map(({ stages }) => currentStage(stages)?.kind));
  const away = open.filter(({ stages }) => currentStage(stages)?.state === 'out');
  const promised = away.map(({ trips }) => trips.find(({ backOn }) => backOn === null)?.promisedOn ?? '');
  const today = systemClockAndIds().today();
  expect(open.length).toBeGreaterThanOrEqual(6);
  expect(kinds.size).toBeGreaterThanOrEqual(5);
  expect(away).toHaveLength(2);
  expect(promised.filter((day) => day < today)).toHaveLength(1);

  const fabrics = call('fabric:list', { search: '' });
  const pieces = fabrics.items.flatMap((one) => one.pieces);
  expect(fabrics.total).toBe(30);
  expect(pieces.filter(({ kind, there }) => kind === 'leftover' && there > 0).length).toBeGreaterThan(5);
  expect(fabrics.items.every(({ fabric }) => fabric.photoId !== null)).toBe(true);
  expect(call('project:list', { archived: true }).total).toBe(1);
  expect(call('change:state', {})).toEqual({ undo: null, redo: null });
  closeStore(context.store);
});
