// The table of rooms: what each room of the program may import. A room that is missing here may not exist.

/** The name of a room: a folder of lib, or `app`. */
export type Room = string

export type RoomRule = {
  /** Other rooms of lib; its own room is always allowed. */
  readonly rooms: readonly Room[]
  /** Packages and Node modules; a name ending in `/` stands for all that begin so. */
  readonly packages: readonly string[]
  /** Plain data outside of lib, by its path from the top. */
  readonly data?: readonly string[]
}

const libRooms = [
  'core',
  'words',
  'forms',
  'cutting',
  'store',
  'files',
  'access',
  'pdf',
  'drawing',
  'seal',
  'calendar',
]

export const roomRules: Readonly<Record<Room, RoomRule>> = {
  // Pure: no clock, no input or output, no framework. The two besides decimal.js are a pure function and a table.
  core: { rooms: [], packages: ['decimal.js', 'canonicalize', 'currency-codes', 'currency-codes/'] },
  words: { rooms: ['core'], packages: [] },
  forms: { rooms: ['core', 'words'], packages: ['zod'], data: ['prisma/example/notebook.json'] },
  cutting: { rooms: ['core', 'words'], packages: ['highs'] },
  store: {
    rooms: ['core'],
    packages: [
      '@prisma/client',
      '@prisma/client/',
      '@prisma/adapter-better-sqlite3',
      'async-mutex',
      'node:crypto',
    ],
  },
  files: {
    rooms: ['core'],
    packages: ['node:fs', 'node:fs/', 'node:crypto', 'node:stream', 'sharp', 'yazl'],
  },
  // next/navigation for the one guard that answers “not found” to whoever was not let in.
  access: {
    rooms: ['core', 'store'],
    packages: ['node:crypto', 'node:os', 'next/headers', 'next/navigation'],
  },
  pdf: {
    rooms: ['core', 'words', 'drawing'],
    packages: ['pdf-lib', '@pdf-lib/fontkit', 'qrcode-generator'],
  },
  // The seal over a finished PDF, and the reader that checks one; it asks pdf-lib only for the field to sign in.
  seal: {
    rooms: ['core', 'words', 'forms', 'files'],
    packages: [
      'pdf-lib',
      '@signpdf/',
      'node-forge',
      'node:crypto',
      'node:timers/promises',
      'node:util',
      'node:zlib',
    ],
  },
  calendar: { rooms: ['core', 'words'], packages: ['ics'] },
  drawing: { rooms: ['core'], packages: ['d3-'] },
  commands: { rooms: libRooms, packages: ['node:'] },
}

/** Screens may use any package but these: what they stand for is behind a room's door. */
export const packagesNotForScreens = [
  '@prisma/',
  'prisma',
  'better-sqlite3',
  'pdf-lib',
  '@pdf-lib/',
  '@signpdf/',
  'node-forge',
]

/** Rooms that screens may not enter. */
export const roomsNotForScreens = ['commands']

/** What may stand at the top of the repository, besides dot files. */
export const topLevel = [
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'next.config.js',
  'README.md',
  'DEVELOPERS.md',
  'prisma',
  'app',
  'lib',
  'test',
]
