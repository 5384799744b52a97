import { useOpening } from '#renderer/bridge/workshop';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { Backups, MakeBackupButton } from './backups';
import { BenchHours } from './bench-hours';
import { Settings } from './settings';
import { OwnRates } from './own-rates';
import { OwnSeams } from './own-seams';
import { StagePlans } from './stage-plans';
import { WholeWorkshop } from './whole-workshop';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

/** The settings, stage plans and backups of the workshop, and where its file is. */
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
        under="Settings for all your projects. You can change them for a single project on its own page."
        action={<MakeBackupButton />}
      >
        <div className={styles['parts']}>
          <WholeWorkshop workshop={workshop} />
          <Settings workshop={workshop} />
          <BenchHours workshop={workshop} />
          <OwnRates />
          <OwnSeams />
          <StagePlans />
          <Backups />
          <section className={layout['stack']} aria-label="About this notebook">
            <h2>Where it is stored</h2>
            <p className={styles['file']}>{file}</p>
            <p className={layout['quiet']}>
              Ringbound {programVersion}. Costs and prices are worked out from what you enter. Tax and
              business rules are local, and nothing here is advice on them.
            </p>
          </section>
        </div>
      </Page>
    </SettingsDisplay>
  );
}
