// Loads the SQLite addon and makes it work across a garbage collection: one built against the wrong headers loads, runs,
// and ends the process at the first collection.
const Database = require('better-sqlite3');

const database = new Database(':memory:');
for (let round = 0; round < 500; round += 1) {
  const row = database.prepare('SELECT ? AS value').get(round);
  if (row.value !== round) throw new Error(`wrong answer: ${JSON.stringify(row)}`);
}
globalThis.gc();
database.close();
globalThis.gc();
