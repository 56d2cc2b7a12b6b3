import type { CautionCode } from '../card-step';

/** What is printed where hands meet blades or heat. source: common practice of the trade, no source. */
export const CAUTIONS: Readonly<Record<CautionCode, string>> = {
  blade: 'Blade: cut away from your fingers, against a metal edge, and close the guard after each cut.',
  'hot-glue':
    'If you use hot glue: it burns at a touch, low-heat glue too. Keep fingers off it until it has set.',
};
