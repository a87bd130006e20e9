import { photoHref } from '@/app/_parts/screen-links.ts';
import type { PlatePhoto } from '@/lib/store/plate-photos.ts';
import styles from './truck.module.css';

/** The plate as it was photographed on the truck; a tap shows the picture whole. */
export function PlatePhotoFigure({ photo }: { photo: PlatePhoto }) {
  return (
    <figure className={styles.photo}>
      <a href={photoHref(photo.hash)} target="_blank" rel="noopener">
        {/* biome-ignore lint/performance/noImgElement: the picture is shown as it is kept */}
        <img
          src={photoHref(photo.hash)}
          width={photo.widthPx}
          height={photo.heightPx}
          alt="The capacity plate on the truck"
          loading="lazy"
        />
      </a>
      <figcaption className="soft dense">
        Photo of the plate on the truck.
        {photo.isOlderThanPlate ? ' The figures above have been changed since it was put in.' : ''}
      </figcaption>
    </figure>
  );
}
