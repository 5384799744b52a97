import { useOpening } from '#renderer/bridge/workshop';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { Backups, MakeBackupButton } from './backups';
import { BenchHours } from './bench-hours';
import { Settings } from './settings';
import { OwnRates } from './own-rates';
import { StagePlans } from './stage-plans';
import { WholeWorkshop } from './whole-workshop';
import styles from './workshop.module.css';

/** What holds for the whole workshop: its settings, its stage plans, and where all of it is kept. */
export function WorkshopPage() {
  const opening = useOpening();
  if (opening === undefined) {
    return (
      <Page title="Workshop">
        <p />
      </Page>
    );
  }
  const { workshop, file, programVersion } = opening;
  return (
    <SettingsDisplay settings={workshop.settings}>
      <Page
        title="Workshop"
        under="What holds for every piece. A project may depart from these settings on its own page."
        action={<MakeBackupButton />}
      >
        <div className={styles['parts']}>
          <WholeWorkshop workshop={workshop} />
          <Settings workshop={workshop} />
          <BenchHours workshop={workshop} />
          <OwnRates />
          <StagePlans />
          <Backups />
          <section className={styles['part']} aria-label="About this notebook">
            <h2>Where it is kept</h2>
            <p className={styles['file']}>{file}</p>
            <p className={styles['quiet']}>
              Ringbound {programVersion}. Figures of cost and price are worked out from what you entered. Tax
              rules are local, and nothing here is advice on them.
            </p>
          </section>
        </div>
      </Page>
    </SettingsDisplay>
  );
}
