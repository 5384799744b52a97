import { readFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';
import type { PatchType } from '#core/cutting/tree/cut-plan';
import type { Orientation } from './bench-options';

const values = z.object({
  '2-stage': z.number().optional(),
  '3-stage': z.number().optional(),
  guillotine: z.number().optional(),
  free: z.number().optional(),
});

const bounds = z.object({ best: z.number(), twoStageLP: z.number().optional() });

const instanceFile = z.object({
  family: z.string(),
  instances: z.array(
    z.object({
      name: z.string(),
      width: z.number(),
      items: z.array(z.object({ w: z.number(), h: z.number(), copies: z.number() })),
      reachable: z.object({ rotatable: values, fixed: values }),
      lowerBound: z.object({ rotatable: bounds, fixed: bounds }),
    }),
  ),
});

export type BenchInstance = z.infer<typeof instanceFile>['instances'][number] & { readonly family: string };

/** All instances of a folder of JSON files, in order of file and place. */
export async function readInstances(folder: string): Promise<BenchInstance[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.json')).sort();
  const files = await Promise.all(
    names.map(async (name) =>
      instanceFile.parse(JSON.parse(await readFile(path.join(folder, name), 'utf8'))),
    ),
  );
  return files.flatMap(({ family, instances }) => instances.map((instance) => ({ ...instance, family })));
}

/** The instance's items as patches; either all may turn or none. */
export function instancePatches(instance: BenchInstance, orientation: Orientation): PatchType[] {
  return instance.items.map(({ w, h, copies }) => ({
    width: w,
    height: h,
    copies,
    mayTurn: orientation === 'rotatable',
  }));
}
