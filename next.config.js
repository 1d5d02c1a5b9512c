import path from 'node:path'
import { fileURLToPath } from 'node:url'

const projectFolder = path.dirname(fileURLToPath(import.meta.url))

// The pages load nothing from anywhere else. Next puts small scripts into the page itself, hence 'unsafe-inline';
// its development server also needs eval, which the built program never allows.
const contentSecurityPolicy = [
  "default-src 'self'",
  `script-src 'self' 'unsafe-inline'${process.env.NODE_ENV === 'development' ? " 'unsafe-eval'" : ''}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ')

const securityHeaders = [
  { key: 'Content-Security-Policy', value: contentSecurityPolicy },
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  // Not no-referrer: a form sent without script would then carry `Origin: null`, which Next refuses (Fetch standard, "append a
  // request Origin header"). An address holding a private link still goes to no other site.
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'X-Robots-Tag', value: 'noindex, nofollow' },
]

// The address of a reader's page is all that its reader needs, so it goes nowhere, not even within the install, and is kept by
// no cache. These pages have no form that a missing origin could break.
const readerHeaders = [
  { key: 'Referrer-Policy', value: 'no-referrer' },
  { key: 'Cache-Control', value: 'private, no-store' },
]

// What somebody else made may do nothing in a browser but be shown. The file's own answer says so, too, but what stands here
// goes first; `files/upload` answers with JSON, which loses nothing by it.
const containedFiles = {
  source: '/notebook/:notebookId/files/:file+',
  headers: [
    {
      key: 'Content-Security-Policy',
      value: "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; sandbox",
    },
  ],
}

/** @type {import('next').NextConfig} */
const config = {
  poweredByHeader: false,
  reactStrictMode: true,
  headers: async () => [
    { source: '/:path*', headers: securityHeaders },
    containedFiles,
    { source: '/read/:path*', headers: readerHeaders },
  ],
  // Browsers ask for it whatever the page names as its icon.
  rewrites: async () => [{ source: '/favicon.ico', destination: '/icon.svg' }],
  experimental: { serverActions: { bodySizeLimit: '25mb' } },
  // A native module can't be bundled, and the adapter loads it.
  serverExternalPackages: ['@prisma/adapter-better-sqlite3', 'better-sqlite3', 'highs'],
  // Said outright: a lock file in a folder above would otherwise move the root of the build there.
  turbopack: { root: projectFolder },
  outputFileTracingRoot: projectFolder,
  outputFileTracingExcludes: { '/*': ['./data/**'] },
}

export default config
