import { panelWords } from '../net/panel-words';
import type { StyleRefusal } from '../style-file/style-refusal';
import type { Draft } from './draft';
import { hangsOn, turns } from './sides';
import { panelsFolded } from './steps';

/** What a drawing still lacks though it can be folded: tabs and bottom flaps that are glued to nothing, panels that no step folds, corners that no tab holds. */
export function looseEnds(draft: Draft): readonly StyleRefusal[] {
  return Object.entries(draft.pieces ?? {}).flatMap(([id, { panels, joints, closing, seams = [] }]) => {
    const glued = new Set(joints.flatMap(({ panel, onto }) => [panel, onto]));
    const folded = new Set(panelsFolded(closing));
    const tabbed = new Set(
      joints.flatMap(({ panel, onto }) => [
        `${hangsOn(panels[panel])?.parent} ${onto}`,
        `${onto} ${hangsOn(panels[panel])?.parent}`,
      ]),
    );
    const isWall = (name: string) => panels[name]?.role === 'wall';
    const open = seams.flatMap(([a, b]): StyleRefusal[] => {
      const [one = '', other = ''] = [a, b].map((where) => where.split('.')[0] ?? '');
      if (!isWall(one) || !isWall(other) || tabbed.has(`${one} ${other}`)) return [];
      return [
        {
          code: 'no-tab-at-corner',
          path: `${id}.${a}`,
          facts: { one: panelWords(one), other: panelWords(other) },
          says: 'No tab holds the {one} and {other} panels together where they meet.',
          remedy: 'Add a glue tab on one of these edges, unless something else holds them.',
        },
      ];
    });
    const loose = Object.entries(panels).flatMap(([name, panel]): StyleRefusal[] => {
      const told = { path: `${id}.${name}`, facts: { panel: panelWords(name) } };
      const unfolded = turns(panel) && !folded.has(name);
      const unglued = (panel.role === 'glueTab' || panel.role === 'bottomFlap') && !glued.has(name);
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
    return [...loose, ...open];
  });
}
