import type { Recipe } from '../../../shared/workbook';
import { newWay } from '../../core/checks/new-way';
import { metricSizes, newSizes } from '../../core/net';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { styleById } from '../../core/styles';
import type { LengthUnit } from '../../core/units';

/** Sizes that a new box of a style keeps from the start: whole millimeters where the maker works in them. Apart from the rows, which open before any style is fetched. */
export function firstSizesMm(styleId: string, unit: LengthUnit): Recipe['sizesMm'] {
  const style = styleById(styleId);
  const sizes = style ? Object.entries(unit === 'mm' ? metricSizes(style) : newSizes(style)) : [];
  return Object.fromEntries(sizes.map(([name, length]) => [name, mmOfTicks(length)]));
}

/** The sizes a box keeps in another style: those it has, and what a new box of that style keeps from the start. */
export function sizesInStyle(styleId: string, sizesMm: Recipe['sizesMm']): Recipe['sizesMm'] {
  const style = styleById(styleId);
  if (style === undefined) return sizesMm;
  const kept = Object.fromEntries(Object.entries(sizesMm).map(([name, mm]) => [name, ticksOfMm(mm)]));
  const begun = Object.entries(newSizes(style, kept)).map(([name, length]): [string, number] => [
    name,
    mmOfTicks(length),
  ]);
  return { ...Object.fromEntries(begun), ...sizesMm };
}

/** How a new box of a style is made, where saved boxes rely on another way. */
export function firstOptions(
  styleId: string,
  sizesMm: Recipe['sizesMm'] = {},
  caliperUm = 300,
): Recipe['options'] {
  const style = styleById(styleId);
  const sizes = Object.entries(sizesMm).map(([name, mm]) => [name, ticksOfMm(mm)] as const);
  return style ? newWay(style, Object.fromEntries(sizes), caliperUm) : {};
}
