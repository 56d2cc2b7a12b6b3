import { ImagePlus, Trash2 } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/fields/button';
import { FilePick } from '../../ui/fields/file-pick';
import { TextField } from '../../ui/fields/text-field';
import { usePageWords } from '../../ui/words';

/** Longest side of a kept photo, pixels. source: our own; sharp on a phone, and a few hundred kilobytes at most. */
const LONGEST_PX = 1280;

/** Tried in turn until the picture is small enough for its row. source: our own. */
const QUALITIES = [0.82, 0.7, 0.55, 0.4];

const MOST_BASE64 = 700_000;

/** Pictures of the finished box: added, named, taken away. */
export function Photos({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().handout;
  const rows = useWorkbook((state) => state.rows.photos);
  const create = useWorkbook((state) => state.create);
  const edit = useWorkbook((state) => state.edit);
  const remove = useWorkbook((state) => state.remove);
  const [refused, setRefused] = useState(false);
  const photos = useMemo(
    () => [...rows.values()].filter(({ recipeId }) => recipeId === recipe.id),
    [rows, recipe.id],
  );

  const add = async (file: File) => {
    const photo = await smallPhoto(file);
    setRefused(photo === null);
    if (photo) create('photos', { name: recipe.name, recipeId: recipe.id, ...photo }, words.addPhoto);
  };
  return (
    <>
      <h3>{words.photos}</h3>
      <p className="soft">{words.photosWhy}</p>
      <ul className="handout-photos">
        {photos.map(({ id, name, jpeg, widthPx, heightPx }) => (
          <li key={id}>
            <img src={`data:image/jpeg;base64,${jpeg}`} alt={name} width={widthPx} height={heightPx} />
            <TextField
              label={words.photoName}
              value={name}
              onChange={(text) => void edit('photos', id, words.photoName, (old) => ({ ...old, name: text }))}
            />
            <IconButton
              label={words.removePhoto}
              icon={<Trash2 />}
              onClick={() => remove({ table: 'photos', id })}
            />
          </li>
        ))}
      </ul>
      <FilePick
        label={words.addPhoto}
        accept="image/*"
        icon={<ImagePlus aria-hidden="true" />}
        onPick={([file]) => void add(file)}
      />
      {refused && <p role="alert">{words.photoRefused}</p>}
    </>
  );
}

interface SmallPhoto {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly jpeg: string;
}

/** A picture file drawn again as a small JPEG, so that nothing but the picture is left of it; null if the browser cannot open it. */
async function smallPhoto(file: Blob): Promise<SmallPhoto | null> {
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
