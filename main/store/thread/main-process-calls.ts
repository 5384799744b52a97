import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';
import type { StoreContext } from './store-context';
import { readTransaction, writeTransaction } from '../base/handles';
import { closeStore } from '../opening/open-store';
import { findPatternFile } from '../projects/patterns';
import { findPhoto, saveThumbnail } from '../projects/photos';
import { stashAsText } from '../import-export/stash-export';
import type { MainProcessCalls, MainProcessCallName } from './protocol';

type MainProcessHandlers = {
  readonly [Name in MainProcessCallName]: (
    context: StoreContext,
    input: MainProcessCalls[Name]['input'],
  ) => Result<MainProcessCalls[Name]['output'], Problem>;
};

const mainProcessHandlers: MainProcessHandlers = {
  'main:find-photo': ({ store, folders }, { photoId }) => findPhoto(store, folders.photos, photoId),
  'main:save-thumbnail': ({ store }, { hash, bytes }) => {
    writeTransaction(store, (writable) => saveThumbnail(writable, hash, bytes));
    return success(null);
  },
  'main:find-pattern-file': ({ store, folders }, { projectId }) =>
    findPatternFile(store, folders.photos, projectId),
  'main:offer-table': ({ store, tables }, { file }) => {
    const token = store.clockAndIds.newId();
    tables.set(token, file);
    return success({ token });
  },
  'main:export-stash': ({ store }, { as }) => success(readTransaction(store, () => stashAsText(store, as))),
  'main:close': ({ store }) => {
    closeStore(store);
    return success(null);
  },
};

export function isMainProcessCall(name: string): name is MainProcessCallName {
  return Object.hasOwn(mainProcessHandlers, name);
}

/** Answers a call from the main process. Its input is not checked: the compiler checks it. */
export function answerMainProcessCall(
  context: StoreContext,
  name: MainProcessCallName,
  input: unknown,
): Result<unknown, Problem> {
  const handle = mainProcessHandlers[name] as (
    context: StoreContext,
    input: unknown,
  ) => Result<unknown, Problem>;
  try {
    return handle(context, input);
  } catch (error) {
    return failure<Problem>({
      code: 'unexpected',
      detail: messageOf(error),
    });
  }
}
