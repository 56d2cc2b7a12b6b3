import { ImagePlus, Trash2 } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/fields/button';
import { FilePick } from '../../ui/fields/file-pick';
import { TextField } from '../../ui/fields/text-field';
import { usePageWords } from '../../ui/words';
import { smallPhoto } from './small-photo';

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
