/** How the share server runs, as its environment says. */
export interface ShareSettings {
  readonly host: string;
  readonly port: number;
  /** A file, or the address of a libsql server that several share servers use together. */
  readonly data: string;
  /** `redis://…` or `rediss://…`: joins several share servers; null: this one stands alone. */
  readonly redis: URL | null;
  /** Where browsers find it; null: on this machine only. */
  readonly origin: string | null;
  /** The built app. */
  readonly app: string;
  /** Whether a proxy in front of it says who is asking. */
  readonly behindProxy: boolean;
}

type Environment = Readonly<Record<string, string | undefined>>;
export type SettingsReading =
  | { readonly ok: true; readonly settings: ShareSettings }
  | { readonly ok: false; readonly faults: readonly string[] };

const LOOPBACK = ['127.0.0.1', '::1', 'localhost'];

/** Reads the settings; every fault says the value, the reason and what to write in its place. */
export function readSettings(env: Environment): SettingsReading {
  const faults: string[] = [];
  const host = env['SHARE_HOST'] ?? '127.0.0.1';
  const port = Number(env['SHARE_PORT'] ?? '4180');
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    faults.push(`SHARE_PORT=${env['SHARE_PORT'] ?? ''} is no port. Give a whole number up to 65535.`);
  const redis = read(env['SHARE_REDIS']);
  if (redis === 'wrong' || (redis && !['redis:', 'rediss:'].includes(redis.protocol)))
    faults.push('SHARE_REDIS is no Redis address. Write it like redis://127.0.0.1:6379.');
  const origin = read(env['SHARE_ORIGIN']);
  if (origin === 'wrong' || (origin && !['http:', 'https:'].includes(origin.protocol)))
    faults.push('SHARE_ORIGIN is no web address. Write it like https://boxes.example.org.');
  if (!LOOPBACK.includes(host) && !origin)
    faults.push(
      `SHARE_HOST=${host} opens the server to others. Say in SHARE_ORIGIN at which address they find it.`,
    );
  if (faults.length > 0 || redis === 'wrong' || origin === 'wrong') return { ok: false, faults };
  return {
    ok: true,
    settings: {
      host,
      port,
      data: env['SHARE_DATA'] ?? '.share/shelves.db',
      redis,
      origin: origin?.origin ?? null,
      app: env['SHARE_APP'] ?? 'dist',
      behindProxy: env['SHARE_PROXY'] === '1',
    },
  };
}

function read(text: string | undefined): URL | null | 'wrong' {
  if (!text) return null;
  return URL.canParse(text) ? new URL(text) : 'wrong';
}
