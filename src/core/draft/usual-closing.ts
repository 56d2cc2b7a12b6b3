import { panelsFolded, turns } from '../styles/language/folding';
import type { Len } from '../styles/language/types';
import { TUBE_QUANTITIES } from '../styles/shapes/glued-tube';
import { cornerSeams } from './corner-seams';
import { isCutEdge } from './cuts';
import type { Draft, PanelDraft, PieceDraft, StepDraft } from './draft';
import { formulaOf, namesIn } from './forms';
import { isOuter } from './parts/bottom-flap';
import { axisOf, hangsOn, hungOn, isRectangle, isSide, rowOf, SIDES } from './sides';
import type { Meetings } from './what-meets';

/** What a piece needs to be closed, and to be known for closed. */
export type Closing = Pick<PieceDraft, 'joints' | 'seams' | 'overlaps' | 'closing' | 'shell' | 'roomFormula'>;
type JointDraft = PieceDraft['joints'][number];

/** How such a piece is usually glued and folded shut, from what meets when it is closed. A proposal: the proof judges it, and the maker may change each of it. */
export function usualClosing(draft: Draft, piece: PieceDraft, { lying, edges }: Meetings): Closing {
  const relief = Object.entries(draft.quantities ?? {}).find(
    ([, { formula }]) => formula === TUBE_QUANTITIES.seamRelief.formula,
  )?.[0];
  const relieved = (panel: string) => relief !== undefined && isNarrowed(piece.panels[panel], relief);
  const pairs = new Set(lying.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
  const joints = [
    ...tabJoints(piece, pairs).map((joint): JointDraft => {
      const wall = hangsOn(piece.panels[joint.panel])?.parent ?? '';
      return relieved(wall) ? { ...joint, gap: relief as string } : joint;
    }),
    ...flapJoints(piece, pairs),
  ];
  const closing = stepsOf(piece, joints);
  const order = panelsFolded(closing);
  const met = new Set(edges.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
  const owed = cornerSeams(piece).filter(([a, b]) => !met.has(`${a} ${b}`));
  const whole = [...edges, ...owed].filter((pair) => !pair.some((where) => isCutEdge(piece, where)));
  const seams = whole.map(([one, other]): NonNullable<PieceDraft['seams']>[number] => {
    const glued = [one, other].some((where) => {
      const [panel = '', edge = ''] = where.split('.');
      const tab = hungOn(piece, panel, edge);
      return relieved(panel) && tab !== undefined && piece.panels[tab]?.role === 'glueTab';
    });
    const pair = [one, other] as [`${string}.left`, `${string}.left`];
    return glued ? [...pair, relief as string] : pair;
  });
  const overlaps = layersOf(piece, lying, order);
  return {
    joints,
    ...(seams.length > 0 ? { seams } : {}),
    ...(overlaps.length > 0 ? { overlaps } : {}),
    closing,
    shell: Object.entries(piece.panels).flatMap(([name, { role }]) =>
      role === 'wall' || role === 'base' ? [name] : [],
    ),
    roomFormula: roomOf(draft, piece),
  };
}

/** The room between the walls, score to score: a floor times its walls, or a row of walls round; else what an item has, thin card. */
function roomOf(draft: Draft, piece: PieceDraft): string {
  const [root] = Object.entries(piece.panels);
  const product = (sides: readonly Len[]) => sides.map((side) => `(${formulaOf(side, 't')})`).join(' * ');
  if (root !== undefined && isRectangle(root[1])) {
    const [name, { role, size }] = root;
    const side = piece.panels[SIDES.map((edge) => hungOn(piece, name, edge)).find(isWall(piece)) ?? ''];
    const row = rowOf(piece, name);
    const next = piece.panels[row[1] ?? ''];
    const out = hangsOn(side)?.edge;
    if (role === 'base' && isRectangle(side) && isSide(out))
      return product([...size, side.size[axisOf(out)]]);
    if (role === 'wall' && row.length > 2 && isRectangle(next))
      return product([size[0], next.size[0], size[1]]);
  }
  return product(draft.inside);
}

const isWall =
  (piece: PieceDraft) =>
  (name: string | undefined): boolean =>
    name !== undefined && piece.panels[name]?.role === 'wall';

const isNarrowed = (panel: PanelDraft | undefined, relief: string): boolean =>
  isRectangle(panel) && namesIn(panel.size[0]).has(relief);

type Pairs = ReadonlySet<string>;

/** Every glue tab onto the wall or floor it comes to lie on. */
const tabJoints = (piece: PieceDraft, pairs: Pairs): readonly JointDraft[] =>
  Object.entries(piece.panels).flatMap(([panel, { role }]): JointDraft[] => {
    if (role !== 'glueTab') return [];
    const onto = Object.entries(piece.panels).find(
      ([name, other]) => other.role !== 'glueTab' && pairs.has(`${panel} ${name}`),
    )?.[0];
    return onto === undefined ? [] : [{ panel, onto, lap: 'inside' }];
  });

/** Bottom flaps in the order they fold in: those between first, then those that have to meet. */
function bottomFlaps(piece: PieceDraft): readonly string[] {
  const flaps = Object.entries(piece.panels).flatMap(([name, panel]) => {
    const hinge = hangsOn(panel);
    return panel.role === 'bottomFlap' && hinge ? [{ name, outer: isOuter(piece, hinge.parent) }] : [];
  });
  return [...flaps.filter(({ outer }) => !outer), ...flaps.filter(({ outer }) => outer)].map(
    ({ name }) => name,
  );
}

/** Each outer flap onto the one before it where they lap, else onto the inner ones. */
function flapJoints(piece: PieceDraft, pairs: Pairs): readonly JointDraft[] {
  const flaps = bottomFlaps(piece);
  const glued = new Set<string>();
  return flaps.flatMap((panel, at): JointDraft[] => {
    const hinge = hangsOn(piece.panels[panel]);
    if (hinge === null || !isOuter(piece, hinge.parent)) return [];
    const under = flaps.slice(0, at).filter((name) => pairs.has(`${panel} ${name}`));
    const last = under.filter((name) => glued.has(name));
    glued.add(panel);
    return (last.length > 0 ? last : under).map((onto) => ({ panel, onto, lap: 'outside', carries: true }));
  });
}

/** Panels that lie on one another, innermost first: what folds in first. Glue tabs are joints, and no layers of their own. */
function layersOf(
  piece: PieceDraft,
  lying: Meetings['lying'],
  order: readonly string[],
): NonNullable<PieceDraft['overlaps']> {
  const groups: Set<string>[] = [];
  for (const [one, other] of lying) {
    if ([one, other].some((name) => piece.panels[name]?.role === 'glueTab')) continue;
    const touching = groups.filter((group) => group.has(one) || group.has(other));
    const joined = new Set([one, other, ...touching.flatMap((group) => [...group])]);
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push(joined);
  }
  return groups.map((group) => [...group].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
}

function stepsOf(piece: PieceDraft, joints: readonly JointDraft[]): StepDraft[] {
  const steps: StepDraft[] = [];
  const placed = new Set<string>();
  const fold = (panels: readonly string[], how: Partial<StepDraft> = {}) => {
    const turning = panels.filter((name) => piece.panels[name] !== undefined && turns(piece.panels[name]));
    if (turning.length > 0) steps.push({ do: 'fold', panels: turning, ...how } as StepDraft);
    for (const name of turning) placed.add(name);
  };
  const glue = (of: (joint: JointDraft) => boolean) => {
    for (const { panel, onto } of joints.filter(of)) steps.push({ do: 'glue', panel, onto });
  };
  const roleOf = (name: string) => piece.panels[name]?.role;
  const names = Object.keys(piece.panels);
  closeRow(piece, joints, fold, glue);
  const [first = ''] = names;
  const walls = names.filter((name) => roleOf(name) === 'wall' && !placed.has(name));
  const tabsOn = (wall: string) =>
    names.filter((name) => roleOf(name) === 'glueTab' && hangsOn(piece.panels[name])?.parent === wall);
  const onFloor = walls.filter((name) => hangsOn(piece.panels[name])?.parent === first);
  const tabbed = onFloor.filter((wall) => tabsOn(wall).length > 0);
  fold([...tabbed, ...tabbed.flatMap(tabsOn)]);
  fold(onFloor.filter((wall) => !tabbed.includes(wall)));
  glue(({ panel }) => tabbed.includes(hangsOn(piece.panels[panel])?.parent ?? ''));
  const flaps = bottomFlaps(piece);
  for (const flap of flaps) {
    fold([flap]);
    glue(({ panel }) => panel === flap);
  }
  const lids = names.filter((name) => roleOf(name) === 'lid' && !placed.has(name));
  const dust = names.filter((name) => roleOf(name) === 'dustFlap' && !placed.has(name));
  const tucksOn = (lid: string) =>
    names.filter((name) => roleOf(name) === 'tuck' && hangsOn(piece.panels[name])?.parent === lid);
  const late = new Set([...lids, ...dust, ...lids.flatMap(tucksOn)]);
  for (const name of names) if (!placed.has(name) && !late.has(name)) fold([name]);
  glue(
    ({ panel, onto }) =>
      !steps.some((step) => step.do === 'glue' && step.panel === panel && step.onto === onto),
  );
  fold(dust);
  for (const lid of lids) {
    const tucks = tucksOn(lid);
    if (tucks.length === 0) fold([lid]);
    else {
      steps.push({ do: 'tuck', panels: [lid, ...tucks], bends: true });
      for (const name of [lid, ...tucks]) placed.add(name);
    }
  }
  return steps;
}

/** A row of four walls is glued while it lies flat, then opened; any other row is folded round and glued. */
function closeRow(
  piece: PieceDraft,
  joints: readonly JointDraft[],
  fold: (panels: readonly string[], how?: Partial<StepDraft>) => void,
  glue: (of: (joint: JointDraft) => boolean) => void,
): void {
  for (const joint of joints) {
    const hinge = hangsOn(piece.panels[joint.panel]);
    if (piece.panels[joint.panel]?.role !== 'glueTab' || hinge === null || !isSide(hinge.edge)) continue;
    const row = rowOf(piece, hinge.parent);
    const [first, second, third, last] = row;
    const ends = [first, row.at(-1)];
    if (!ends.includes(hinge.parent) || !ends.includes(joint.onto) || row.length < 3) continue;
    if (row.length === 4 && piece.panels[first ?? '']?.on === undefined) {
      const flat = hinge.edge === 'right' ? [last ?? '', second ?? ''] : [joint.panel, third ?? ''];
      for (const panel of flat) fold([panel], { to: 180 });
      glue((other) => other === joint);
      fold([second ?? '', third ?? '', last ?? '', joint.panel]);
    } else {
      fold([...row, joint.panel]);
      glue((other) => other === joint);
    }
  }
}
