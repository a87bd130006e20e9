const BODY_LIMIT = '64mb';

/** On every answer, files included. The content policy has a nonce of its own for each page and comes from proxy.ts. */
const headers = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(self), microphone=(), geolocation=(), payment=(), usb=()' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
];

/** @type {import('next').NextConfig} */
export default {
  // Two servers can run side by side from one checkout when each has a build folder of its own.
  distDir: process.env.NEXT_DIST_DIR ?? '.next',
  reactStrictMode: true,
  poweredByHeader: false,
  allowedDevOrigins: ['127.0.0.1'],
  headers: async () => [{ source: '/:path*', headers }],
  experimental: {
    serverActions: { bodySizeLimit: BODY_LIMIT },
    proxyClientMaxBodySize: BODY_LIMIT, // else a site file of more than 10 MB would reach its action cut off
    authInterrupts: true,
  },
};
