'use client';

import { useEffect, useId, useState } from 'react';
import { photoHref } from '@/app/_parts/screen-links.ts';
import { acceptPhoto } from '@/lib/photo/accept-photo.ts';
import type { PlatePhoto } from '@/lib/store/plate-photos.ts';
import { PHOTO_ADVICE, photoRefusedSentence } from '@/lib/words/entry.ts';
import styles from './plate-editor.module.css';

export type PhotoChoice = { kind: 'keep' } | { kind: 'drop' } | { kind: 'put'; file: File };

/** The photo of the plate beside the grid: the one that is kept, or one that was just chosen and goes with the form. */
export function PhotoPart({
  kept,
  choice,
  onChange,
}: {
  kept: PlatePhoto | null;
  choice: PhotoChoice;
  onChange: (choice: PhotoChoice) => void;
}) {
  const id = useId();
  const [fault, setFault] = useState<string | null>(null);
  const [preview, setPreview] = useState<string | null>(null);
  const file = choice.kind === 'put' ? choice.file : null;
  useEffect(() => {
    if (file === null) return setPreview(null);
    const address = URL.createObjectURL(file);
    setPreview(address);
    return () => URL.revokeObjectURL(address);
  }, [file]);
  const shown =
    choice.kind === 'put' ? preview : choice.kind === 'keep' && kept !== null ? photoHref(kept.hash) : null;
  const choose = async (chosen: File | undefined) => {
    if (chosen === undefined) return;
    const reading = acceptPhoto(new Uint8Array(await chosen.arrayBuffer()));
    setFault(reading.ok ? null : photoRefusedSentence(reading.why));
    if (reading.ok) onChange({ kind: 'put', file: chosen });
  };
  return (
    <section className={`stack ${styles.photo}`} aria-labelledby={`${id}-h`}>
      <h3 id={`${id}-h`}>Photo of the plate</h3>
      {shown === null ? null : (
        // biome-ignore lint/performance/noImgElement: the picture is shown as it is kept
        <img src={shown} alt="The capacity plate on the truck" />
      )}
      {choice.kind === 'drop' ? <p>The photo is taken away when you save.</p> : null}
      {choice.kind === 'keep' && kept?.isOlderThanPlate ? (
        <p>The figures of this plate have been changed since the photo was put in.</p>
      ) : null}
      <div className="field">
        <label htmlFor={`${id}-file`}>
          {shown === null ? 'Take or choose a photo' : 'Take or choose another'}
        </label>
        <input
          id={`${id}-file`}
          type="file"
          accept="image/jpeg,image/png,image/webp"
          aria-invalid={fault !== null}
          aria-describedby={`${id}-advice`}
          onChange={(event) => choose(event.target.files?.[0])}
        />
        <span
          id={`${id}-advice`}
          className={fault === null ? 'soft dense' : 'fault'}
          role={fault === null ? undefined : 'alert'}
        >
          {fault ?? PHOTO_ADVICE}
        </span>
      </div>
      <div className="row">
        {choice.kind === 'keep' && kept !== null ? (
          <button type="button" onClick={() => onChange({ kind: 'drop' })}>
            Take the photo away
          </button>
        ) : null}
        {choice.kind === 'keep' ? null : (
          <button type="button" onClick={() => onChange({ kind: 'keep' })}>
            {kept === null ? 'Without this photo' : 'Keep the photo as it was'}
          </button>
        )}
      </div>
    </section>
  );
}
