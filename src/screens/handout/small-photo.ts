/** Longest side of a kept photo, pixels. source: our own; sharp on a phone, and a few hundred kilobytes at most. */
const LONGEST_PX = 1280;
/** Tried in turn until the picture is small enough for its row. source: our own. */
const QUALITIES = [0.82, 0.7, 0.55, 0.4];
const MOST_BASE64 = 700_000;

export interface SmallPhoto {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly jpeg: string;
}

/** A picture file drawn again as a small JPEG, so that nothing but the picture is left of it; null if the browser cannot open it. */
export async function smallPhoto(file: Blob): Promise<SmallPhoto | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture) return null;
  const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  for (const quality of QUALITIES) {
    const jpeg = canvas.toDataURL('image/jpeg', quality).replace(/^data:image\/jpeg;base64,/, '');
    if (jpeg.length <= MOST_BASE64) return { widthPx: canvas.width, heightPx: canvas.height, jpeg };
  }
  return null;
}
