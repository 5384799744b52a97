/**
 * Nothing from the net, no inline script or style, no frames, no plug-ins. `blob:` shows a photo before it is kept. The one
 * worker is the cutting planner, whose address only the policy named here may hand out.
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
