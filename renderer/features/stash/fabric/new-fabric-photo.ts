import { useLayoutEffect, useRef, useState } from 'react';
import { NO_COLOR } from '#core/domain/stash';
import type { NewFabricDraft } from '#renderer/features/stash/fabric-draft';
import { photoColor } from './photo-color';

const NO_PHOTO_COLOR = { swatch: NO_COLOR, words: '' };

/** The photo of a fabric that is not saved yet. It fills in the color, but never replaces a color the maker chose or typed. */
export function useNewFabricPhoto(draft: NewFabricDraft, setDraft: (draft: NewFabricDraft) => void) {
  const [photo, setPhoto] = useState<File | null>(null);
  const [isPicture, setIsPicture] = useState(true);
  const filledIn = useRef(NO_PHOTO_COLOR);
  const latest = useRef(draft);
  useLayoutEffect(() => {
    latest.current = draft;
  });
  const fillInColor = async (file: File) => {
    const seen = await photoColor(file);
    if (seen === null) return;
    const { fabric, piece } = latest.current;
    const isOwnColor = fabric.swatch !== filledIn.current.swatch;
    const isOwnWords = fabric.colorWords !== filledIn.current.words;
    filledIn.current = seen;
    const swatch = isOwnColor ? fabric.swatch : seen.swatch;
    const colorWords = isOwnWords ? fabric.colorWords : seen.words;
    setDraft({ fabric: { ...fabric, swatch, colorWords }, piece });
  };
  return {
    photo,
    /** The file turned out not to be a picture. */
    isRefused: photo !== null && !isPicture,
    setIsPicture,
    choose: (file: File | null) => {
      setIsPicture(true);
      setPhoto(file);
      if (file !== null) void fillInColor(file);
    },
    clear: () => {
      setPhoto(null);
      filledIn.current = NO_PHOTO_COLOR;
    },
  };
}
