/** @type {import('next').NextConfig} */
export default {
  // Two servers can run side by side from one checkout when each has a build folder of its own.
  distDir: process.env.NEXT_DIST_DIR ?? '.next',
  reactStrictMode: true,
  poweredByHeader: false,
  allowedDevOrigins: ['127.0.0.1'],
  experimental: { serverActions: { bodySizeLimit: '64mb' } },
};
