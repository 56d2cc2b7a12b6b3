import type { Recipe } from '../../../shared/workbook';
import { metricSizes } from '../../core/net';
import { mmOfTicks } from '../../core/rows/lengths';
import { styleById } from '../../core/styles';
import type { LengthUnit } from '../../core/units';

/** Sizes that a new box of a style starts with beside its own: whole millimeters where the maker works in them. Apart from the rows, which open before any style is fetched. */
export function firstSizesMm(styleId: string, unit: LengthUnit): Recipe['sizesMm'] {
  const style = unit === 'mm' ? styleById(styleId) : undefined;
  const sizes = style ? Object.entries(metricSizes(style)) : [];
  return Object.fromEntries(sizes.map(([name, length]) => [name, mmOfTicks(length)]));
}
