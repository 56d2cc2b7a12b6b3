import type { Len, PieceSpec, Role } from '../language/types';

/** What a tray's lengths are called in its style; `tab` is how far a corner tab reaches along the side wall. */
export type TrayNames = Readonly<Record<'width' | 'depth' | 'height' | 'tab', string>>;

const tab = (on: `${string}.${'left' | 'right'}`, { tab, height }: TrayNames) =>
  ({ role: 'glueTab', size: [tab, height], on, fold: 90 }) as const;

const wall = (role: Role, size: readonly [Len, Len], on: `base.${'left' | 'right' | 'up' | 'down'}`) =>
  ({ role, size, on, fold: 90 }) as const;

/** A tray with corner tabs: a floor, four walls, and a tab at each end of the front and back wall, glued inside the side walls. */
export function trayPiece(label: string, names: TrayNames): PieceSpec {
  const { width, depth, height } = names;
  return {
    label,
    panels: {
      base: { role: 'base', size: [width, depth] },
      left: wall('wall', [height, depth], 'base.left'),
      right: wall('wall', [height, depth], 'base.right'),
      front: wall('wall', [width, height], 'base.down'),
      back: wall('wall', [width, height], 'base.up'),
      frontLeftTab: tab('front.left', names),
      frontRightTab: tab('front.right', names),
      backLeftTab: tab('back.left', names),
      backRightTab: tab('back.right', names),
    },
    joints: [
      { panel: 'frontLeftTab', onto: 'left', lap: 'inside' },
      { panel: 'frontRightTab', onto: 'right', lap: 'inside' },
      { panel: 'backLeftTab', onto: 'left', lap: 'inside' },
      { panel: 'backRightTab', onto: 'right', lap: 'inside' },
    ],
    seams: [
      ['front.left', 'left.down'],
      ['front.right', 'right.down'],
      ['back.left', 'left.up'],
      ['back.right', 'right.up'],
    ],
    closing: [
      {
        do: 'fold',
        panels: ['front', 'back', 'frontLeftTab', 'frontRightTab', 'backLeftTab', 'backRightTab'],
      },
      { do: 'fold', panels: ['left', 'right'] },
      { do: 'glue', panel: 'frontLeftTab', onto: 'left' },
      { do: 'glue', panel: 'frontRightTab', onto: 'right' },
      { do: 'glue', panel: 'backLeftTab', onto: 'left' },
      { do: 'glue', panel: 'backRightTab', onto: 'right' },
    ],
    shell: ['base', 'left', 'right', 'front', 'back'],
    roomMm3: (values) => (values[width] ?? 0) * (values[depth] ?? 0) * (values[height] ?? 0),
    roomFormula: `${width} * ${depth} * ${height}`,
  };
}
