/**
 * Nothing from the internet, no inline script or style, no frames, no plug-ins. `blob:` is needed to show a photo before it is saved.
 * The only worker is the cutting planner; the trusted type named here is the only one that can create its address.
 */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types planning-worker',
].join('; ');
