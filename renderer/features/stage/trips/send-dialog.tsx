import type { ProjectGlance, ProjectSpread } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { currentStage, type Stage } from '#core/domain/stage';
import { type PackingLine, STARTING_PACKING, type TripDetails, tripWith } from '#core/domain/trip';
import { useRead, useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { useDialogSave } from '#renderer/ui/page/dialog-form';
import { Packing } from './packing';
import { priceAsked, reservedTrip, promisedBack, tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import layout from '#renderer/ui/page/layout.module.css';

interface SendDialogProps {
  readonly stage: Stage;
  readonly spread: ProjectSpread;
  readonly measurements: Measurements;
  readonly onClose: () => void;
}

/** Sends a project out: to which quilter, until when, with what, and which other projects go in the same package. */
export function SendDialog({ stage, spread, measurements, onClose }: SendDialogProps) {
  const { turnaroundDays } = measurements.settings;
  const contacts = useRead('contact:list', {}).value ?? [];
  const others = useRead('project:list', { archived: false }).value?.items ?? [];
  const reserved = reservedTrip(stage, spread.trips);
  const draft = useFormDraft(`send ${stage.id}`);
  const [trip, setTrip] = useDraftValue<TripDetails>(draft, 'trip', () => {
    const details = reserved === null ? tripWith('') : tripDetailsOf(reserved);
    const sent = { ...details, sentOn: today() };
    return { ...sent, promisedOn: details.promisedOn ?? promisedBack(sent, contacts, turnaroundDays) };
  });
  const [packing, setPacking] = useDraftValue<readonly PackingLine[]>(draft, 'packing', STARTING_PACKING);
  const [along, setAlong] = useDraftValue<readonly StageId[]>(draft, 'along', []);
  const saving = useDialogSave(useWrite('trip:send'), onClose, draft);
  return (
    <TripForm
      draft={draft}
      title="Send it out"
      verb="Send"
      trip={trip}
      contacts={contacts}
      usualDays={turnaroundDays}
      withBack={false}
      priceOf={(name) => priceAsked(name, contacts, measurements)}
      saving={saving}
      onChange={setTrip}
      onSave={() => saving.save({ stageId: stage.id, details: trip, packing, alsoStageIds: along })}
      onClose={onClose}
    >
      <div className={layout['part']}>
        <Packing packageId={stage.id} lines={packing} onChange={setPacking} />
        <SamePackage tops={readyTops(others, stage)} chosen={along} onChange={setAlong} />
      </div>
    </TripForm>
  );
}

interface ReadyTop {
  readonly stageId: StageId;
  readonly name: string;
}

/** Other projects whose current stage is of the same kind and ready to be sent. */
function readyTops(glances: readonly ProjectGlance[], sent: Stage): readonly ReadyTop[] {
  return glances.flatMap(({ project, stages }) => {
    const now = currentStage(stages);
    const isReady =
      now !== null &&
      now.kind === sent.kind &&
      now.projectId !== sent.projectId &&
      (now.state === 'in-hand' || now.state === 'planned') &&
      !now.isGateShut;
    return isReady ? [{ stageId: now.id, name: project.name }] : [];
  });
}

interface SamePackageProps {
  readonly tops: readonly ReadyTop[];
  readonly chosen: readonly StageId[];
  readonly onChange: (chosen: readonly StageId[]) => void;
}

function SamePackage({ tops, chosen, onChange }: SamePackageProps) {
  if (tops.length === 0) return null;
  return (
    <fieldset className={layout['part']}>
      <legend className={layout['legend']}>In the same package</legend>
      {tops.map(({ stageId, name }) => (
        <Checkbox
          key={stageId}
          label={name}
          isChecked={chosen.includes(stageId)}
          onChange={(isAlong) =>
            onChange(isAlong ? [...chosen, stageId] : chosen.filter((one) => one !== stageId))
          }
        />
      ))}
    </fieldset>
  );
}
