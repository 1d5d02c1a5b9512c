// A stamp says which sources something was made from: the same files with the same contents, the same stamp, on any machine.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import path from 'node:path'

/** What the pages are built from. prisma/generated follows from the schema and needs no entry of its own. */
export const pageSources = [
  'package.json',
  'package-lock.json',
  'next.config.js',
  'tsconfig.json',
  'prisma/schema.prisma',
  'prisma/migrations',
  'prisma/example',
  'app',
  'lib',
]

/** What the database client is generated from; its generator comes with the packages. */
export const clientSources = ['package-lock.json', 'prisma/schema.prisma', 'prisma/prisma.config.ts']

/**
 * @param {{ name: string, content: Uint8Array | string }[]} files in any order
 * @returns {string} 64 hexadecimal digits
 */
export function stampOf(files) {
  const hash = createHash('sha256')
  for (const file of [...files].sort((one, other) => (one.name < other.name ? -1 : 1))) {
    const content = createHash('sha256').update(file.content).digest('hex')
    hash.update(`${JSON.stringify(file.name)} ${content}\n`)
  }
  return hash.digest('hex')
}

/**
 * @param {string} projectFolder
 * @param {string[]} sources files and folders, relative to the project folder; what is missing is left out
 * @returns {string}
 */
export function stampOfSources(projectFolder, sources) {
  const files = sources
    .flatMap((source) => filesBelow(projectFolder, source))
    .map((name) => ({ name, content: readFileSync(path.join(projectFolder, name)) }))
  return stampOf(files)
}

/**
 * @param {string} projectFolder
 * @param {string} source
 * @returns {string[]} paths with forward slashes, editors' dot files and backups left out
 */
function filesBelow(projectFolder, source) {
  const place = path.join(projectFolder, source)
  if (!existsSync(place)) return []
  if (statSync(place).isFile()) return [source]
  return readdirSync(place)
    .filter((name) => !name.startsWith('.') && !name.endsWith('~'))
    .flatMap((name) => filesBelow(projectFolder, `${source}/${name}`))
}
