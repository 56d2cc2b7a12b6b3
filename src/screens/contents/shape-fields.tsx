import type { ItemShape } from '../../core/rows/contents';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import type { Ticks } from '../../core/units';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField } from '../../ui/fields/text-field';
import { usePageWords } from '../../ui/words';

const SHAPES: readonly ItemShape['shape'][] = ['cuboid', 'cylinder', 'sphere', 'packet', 'soft', 'pot'];
const LEAST = ticksOfMm(0.1);
const LIES = ['standing', 'lying', 'either'] as const;

interface ShapeFieldsProps {
  readonly size: ItemShape;
  readonly onChange: (size: ItemShape, label: string) => void;
}

/** The shape of a thing and the lengths that shape has. */
export function ShapeFields({ size, onChange }: ShapeFieldsProps) {
  const words = usePageWords().contents;
  const together = (names: Readonly<Record<string, number>>, to: (mm: readonly number[]) => ItemShape) => ({
    fields: Object.entries(names).map(([label, mm]) => ({ label, value: ticksOfMm(mm), least: LEAST })),
    onAll: (lengths: readonly Ticks[]) => onChange(to(lengths.map(mmOfTicks)), words.shape),
  });
  const sides = together(
    'widthMm' in size
      ? { [words.width]: size.widthMm, [words.depth]: size.depthMm, [words.height]: size.heightMm }
      : {},
    ([widthMm = 1, depthMm = 1, heightMm = 1]) =>
      'widthMm' in size ? { ...size, widthMm, depthMm, heightMm } : size,
  );
  const round = together(
    'diameterMm' in size && 'heightMm' in size
      ? { [words.diameter]: size.diameterMm, [words.long]: size.heightMm }
      : {},
    ([diameterMm = 1, heightMm = 1]) =>
      'diameterMm' in size && 'heightMm' in size ? { ...size, diameterMm, heightMm } : size,
  );
  const field = (label: string, mm: number, to: (mm: number) => ItemShape) => (
    <LengthField
      key={label}
      label={label}
      value={ticksOfMm(mm)}
      least={LEAST}
      together={'widthMm' in size ? sides : 'heightMm' in size ? round : undefined}
      onChange={(length) => onChange(to(mmOfTicks(length)), label)}
    />
  );
  return (
    <>
      <SelectField
        label={words.shape}
        value={size.shape}
        choices={SHAPES.map((id) => ({ id, label: words.shapes[id] }))}
        onChange={(id) => onChange(reshaped(size, id as ItemShape['shape']), words.shape)}
      />
      {'widthMm' in size && [
        field(words.width, size.widthMm, (widthMm) => ({ ...size, widthMm })),
        field(words.depth, size.depthMm, (depthMm) => ({ ...size, depthMm })),
        field(words.height, size.heightMm, (heightMm) => ({ ...size, heightMm })),
      ]}
      {'diameterMm' in size &&
        field(words.diameter, size.diameterMm, (diameterMm) => ({ ...size, diameterMm }))}
      {'diameterMm' in size &&
        'heightMm' in size &&
        field(words.long, size.heightMm, (heightMm) => ({ ...size, heightMm }))}
      {size.shape === 'cylinder' && (
        <ChoiceStrip
          named
          label={words.lies}
          value={size.lies}
          choices={LIES.map((id) => ({ id, label: words.lie[id] }))}
          onChange={(lies) => onChange({ ...size, lies }, words.lies)}
        />
      )}
    </>
  );
}

/** The same thing in another shape, as near in size as the shapes allow. */
function reshaped(size: ItemShape, shape: ItemShape['shape']): ItemShape {
  const [widthMm, depthMm] =
    'widthMm' in size ? [size.widthMm, size.depthMm] : [size.diameterMm, size.diameterMm];
  const heightMm = 'heightMm' in size ? size.heightMm : size.diameterMm;
  switch (shape) {
    case 'sphere':
      return { shape, diameterMm: widthMm };
    case 'cylinder':
      return { shape, diameterMm: widthMm, heightMm, lies: 'standing' };
    case 'pot':
      return { shape, diameterMm: widthMm, heightMm };
    default:
      return { shape, widthMm, depthMm, heightMm };
  }
}
