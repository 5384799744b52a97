/** Measurements by name; each prints one JSON line a figure. They are loaded when asked for, so that one needs no other's means. */
const BENCHES: Readonly<Record<string, () => Promise<(args: readonly string[]) => Promise<void> | void>>> = {
  store: async () => (await import('./store/store-bench')).runStoreBench,
  'stash-window': async () => (await import('./store/scroll-bench')).runScrollBench,
  core: async () => (await import('./core-bench')).runCoreBench,
  planner: async () => (await import('./planner/planner-bench')).runPlannerBench,
  cutting: async () => (await import('./cutting/cutting-bench')).runCuttingBench,
  'cutting-window': async () => (await import('./cutting/window-bench')).runWindowBench,
  'cutting-jobs': async () => (await import('./cutting/jobs-bench')).runJobsBench,
  'cutting-peers': async () => (await import('./cutting/cutting-peers')).runCuttingPeers,
};

async function main([name, ...args]: readonly string[]): Promise<number> {
  const load = name !== undefined && Object.hasOwn(BENCHES, name) ? BENCHES[name] : undefined;
  if (load === undefined) {
    console.error(`bench: read "${name ?? ''}", expected one of: ${Object.keys(BENCHES).join(', ')}`);
    return 2;
  }
  const run = await load();
  await run(args);
  return 0;
}

process.exitCode = await main(process.argv.slice(2));
