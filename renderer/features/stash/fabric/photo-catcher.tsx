import { type ReactNode, useRef } from 'react';
import { Button } from '#renderer/ui/page/button';

interface PhotoCatcherProps {
  readonly className?: string | undefined;
  readonly onCatch: (file: File) => void;
  readonly children: ReactNode;
}

/** A part of the page that takes a picture when one is dropped on it or pasted into it. */
export function PhotoCatcher({ className, onCatch, children }: PhotoCatcherProps) {
  return (
    <div
      className={className}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        const file = event.dataTransfer.files[0];
        if (file !== undefined) onCatch(file);
      }}
      onPaste={(event) => {
        const file = event.clipboardData.files[0];
        if (file === undefined) return;
        event.preventDefault();
        onCatch(file);
      }}
    >
      {children}
    </div>
  );
}

interface PhotoButtonProps {
  readonly words: string;
  readonly isDisabled?: boolean;
  readonly onChoose: (file: File) => void;
}

/** Opens the system's file dialog to choose a picture. */
export function PhotoButton({ words, isDisabled = false, onChoose }: PhotoButtonProps) {
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button isSmall disabled={isDisabled} onClick={() => picker.current?.click()}>
        {words}
      </Button>
      <input
        ref={picker}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        hidden
        aria-label="Photo file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) onChoose(file);
        }}
      />
    </>
  );
}
