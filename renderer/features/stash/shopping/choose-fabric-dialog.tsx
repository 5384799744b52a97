import { useId, useState } from 'react';
import type { FabricFit } from '#core/contract/shopping';
import type { FabricId } from '#core/domain/ids';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import { formatArea } from '#core/units/format-area';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { stockWords, thereOf } from '#renderer/features/stash/fabric-words';
import shared from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { whichFits } from '#renderer/text/shopping-words';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './shopping.module.css';

interface ChooseFabricDialogProps {
  readonly need: Pick<FabricNeed, 'projectId' | 'projectName' | 'source' | 'name' | 'amount'>;
  readonly onClose: () => void;
}

/** Which fabric of the stash fits a need, the best first; what is chosen is set aside with Enter. */
export function ChooseFabricDialog({ need, onClose }: ChooseFabricDialogProps) {
  const { projectId, source, name } = need;
  const [search, setSearch] = useState('');
  const [picked, setPicked] = useState<FabricId | null>(null);
  const { value: found, problem } = useRead(
    'shopping:fits',
    { projectId, source, name, search },
    { keepsPrevious: true },
  );
  const setting = useWrite('shopping:set-aside');
  const choosing = useWrite('shopping:choose');
  const group = useId();
  const fits = found?.fits ?? [];
  const chosen = fits.find(({ fabric }) => fabric.id === picked) ?? fits[0];
  const setAside = async () => {
    if (chosen === undefined) return;
    const takes = chosen.takes.flatMap(({ pieceId, more }) =>
      more > 0 ? [{ pieceId, length: lengthFromUnits(more) }] : [],
    );
    const answer = await setting.write({
      ...{ projectId, source, name, takes },
      fabricId: chosen.fabric.id,
      on: today(),
    });
    if (answer.ok) onClose();
  };
  const takeNewFabric = async () => {
    const answer = await choosing.write({ projectId, source, name, choice: { kind: 'new-fabric' } });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={`${whichFits(need)} ${name}`}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button look="quiet" disabled={choosing.isWriting} onClick={() => void takeNewFabric()}>
            New fabric for it
          </Button>
          <Button onClick={onClose}>Not now</Button>
          <Button
            look="main"
            type="submit"
            form="choose-fabric"
            disabled={chosen === undefined || setting.isWriting}
          >
            Set it aside
          </Button>
        </>
      }
    >
      <Form id="choose-fabric" className={shared['stack']} onSubmit={() => void setAside()}>
        <p className={styles['quiet']}>
          For {need.projectName}. What is enough and leaves least over stands first; Enter sets it aside.
        </p>
        <TextField
          label="Find the fabric"
          help="Any words: name, color, print, shelf."
          value={search}
          maximum={200}
          autoFocus
          onChange={setSearch}
        />
        {found !== undefined && fits.length === 0 && (
          <p className={styles['quiet']}>
            {search.trim() === ''
              ? 'Nothing in the stash would do for this.'
              : 'Nothing like that would do for this.'}
          </p>
        )}
        <fieldset className={styles['found']}>
          <legend className={styles['quiet']}>Which fabric of the stash</legend>
          {fits.map((fit) => (
            <label key={fit.fabric.id} className={styles['option']}>
              <input
                type="radio"
                name={group}
                checked={fit === chosen}
                onChange={() => setPicked(fit.fabric.id)}
              />
              <span className={styles['swatch']} style={{ backgroundColor: fit.fabric.swatch }} />
              <FitFabric fit={fit} />
              <FitVerdict fit={fit} />
            </label>
          ))}
        </fieldset>
      </Form>
      <ProblemNotice problem={problem ?? setting.problem ?? choosing.problem} />
    </Dialog>
  );
}

function FitFabric({ fit }: { readonly fit: FabricFit }) {
  const { length } = useDisplay();
  const { fabric, pieces, isHeld } = fit;
  const places = [...new Set([...pieces.map(({ place }) => place), fabric.place])].filter(
    (one) => one !== '',
  );
  const under = [
    stockWords(thereOf(pieces), length),
    places.length === 0 ? 'no place noted' : places.join('; '),
    ...(isHeld ? ['set aside for this piece'] : []),
  ];
  return (
    <span>
      <strong>{fabric.name}</strong>
      <br />
      <span className={styles['quiet']}>
        <Typeset text={under.join(' · ')} />
      </span>
    </span>
  );
}

function FitVerdict({ fit }: { readonly fit: FabricFit }) {
  const { length } = useDisplay();
  const { verdict, leftOver, shortBy, takes } = fit;
  if (verdict === 'short') {
    const words = shortBy === null ? 'Too narrow' : `Short by ${formatLength(shortBy, length, 'up')}`;
    return (
      <span className={styles['short']}>
        <Typeset text={words} />
      </span>
    );
  }
  const from = verdict === 'one-piece' ? 'Enough in one piece' : `Enough from ${String(takes.length)} pieces`;
  return (
    <span>
      <span className={styles['fit']}>{from}</span>
      <span className={styles['quiet']}>
        <Typeset text={`leaves ${formatArea(leftOver, length)}`} />
      </span>
    </span>
  );
}
