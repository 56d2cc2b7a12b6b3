import { panelWords } from '../net/panel-words';
import type { StyleRefusal } from '../style-file/style-refusal';
import type { Draft } from './draft';

/** What a drawing still lacks though it can be folded: tabs and bottom flaps that are glued to nothing, panels that no step folds. */
export function looseEnds(draft: Draft): readonly StyleRefusal[] {
  return Object.entries(draft.pieces ?? {}).flatMap(([id, { panels, joints, closing }]) => {
    const glued = new Set(joints.flatMap(({ panel, onto }) => [panel, onto]));
    const folded = new Set(closing.flatMap((step) => (step.do === 'glue' ? [] : step.panels)));
    return Object.entries(panels).flatMap(([name, { role, on, fold = 0 }]): StyleRefusal[] => {
      const told = { path: `${id}.${name}`, facts: { panel: panelWords(name) } };
      const unfolded = on !== undefined && fold !== 0 && !folded.has(name);
      const unglued = (role === 'glueTab' || role === 'bottomFlap') && !glued.has(name);
      return [
        ...(unglued
          ? [
              {
                ...told,
                code: 'glued-to-nothing',
                says: 'The {panel} isn’t glued to anything when the box is closed.',
                remedy: 'Add the panel it should lie on, change its size, or choose what it is glued to.',
              },
            ]
          : []),
        ...(unfolded
          ? [
              {
                ...told,
                code: 'never-folded',
                says: 'No step folds the {panel}.',
                remedy: 'Add a step for it to the folding order.',
              },
            ]
          : []),
      ];
    });
  });
}
