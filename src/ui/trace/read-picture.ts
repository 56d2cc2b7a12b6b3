import {
  firstPlace,
  MOST_BYTES,
  type PictureRefusal,
  readPictureHead,
  type TracePicture,
} from '../../core/trace';

/** Longest side that is kept, pixels. source: our own; half a millimeter of a sheet a meter long */
const LONGEST_PX = 2400;
/** A picture that takes longer to open is one that never will. source: our own, milliseconds */
const PATIENCE = 15_000;
const QUALITY = 0.85;

export type PickedPicture =
  | { readonly ok: true; readonly picture: TracePicture }
  | { readonly ok: false; readonly why: PictureRefusal | 'undrawable' };

/**
 * A scan or an outline as a picture to draw over a net of this size. The browser opens it as a picture alone, where nothing in it runs or
 * fetches anything, and it is drawn again as plain pixels: nothing else of the file is kept.
 */
export async function readPicture(
  file: Blob,
  net: { readonly wideMm: number; readonly highMm: number },
): Promise<PickedPicture> {
  try {
    // one byte more than is taken, so that a longer file is known for one
    const bytes = new Uint8Array(await file.slice(0, MOST_BYTES + 1).arrayBuffer());
    const reading = readPictureHead(bytes);
    if (!reading.ok) return reading;
    const { kind } = reading.head;
    const type = kind === 'svg' ? 'image/svg+xml' : `image/${kind}`;
    const plain = await drawnAgain(new Blob([bytes], { type }), kind === 'svg');
    if (!plain) return { ok: false, why: 'undrawable' };
    return { ok: true, picture: { ...plain, place: firstPlace(plain, net.wideMm, net.highMm) } };
  } catch {
    return { ok: false, why: 'undrawable' };
  }
}

async function drawnAgain(file: Blob, outline: boolean): Promise<Omit<TracePicture, 'place'> | null> {
  // An outline that breaks off is asked for again by some browsers; under an address of text there is nothing to ask for.
  const address = outline ? await textAddress(file) : URL.createObjectURL(file);
  try {
    const image = new Image();
    image.src = address;
    const opened = image.decode().then(() => true);
    const late = new Promise<false>((resolve) => setTimeout(() => resolve(false), PATIENCE));
    if (!(await Promise.race([opened, late]))) return null;
    const [wide, high] = [image.naturalWidth, image.naturalHeight];
    if (wide === 0 || high === 0) return null;
    const longest = LONGEST_PX / Math.max(wide, high);
    const grow = outline ? longest : Math.min(1, longest);
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(wide * grow));
    canvas.height = Math.max(1, Math.round(high * grow));
    const pen = canvas.getContext('2d');
    pen?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const plain = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/webp', QUALITY));
    if (!pen || !plain) return null;
    return {
      bytes: await plain.arrayBuffer(),
      type: plain.type,
      widthPx: canvas.width,
      heightPx: canvas.height,
    };
  } finally {
    URL.revokeObjectURL(address);
  }
}

const textAddress = (file: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result as string);
    reader.onerror = () => reject(new Error('the file can’t be read'));
    reader.readAsDataURL(file);
  });
