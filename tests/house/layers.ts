import { posix } from 'node:path';
import { preProcessFile } from 'typescript';

/** What one folder of the house may import: other folders by name, and packages from the registry by name. */
interface Layer {
  readonly folders: readonly string[];
  readonly packages: readonly string[];
}

const layer = (folders: string, packages = ''): Layer => ({
  folders: folders.split(' ').filter(Boolean),
  packages: packages.split(' ').filter(Boolean),
});

/** The house as DEVELOPERS.md draws it. A folder may always import itself; `core` stands for every folder under `src/core`. */
const LAYERS: Readonly<Record<string, Layer>> = {
  shared: layer('core/rows core/units', 'zod fflate papaparse'),
  'core/units': layer(''),
  'core/plane': layer(''),
  'core/rows': layer('core/units', 'zod'),
  'core/styles': layer('core/plane core/units'),
  'core/net': layer('core/styles core/plane core/rows core/units'),
  'core/fold': layer('core/net core/styles core/plane core/rows core/units'),
  'core/checks': layer('core/fold core/net core/styles core/plane core/rows core/units'),
  'core/bench': layer('core/net core/styles core/plane core/units'),
  'core/yield': layer('core/plane core/units'),
  'core/fit': layer('core/styles core/yield core/net core/rows core/units'),
  'core/dress': layer('core/fold core/net core/plane core/rows core/units'),
  'core/plan': layer('core/yield core/bench core/dress core/net core/styles core/rows core/units'),
  'core/answers': layer(
    'core/plan core/fit core/checks core/bench core/yield core/net core/styles core/rows core/units shared',
  ),
  'core/proof': layer(
    'core/checks core/bench core/yield core/fold core/net core/style-file core/styles core/units',
  ),
  'core/draft': layer(
    'core/proof core/yield core/fold core/net core/style-file core/styles core/plane core/rows core/units',
  ),
  'core/style-file': layer('core/styles core/rows core/units', 'zod jsep'),
  'core/trace': layer(''),
  'core/draw': layer(
    'core/bench core/yield core/dress core/fold core/net core/styles core/plane core/rows core/units',
  ),
  'core/index.ts': layer(
    'core/proof core/yield core/bench core/checks core/fold core/net core/styles core/units',
  ),
  storage: layer('core shared', 'dexie zod'),
  worker: layer('core shared', 'highs'),
  // zod reads back the undo list that an earlier visit left; everything else that is saved has its schema in shared.
  state: layer('core shared worker storage', 'zustand react zod'),
  exchange: layer('core shared state', 'yjs @hocuspocus/provider dexie'),
  print: layer('core shared', 'jspdf uqr ics'),
  desk: layer('print core shared', 'highs'),
  // A machine of its own: it knows nothing of boxes, and sees only what devices have sealed.
  'share-server': layer(
    '',
    '@hocuspocus/server @hocuspocus/extension-database @hocuspocus/extension-redis @libsql/client uqr yjs',
  ),
  ui: layer('core shared', 'react react-dom lucide-react three @tanstack/react-virtual'),
  screens: layer('ui print state core shared', 'react react-dom react-router lucide-react'),
  app: layer(
    'screens ui print state exchange storage worker core shared',
    'react react-dom react-router lucide-react workbox-window',
  ),
};

/** Rooms that run on a machine, not in a page. */
const HAS_MACHINE = ['desk', 'share-server'];

/** Files that stand for a whole folder when only that file may be seen from above. */
const ONLY_FILE: Readonly<Record<string, string>> = { 'state>storage': 'src/storage/port' };

/** `'core/net'` for `src/core/net/lay-net.ts`, `'screens'` for anything under screens, `'tests'` outside the house. */
function folderOf(path: string): string {
  const [top, second, third] = path.split('/');
  if (top === 'src' && second === 'core') return `core/${third ?? ''}`;
  return top === 'src' ? (second ?? '') : (top ?? '');
}

/** Every import written in a source text, types and dynamic imports included. */
const importsOf = (text: string): string[] =>
  preProcessFile(text, true, true).importedFiles.map((file) => file.fileName.replace(/\?.*$/, ''));

const packageOf = (name: string) =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');

/** The faults in one file's imports, each as a sentence; none if every arrow points down. `path` is relative to the top level. */
export function upwardArrows(path: string, text: string): string[] {
  const from = folderOf(path);
  const allowed = LAYERS[from];
  if (!allowed) return [`${path} stands in no room of the house`];
  return importsOf(text).flatMap((name) => {
    if (!name.startsWith('.')) {
      if (name.startsWith('node:'))
        return HAS_MACHINE.includes(from)
          ? []
          : [`${path} imports ${name}, and only the desk and the share server have a machine under them`];
      return allowed.packages.includes(packageOf(name))
        ? []
        : [`${path} imports the package ${name}, which ${from} may not`];
    }
    const target = posix.join(posix.dirname(path), name);
    const to = folderOf(target);
    if (from === 'screens' && to === 'screens')
      return target.split('/')[2] === path.split('/')[2] ? [] : [`${path} imports another screen: ${target}`];
    const only = ONLY_FILE[`${from}>${to}`];
    if (only !== undefined && target !== only)
      return [`${path} imports ${target}; from there ${from} may see only ${only}`];
    const down =
      to === from ||
      allowed.folders.includes(to) ||
      (to.startsWith('core/') && allowed.folders.includes('core'));
    return down ? [] : [`${path} imports upwards: ${target}`];
  });
}
