import type { FileKind } from '../core/agreement/attachedFile.ts'
import type { FileDamage } from '../core/agreement/fileRefusal.ts'
import { momentWords } from './day.ts'
import { fileDamageText, fileKindHeadings, sizeWords } from './fileText.ts'
import { historyChainText } from './historyText.ts'

/** What a pack holds, as its own text explains it. Names are those within the pack. */
export type PackContents = {
  readonly title: string
  /** The households' names, of a and b. */
  readonly households: readonly [string, string]
  readonly madeAt: Date
  readonly revisions: readonly PackRevision[]
  /** Final accounts, oldest first. */
  readonly accounts: readonly PackAccount[]
  readonly draft: string
  readonly notebook: string
  /** The first letter as text; undefined where none was written. */
  readonly letter?: string
  readonly history: {
    readonly name: string
    readonly entries: number
    /** Of the newest entry; 64 zeros where there is none. */
    readonly hash: string
  }
  readonly sums: string
  readonly files: readonly PackFile[]
}

export type PackRevision = {
  readonly number: number
  /** The PDF; undefined where not all have signed, or where it can't be given out. */
  readonly summary?: string
  readonly agreement: string
  /** SHA-256 of the agreement file, as its papers print it. */
  readonly sha256: string
  /** `locked`: the summary is the locked copy. `waiting`: it can't be made yet. `damaged`: it is not what was kept any more. */
  readonly standing: 'locked' | 'waiting' | 'damaged' | 'not signed by all'
}

export type PackAccount = {
  readonly number: number
  readonly paper: string
  readonly text: string
  /** SHA-256 of the text, as the paper prints it. */
  readonly sha256: string
  readonly signedByAll: boolean
}

export type PackFile = {
  /** Undefined where it can't be given out: `damage` says why. */
  readonly name?: string
  readonly damage?: FileDamage
  /** As it was called when it was added. */
  readonly given: string
  readonly kind: FileKind
  readonly caption: string
  /** The item that it belongs to, as it is called. */
  readonly item?: string
  readonly by: string
  readonly at: Date
  readonly size: number
  readonly sha256: string
}

/** The text of `read-me-first.txt`, in lines of at most 78 characters where words allow it. */
export function recordPackText(pack: PackContents): string {
  return [
    title(`Record pack: ${pack.title}`, '='),
    `Made on ${momentWords(pack.madeAt)}.`,
    `The two households: a is ${pack.households[0]}, b is ${pack.households[1]}.`,
    'This is all that two households have kept about the fence on their shared boundary. Keep it with the papers of the house. Give it to whoever has the house after you.',
    'It holds names, costs, hours and what was said. Before you hand it on, take out what the other person need not see.',
    title('What is in it', '-'),
    ...contents(pack),
    title('How to check that nothing was changed', '-'),
    ...checks(pack),
    title('What this does not show', '-'),
    'It does not show who held the pen or the phone when a name was signed. It does not guard against whoever runs the install. It is no survey, no permit and no legal advice: ask a surveyor, the permit office or a lawyer where it matters.',
  ]
    .map((paragraph) => wrapped(paragraph))
    .join('\n\n')
    .concat('\n')
}

function contents(pack: PackContents): string[] {
  const { revisions, accounts, files } = pack
  const named = files.filter(({ name }) => name !== undefined)
  const lost = files.filter(({ name }) => name === undefined)
  return [
    revisions.length === 0
      ? 'Nothing has been put up for signing yet, so there is no signed summary.'
      : 'The revisions, oldest first. The summary is a PDF to read and print. The agreement file is the very text that was signed.',
    ...revisions.map(revisionLines),
    ...(accounts.length === 0
      ? []
      : [
          'The final accounts, oldest first: who gave what, and that nothing is owed. The newest one stands.',
        ]),
    ...accounts.map(accountLines),
    `${pack.draft}: the notebook as it stands now, as a PDF. It is a draft: nobody has signed it as such.`,
    `${pack.notebook}: the notebook as it stands now, with its books. Mearing can read it in again, and any text editor shows it.`,
    ...(pack.letter === undefined ? [] : [`${pack.letter}: ${letterAsItStands}`]),
    `${pack.history.name}: every change, who made it and when, ${count(pack.history.entries, 'entry', 'entries')}. Any text editor shows it.`,
    `${pack.sums}: the hash of every file here.`,
    named.length === 0 ? 'There are no photos or papers.' : 'The photos and papers:',
    ...named.map(fileLines),
    ...(lost.length === 0 ? [] : ['These are on record, but they could not be put in:']),
    ...lost.map(fileLines),
  ]
}

/** Said of the first letter and at its head: the notebook keeps the letter, not its posting. */
export const letterAsItStands =
  'the first letter to the other household, as it stands in the notebook now, with the figures of now. Whether and when it was sent, and in what words, is not on record here.'

/** The letter as the pack has it, with what it is at its head. */
export function packedLetter(letter: string): string {
  const head = `This is ${letterAsItStands}`
  return `${wrapped(head)}\n\n${'-'.repeat(78)}\n\n${wrapped(letter)}`
}

function revisionLines(revision: PackRevision): string {
  const standing = {
    locked: 'signed by all. The summary is the locked copy, as it was sealed',
    waiting: 'signed by all. Its locked copy can’t be made yet, so the summary here has no seal',
    damaged: 'signed by all. Its locked copy was changed in the database, so it is not here',
    'not signed by all': 'put up for signing, not signed by all',
  }[revision.standing]
  return [
    `Revision ${revision.number}: ${standing}.`,
    ...(revision.summary === undefined ? [] : [`  ${revision.summary}`]),
    `  ${revision.agreement}`,
    `  Hash of the agreement file: ${revision.sha256}`,
  ].join('\n')
}

function accountLines({ number, paper, text, sha256, signedByAll }: PackAccount): string {
  return [
    `Final account ${number}: ${signedByAll ? 'signed by all' : 'drawn up, not signed by all'}.`,
    `  ${paper}`,
    `  ${text}`,
    `  Hash of the account text: ${sha256}`,
  ].join('\n')
}

function fileLines(file: PackFile): string {
  return [
    file.name ?? `“${file.given}”`,
    `  ${fileKindHeadings[file.kind]}${file.item === undefined ? '' : `, ${file.item}`}${file.caption === '' ? '' : `: ${file.caption}`}`,
    `  Added by ${file.by} on ${momentWords(file.at)} as “${file.given}”, ${sizeWords(file.size)}`,
    ...(file.damage === undefined
      ? []
      : [`  ${fileDamageText(file.damage)}`, `  Its hash was ${file.sha256}`]),
  ].join('\n')
}

function checks(pack: PackContents): string[] {
  const locked = pack.revisions.find(({ standing }) => standing === 'locked')
  return [
    `1. All files at once. Open a command line in this folder and type\n\n     sha256sum -c ${pack.sums}\n\n   On a Mac, type shasum -a 256 -c ${pack.sums} instead. Every line must end with OK. This shows that the files are as they were when the pack was made. Whoever changes a file could change the list, too, so go on with the next steps.`,
    '2. The agreement. The hash of an agreement file must be the one that its summary prints on every page. Hold it against a copy that the other household or the permit office has kept.',
    locked === undefined
      ? '3. The seal. There is no locked copy here yet. It is made once all have signed, and its seal can be checked then.'
      : `3. The seal. In the folder of the program Mearing, on any machine, type\n\n     npm run -s check-record -- THE-PATH-TO/${locked.summary}\n\n   It says whether the seal holds, whether it covers the whole file, and what the shares come to. Programs that show digital signatures in a PDF can tell the first two as well.`,
    `4. The history. ${historyChainText.join(' ')}\n\n   The newest entry here is number ${pack.history.entries}, with the hash ${pack.history.hash}. A locked copy prints the number and the hash that were the newest when it was sealed. The entry with that number must have that hash.`,
  ]
}

function title(text: string, line: string): string {
  return `${text}\n${line.repeat(Math.min([...text].length, 78))}`
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`
}

/** Breaks long lines between words; what follows stays as far in as its beginning. */
function wrapped(text: string, width = 78): string {
  return text
    .split('\n')
    .flatMap((line) => {
      const indent = /^( *(?:[0-9]\. )?)/.exec(line)?.[1]?.length ?? 0
      const lines: string[] = []
      let current = line.slice(0, indent)
      let empty = true
      for (const word of line.slice(indent).split(' ')) {
        if (!empty && current.length + 1 + word.length > width) {
          lines.push(current)
          current = ' '.repeat(indent)
          empty = true
        }
        current += empty ? word : ` ${word}`
        empty = false
      }
      return [...lines, current]
    })
    .join('\n')
}
