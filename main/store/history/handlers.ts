import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { goToChange, listChanges, redoChange, undoChange, undoState } from './changes';

export const changeHandlers = {
  'change:state': ({ store }) => success(undoState(store)),
  'change:list': ({ store }) => success(listChanges(store)),
  'change:go-to': ({ store }, input) => goToChange(store, input.changeId),
  'change:undo': ({ store }, input) => undoChange(store, input.changeId),
  'change:redo': ({ store }) => redoChange(store),
} satisfies Handlers<'change'>;
