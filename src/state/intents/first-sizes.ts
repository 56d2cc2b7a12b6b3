import type { Recipe } from '../../../shared/workbook';
import { newWay } from '../../core/checks/new-way';
import { dressingsIn } from '../../core/dress';
import { layNet, metricSizes, newSizes } from '../../core/net';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { type BoxStyle, styleById } from '../../core/styles';
import type { LengthUnit, Ticks } from '../../core/units';

/** Sizes that a new box of a style keeps from the start: whole millimeters where the maker works in them. Apart from the rows, which open before any style is fetched. */
export function firstSizesMm(styleId: string, unit: LengthUnit): Recipe['sizesMm'] {
  const style = styleById(styleId);
  const sizes = style ? Object.entries(unit === 'mm' ? metricSizes(style) : newSizes(style)) : [];
  return Object.fromEntries(sizes.map(([name, length]) => [name, mmOfTicks(length)]));
}

/** The sizes a box keeps in another style: those it has, and what a new box of that style keeps from the start. */
function sizesInStyle(styleId: string, sizesMm: Recipe['sizesMm']): Recipe['sizesMm'] {
  const style = styleById(styleId);
  if (style === undefined) return sizesMm;
  const begun = Object.entries(newSizes(style, ticksIn(sizesMm))).map(([name, length]): [string, number] => [
    name,
    mmOfTicks(length),
  ]);
  return { ...Object.fromEntries(begun), ...sizesMm };
}

/** A box in another style: the sizes that one has a name for, made as new boxes of it are, what lies on its right side still there. */
export function inStyle(recipe: Recipe, styleId: string): Recipe {
  const { sizesMm, options, caliperUm, dressings } = recipe;
  const [before, style] = [styleById(recipe.styleId), styleById(styleId)];
  const to = {
    sizesMm: sizesInStyle(styleId, sizesMm),
    options: firstOptions(styleId, sizesMm, caliperUm),
  };
  const laid = (of: BoxStyle, made: Pick<Recipe, 'sizesMm' | 'options'>) =>
    layNet(of, { sizes: ticksIn(made.sizesMm), options: made.options, caliperUm });
  const moved =
    before && style ? dressingsIn(laid(style, to), laid(before, { sizesMm, options }), dressings) : dressings;
  return { ...recipe, ...to, styleId, dressings: moved };
}

const ticksIn = (sizesMm: Recipe['sizesMm']): Record<string, Ticks> =>
  Object.fromEntries(Object.entries(sizesMm).map(([name, mm]) => [name, ticksOfMm(mm)]));

/** How a new box of a style is made, where saved boxes rely on another way. */
export function firstOptions(
  styleId: string,
  sizesMm: Recipe['sizesMm'] = {},
  caliperUm = 300,
): Recipe['options'] {
  const style = styleById(styleId);
  return style ? newWay(style, ticksIn(sizesMm), caliperUm) : {};
}
