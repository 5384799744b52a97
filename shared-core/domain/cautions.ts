/** One sentence for each danger, so that every page, sheet and calculator warns in the same words. */
export const CAUTIONS = {
  rotaryBlade:
    'Close the blade every time you set it down. Cut away from yourself, with your hand flat and clear of the ruler’s edge.',
  scissors: 'Scissors: cut away from your other hand, and lay them down closed.',
  iron: 'Irons and steam burn: press on a heat-safe surface, and switch the iron off when you step away.',
  handNeedle: 'Count hand needles before you start and when you stop; never hold one in your mouth.',
  machineNeedle:
    'Keep your fingers clear of the moving needle, and take your foot off the pedal before you thread or change it.',
  pins: 'Count pins and clips in and out, and keep them away from children and pets.',
  usedBlades: 'Wrap used blades and bent needles in a closed case before you throw them out.',
  flame: 'Use a flame only inside a tall glass, with the fabric well clear of it, and never leave it alone.',
  tree: 'Near tree lights, a candle or a stove: keep fabric clear of heat and flame, and follow the instructions of whatever gives the heat and your local fire rules.',
  crib: 'Keep quilts and loose fabric out of a baby’s sleep space.',
} as const;
