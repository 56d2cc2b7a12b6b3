import { useEffect, useState } from 'react';
import type { StyleAnswers } from '../../core/answers';
import type { FamilyMember, NeededRoom } from '../../core/fit';
import type { Contents } from '../../core/rows/contents';
import type { AnswersAsk, FamilyAsk, MarksAsk, StyleRows } from '../../worker/fit-messages';
import { fitFinder } from './fit-finder';

export type { AnswersAsk, FamilyAsk, MarksAsk, StyleRows } from '../../worker/fit-messages';

export interface RoomsInSight {
  readonly rooms: readonly NeededRoom[];
  /** Newer ones are being worked out. */
  readonly stale: boolean;
}

const NO_ROOMS: readonly NeededRoom[] = [];

/** How the contents may lie and the inside each way needs; keeps the ways before in sight until the new ones are there. */
export function useNeededRooms(contents: Contents | undefined): RoomsInSight {
  const [found, setFound] = useState<{ key: string; rooms: readonly NeededRoom[] } | null>(null);
  // Which way is chosen changes nothing of the ways there are.
  const key = contents && contents.items.length > 0 ? keyOf(contents) : null;
  useEffect(() => {
    if (key === null) return;
    let wanted = true;
    void fitFinder()
      .arrange(JSON.parse(key) as Contents)
      .then((rooms) => {
        if (wanted) setFound({ key, rooms });
      });
    return () => {
      wanted = false;
    };
  }, [key]);
  if (key === null) return { rooms: NO_ROOMS, stale: false };
  return { rooms: found?.rooms ?? NO_ROOMS, stale: found?.key !== key };
}

const keyOf = ({ items, clearanceMm }: Contents): string => JSON.stringify({ items, clearanceMm });

export interface MarksInSight {
  readonly found: readonly StyleRows[];
  readonly stale: boolean;
  readonly done: number;
  readonly of: number;
  readonly stop: () => void;
}

/** The search for easy marks; `ask` must be memoised. Rows come in style by style; those before stay in sight, marked stale, until the first new ones. */
export function useEasyMarks(ask: MarksAsk | null): MarksInSight {
  const [state, setState] = useState<{ ask: MarksAsk; found: readonly StyleRows[] } | null>(null);
  const [stopped, setStopped] = useState<MarksAsk | null>(null);
  useEffect(() => {
    if (ask === null || stopped === ask) return;
    return fitFinder().search(ask, (found) =>
      setState((before) => ({ ask, found: before?.ask === ask ? [...before.found, found] : [found] })),
    );
  }, [ask, stopped]);
  const current = state?.ask === ask ? state : null;
  return {
    found: state?.found ?? [],
    stale: ask !== null && current === null,
    done: current?.found.length ?? 0,
    of: stopped === ask ? (current?.found.length ?? 0) : (ask?.styleIds.length ?? 0),
    stop: () => setStopped(ask),
  };
}

export interface FamilyInSight {
  readonly members: readonly FamilyMember[];
  readonly busy: boolean;
}

/** A family, member by member as they are found; `ask` must be memoised. Null: nothing is asked. */
export function useFamily(ask: FamilyAsk | null): FamilyInSight {
  const [found, setFound] = useState<{ ask: FamilyAsk; members: FamilyMember[]; done: boolean } | null>(null);
  useEffect(() => {
    if (ask === null) return;
    return fitFinder().family(ask, (member) =>
      setFound((before) => {
        const members = before?.ask === ask ? before.members : [];
        return { ask, members: member ? [...members, member] : members, done: member === null };
      }),
    );
  }, [ask]);
  const current = found?.ask === ask ? found : null;
  return { members: current?.members ?? [], busy: ask !== null && current?.done !== true };
}

export interface AnswersInSight {
  readonly found: readonly StyleAnswers[];
  /** Those of the question before, until the first new one is there. */
  readonly stale: boolean;
  readonly done: number;
  readonly of: number;
  readonly stop: () => void;
}

/** Boxes for four answers, style by style; `ask` must be memoised. */
export function useAnswers(ask: AnswersAsk | null): AnswersInSight {
  const [state, setState] = useState<{ ask: AnswersAsk; found: readonly StyleAnswers[] } | null>(null);
  const [stopped, setStopped] = useState<AnswersAsk | null>(null);
  useEffect(() => fitFinder().getReady(), []);
  useEffect(() => {
    if (ask === null || stopped === ask) return;
    return fitFinder().answers(ask, (found) =>
      setState((before) => ({ ask, found: before?.ask === ask ? [...before.found, found] : [found] })),
    );
  }, [ask, stopped]);
  const current = state?.ask === ask ? state : null;
  const done = current?.found.length ?? 0;
  return {
    found: ask === null ? [] : (state?.found ?? []),
    stale: ask !== null && current === null,
    done,
    of: stopped === ask ? done : (current?.found[0]?.of ?? 1),
    stop: () => setStopped(ask),
  };
}
