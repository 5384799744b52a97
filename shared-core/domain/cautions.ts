/**
 * The usual cautions, one sentence for each tool or danger. Every page, sheet, calculator and checklist takes its caution from
 * here, so that all of them warn in the same words. Sources: published home-sewing safety lessons for the tools, published
 * safe-sleep advice for the crib, common practice for the rest (`test/sources.md`).
 */
export const CAUTIONS = {
  rotaryBlade:
    'Close the blade every time you set it down. Cut away from yourself, with your hand flat and clear of the ruler’s edge.',
  scissors: 'Keep your other hand out of the path of the scissors, and close them when you set them down.',
  iron: 'Irons and steam burn: press on a heat-safe surface, and switch the iron off when you step away.',
  handNeedle: 'Count your needles before you start and when you stop, and never hold one in your mouth.',
  machineNeedle:
    'Keep your fingers clear of the moving needle, and take your foot off the pedal before you thread or change it.',
  pins: 'Count pins and clips in and out, and keep them away from children and pets.',
  usedBlades: 'Wrap used blades and broken needles, close them in a case, then throw them out.',
  cuttingTable:
    'Keep the cutter away from children and pets. Stand at a flat mat in good light, and stop when you are tired.',
  flame:
    'Use a candle only inside a tall glass, with the fabric well clear of it, and never leave it alone. Follow your local fire rules.',
  tree: 'Near tree lights, a candle or a stove, keep fabric clear of heat and flame. Follow the instructions of whatever gives the heat and your local fire rules.',
  crib: 'Keep quilts and loose fabric out of a baby’s sleep space.',
} as const;

export type Caution = keyof typeof CAUTIONS;
