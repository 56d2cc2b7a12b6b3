import type fc from 'fast-check';
import { z } from 'zod';
import { type Recipe, recipe, type WorkbookFile, workbookFile } from '../../shared/workbook';
import { anyOf, type JsonSchema } from './any-of-schema';

/** Any workbook the format allows, made from the format itself: a new field is tried from the day it is there. */
export const anyWorkbook = anyOf(z.toJSONSchema(workbookFile) as JsonSchema) as fc.Arbitrary<WorkbookFile>;

export const anyRecipe = anyOf(z.toJSONSchema(recipe) as JsonSchema) as fc.Arbitrary<Recipe>;
