/** What the built page may load: only itself. `frame-ancestors` works in a header alone. */
export const CONTENT_POLICY = [
  "default-src 'none'",
  // The general solver of mixes is WebAssembly; text is never run as a script.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  // Only the one policy that lets our own workers start; see `trustOwnScripts`.
  'trusted-types default',
].join('; ');

/** The headers README asks of whatever serves the built app. */
export const PAGE_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': `${CONTENT_POLICY}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), screen-wake-lock=(self)',
};
