import { useState } from 'react';
import type { ProjectGlance, ProjectSpread } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import { currentStage, type Stage } from '#core/domain/stage';
import { type PackingLine, STARTING_PACKING, type TripDetails, tripWith } from '#core/domain/trip';
import { settingsOfProject } from '#core/domain/workshop';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Packing } from './packing';
import { bookedTrip, promisedBack, tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import styles from '../stage.module.css';

interface SendDialogProps {
  readonly stage: Stage;
  readonly spread: ProjectSpread;
  readonly onClose: () => void;
}

/** Sends a piece out: to whom, until when, with what, and which other tops go in the same package. */
export function SendDialog({ stage, spread, onClose }: SendDialogProps) {
  const { settings } = useWorkshop();
  const { turnaroundDays } = settingsOfProject(settings, spread.project.settingChanges);
  const contacts = useRead('contact:list', {}).value ?? [];
  const others = useRead('project:list', { archived: false }).value?.items ?? [];
  const booked = bookedTrip(stage, spread.trips);
  const [trip, setTrip] = useState<TripDetails>(() => {
    const begun = booked === null ? tripWith('') : tripDetailsOf(booked);
    const sent = { ...begun, sentOn: today() };
    return { ...sent, promisedOn: begun.promisedOn ?? promisedBack(sent, contacts, turnaroundDays) };
  });
  const [packing, setPacking] = useState<readonly PackingLine[]>(STARTING_PACKING);
  const [along, setAlong] = useState<readonly StageId[]>([]);
  const sending = useWrite('trip:send');
  const send = async () => {
    const sent = await sending.write({ stageId: stage.id, details: trip, packing, alsoStageIds: along });
    if (sent.ok) onClose();
  };
  return (
    <TripForm
      title="Send it out"
      verb="Send it out"
      trip={trip}
      contacts={contacts}
      usualDays={turnaroundDays}
      withBack={false}
      isBusy={sending.isWriting}
      problem={sending.problem}
      onChange={setTrip}
      onDone={() => void send()}
      onClose={onClose}
    >
      <div className={styles['part']}>
        <Packing lines={packing} onChange={setPacking} />
        <SamePackage tops={readyTops(others, stage)} chosen={along} onChange={setAlong} />
      </div>
    </TripForm>
  );
}

interface ReadyTop {
  readonly stageId: StageId;
  readonly name: string;
}

/** Other pieces that stand at a stage of the same kind and may leave the house. */
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
    <fieldset className={styles['part']}>
      <legend>In the same package</legend>
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
