import path from 'node:path'
import { importsOf } from './imports.ts'
import { packagesNotForScreens, roomRules, roomsNotForScreens, topLevel } from './rooms.ts'

/** A file of the repository: its path from the top, with forward slashes, and its text. */
export type SourceFile = { readonly name: string; readonly source: string }

/** Each import in lib and app that the table of rooms does not allow, in words. */
export function importOffences(files: readonly SourceFile[]): string[] {
  return files
    .filter((file) => /^(lib|app)\//.test(file.name) && /\.(ts|tsx|mts|mjs|js|jsx)$/.test(file.name))
    .flatMap((file) =>
      importsOf(file.name, file.source)
        .map((imported) => importOffence(file.name, imported))
        .filter((offence) => offence !== undefined)
        .map((offence) => `${file.name}: ${offence}`),
    )
}

function importOffence(fileName: string, imported: string | undefined): string | undefined {
  if (imported === undefined) return 'imports something whose name is known only when it runs'
  const isPath = imported.startsWith('.') || imported.startsWith('/')
  const target = isPath ? path.posix.join(path.posix.dirname(fileName), imported) : imported
  const allowed = fileName.startsWith('app/')
    ? isPath
      ? screenMayEnter(target)
      : !packagesNotForScreens.some((name) => matches(imported, name))
    : isPath
      ? roomMayEnter(roomOf(fileName), target)
      : (roomRules[roomOf(fileName)]?.packages ?? []).some((name) => matches(imported, name))
  return allowed ? undefined : `may not import ${target}`
}

function screenMayEnter(target: string): boolean {
  if (target.startsWith('app/')) return true
  const room = roomOf(target)
  return target.startsWith('lib/') && room in roomRules && !roomsNotForScreens.includes(room)
}

function roomMayEnter(room: string, target: string): boolean {
  const rule = roomRules[room]
  if (rule === undefined) return false
  // The generated client stands in prisma/, but is part of Prisma.
  if (target.startsWith('prisma/generated/')) return rule.packages.includes('@prisma/client')
  if (!target.startsWith('lib/')) return rule.data?.includes(target) ?? false
  const other = roomOf(target)
  return other in roomRules && (other === room || rule.rooms.includes(other))
}

/** The second part of a path: lib/core/split.ts stands in core. */
function roomOf(fileName: string): string {
  return fileName.split('/')[1] ?? ''
}

/** Whether a package is the one named, a path in it, or begins with a name that ends in a sign. */
function matches(imported: string, name: string): boolean {
  return imported === name || (/[/:-]$/.test(name) ? imported.startsWith(name) : false)
}

const drawers =
  /^(index|utils?|helpers?)(\.|$)|(Manager|Service)(?=[A-Z.]|$)|^(manager|service)(\.|$)|[-_](utils?|helpers?)(\.|$)/

/** Each file or folder whose name says nothing about what is in it, in words. */
export function nameOffences(fileNames: readonly string[]): string[] {
  return fileNames
    .filter((name) => /^(app|lib|test|prisma)\//.test(name))
    .filter((name) => name.split('/').some((part) => drawers.test(part)))
    .map((name) => `${name}: a name that does not say what it holds`)
}

/** Each entry at the top of the repository that has no place there, in words. */
export function topLevelOffences(fileNames: readonly string[]): string[] {
  const entries = new Set(fileNames.map((name) => name.split('/')[0] ?? ''))
  return [...entries]
    .filter((entry) => !entry.startsWith('.') && !topLevel.includes(entry))
    .map((entry) => `${entry}: has no place at the top of the repository`)
}
