import path from 'node:path';
import { makeBackup } from '#main/files/backups';
import { migrations } from '#main/store/migrations/migrations';
import { openStore } from '#main/store/opening/open-store';
import { systemClockAndIds } from '#main/store/base/clock-and-ids';

// A child process for the tests. It starts one more migration and is killed in the middle of it.
const [file = ''] = process.argv.slice(2);
const clockAndIds = systemClockAndIds();
openStore(file, {
  clockAndIds,
  migrations: [
    ...migrations,
    {
      version: 9990,
      says: 'A migration that never finishes',
      apply: (database) => {
        database.exec('CREATE TABLE half_done (x); DROP TABLE stage_event; DELETE FROM current_change');
        database.pragma('cache_spill = 1');
        process.kill(process.pid, 'SIGKILL');
      },
    },
  ],
  backUp: (database, why) =>
    makeBackup(database, path.join(path.dirname(file), 'backups'), why, Date.UTC(2020, 1, 1)),
});
