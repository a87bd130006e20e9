/**
 * What a page may load and run: our own files, and inline scripts that carry this answer's nonce. Style attributes are
 * allowed (React writes them for sizes), style elements need the nonce. A development server evaluates code and so may.
 */
export function contentPolicy(nonce: string): string {
  const evaluate = process.env.NODE_ENV === 'development' ? " 'unsafe-eval'" : '';
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${evaluate}`,
    process.env.NODE_ENV === 'development'
      ? "style-src 'self' 'unsafe-inline'"
      : `style-src 'self' 'nonce-${nonce}'`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}
