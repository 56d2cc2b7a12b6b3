import type { Draft } from './draft';

/** The draft found by who looks for a lid as long as one of its panels, or one of its pieces, is one. */
export function withLidTrait(draft: Draft): Draft {
  const has = Object.values(draft.pieces ?? {}).some(
    ({ lid, panels }) => lid === true || Object.values(panels).some(({ role }) => role === 'lid'),
  );
  if (has === draft.traits.includes('lid')) return draft;
  const others = draft.traits.filter((trait) => trait !== 'lid');
  return { ...draft, traits: has ? ['lid', ...others] : others };
}
