import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { kindsIn } from './kindsIn.ts'

const projectFolder = path.join(import.meta.dirname, '../../..')

/** Refusals that are told by facts, and put in words elsewhere: the name of the type and the file that it stands in. */
const factTypes = [
  { key: 'fault', type: 'FaultFacts', file: 'lib/core/faults.ts' },
  { key: 'fileRefusal', type: 'FileRefusal', file: 'lib/core/agreement/fileRefusal.ts' },
  { key: 'obstacle', type: 'Obstacle', file: 'lib/core/agreement/readiness.ts' },
  { key: 'letterFault', type: 'LetterFault', file: 'lib/core/agreement/firstLetter.ts' },
  { key: 'proposalRefusal', type: 'ProposalRefusal', file: 'lib/core/agreement/proposalRefusal.ts' },
  { key: 'failure', type: 'Failure', file: 'app/ui/draft/failure.ts' },
  { key: 'entryObjection', type: 'EntryObjection', file: 'lib/core/ledger/entryRules.ts' },
  { key: 'confirmingRefusal', type: 'ConfirmingRefusal', file: 'lib/core/ledger/transfers.ts' },
] as const

/** An object of refusals says so by its name: `booksRefusals`, `needFaults`. Each of its keys is a sentence, or makes one. */
const refusalObject = /^export const (\w+(?:Refusals|Faults))\b/gm

/** Every refusal that the program can give, as `fault.length-form` or `booksRefusals.changed`. */
export async function refusalKeys(): Promise<string[]> {
  const facts = factTypes.flatMap(({ key, type, file }) =>
    kindsIn(file, read(file), type).map((kind) => `${key}.${kind}`),
  )
  const words = await Promise.all(wordFiles().map(keysOfWords))
  return [...facts, ...words.flat()].sort()
}

async function keysOfWords(file: string): Promise<string[]> {
  const names = [...read(file).matchAll(refusalObject)].map(([, name]) => name ?? '')
  if (names.length === 0) return []
  const words = await import(pathToFileURL(path.join(projectFolder, file)).href)
  return names.flatMap((name) => Object.keys(words[name]).map((key) => `${name}.${key}`))
}

function wordFiles(): string[] {
  const listed = readdirSync(path.join(projectFolder, 'lib/words'), { recursive: true, encoding: 'utf8' })
  return listed.filter((file) => file.endsWith('.ts')).map((file) => `lib/words/${file}`)
}

function read(file: string): string {
  return readFileSync(path.join(projectFolder, file), 'utf8')
}
