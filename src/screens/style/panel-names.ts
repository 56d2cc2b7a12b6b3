import { panelWords } from '../../core/net/panel-words';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';

/** What panels and their edges are called on this page. */
export function usePanelNames() {
  const say = useSay();
  const words = useDraftingWords();
  const panel = (name: string) => say(panelWords(name));
  const sideOf = (edge: string) => words.sides[edge] ?? words.cornerEdge(edge.slice(1));
  return {
    panel,
    sideOf,
    edge: (name: string, edge: string) => words.edgeOf(sideOf(edge), panel(name)),
    list: (names: readonly string[]) => {
      const said = names.map(panel);
      return said.length < 2
        ? (said[0] ?? '')
        : `${said.slice(0, -1).join(', ')} ${words.and} ${said.at(-1) ?? ''}`;
    },
  };
}
