import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import { fileKinds } from '../../../lib/core/agreement/attachedFile.ts'
import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import { savedName } from '../../../lib/files/fileNames.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import type { PackEntry } from '../../../lib/files/recordPack.ts'
import { readBytes } from '../../../lib/files/storedBytes.ts'
import { documentText } from '../../../lib/forms/parts.ts'
import { summaryPaper } from '../../../lib/pdf/summaryPaper.ts'
import { headOf, historyOf } from '../../../lib/store/historyChain.ts'
import { sealedPaperOf } from '../../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import { filesOf, type StoredFile } from '../../../lib/store/storedFiles.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName, notebookTitle } from '../../../lib/words/labels.ts'
import { letterOf, letterText } from '../../../lib/words/letter/letterText.ts'
import {
  type PackAccount,
  type PackContents,
  type PackFile,
  type PackRevision,
  packedLetter,
  recordPackText,
} from '../../../lib/words/recordPackText.ts'
import { accountPaper } from './account/accountPaper.ts'
import type { FrozenAccount } from './account/frozenAccounts.ts'
import { filesFolder } from './filesFolder.ts'
import { historyFile } from './historyFile.ts'
import { lockedCopy } from './lockedCopy.ts'
import type { Opened } from './opened.ts'
import type { FrozenRevision } from './standingRevision.ts'
import { draftSummary, paperDate, revisionSummary } from './summaryOf.ts'
import { nextTurn } from './workStream.ts'

/** An entry with its hash, known before it is packed. */
type Hashed = PackEntry & { readonly sha256: string }

const sums = 'sha256sums.txt'

/** What a pack is made from. */
type Packed = Pick<
  Opened,
  | 'notebookId'
  | 'household'
  | 'document'
  | 'notebook'
  | 'inForce'
  | 'statement'
  | 'waitingCaps'
  | 'revisions'
  | 'accounts'
>

/** Who wants to know how far the making is, and may stop it. */
export type Watching = {
  readonly stop: AbortSignal
  /** How many papers and files are ready, of how many. */
  readonly ready: (count: number, all: number) => void
}

/**
 * Everything that is kept of a notebook, for handing over with the house: the text that explains it first, then in one
 * fixed order summaries, agreement files, notebook file, history, files by kind, and the hash of each. Where it is stopped,
 * it ends before the next page of a paper, or the next file. A locked copy is made whole, for it is kept.
 *
 * @throws the reason of the stop
 */
export async function recordPackOf(
  opened: Packed,
  madeAt: Date,
  watching?: Watching,
): Promise<readonly PackEntry[]> {
  const { notebook, document } = opened
  const stored = await filesOf(opened.notebookId)
  const all = opened.revisions.length + opened.accounts.length + 1 + stored.length
  let count = 0
  const ready = async <Made>(made: Made): Promise<Made> => {
    count += 1
    watching?.ready(count, all)
    await nextTurn(watching?.stop)
    return made
  }
  const revisions: { entries: readonly Hashed[]; about: PackRevision }[] = []
  for (const frozen of opened.revisions.toReversed())
    revisions.push(await ready(await revisionEntries(opened, frozen, watching?.stop)))
  const accounts: { entries: readonly Hashed[]; about: PackAccount }[] = []
  for (const frozen of opened.accounts.toReversed())
    accounts.push(await ready(await accountEntries(opened, frozen)))
  // After them: a locked copy that had to be made is an entry of the history itself.
  const history = await historyOf(opened.notebookId)
  const head = headOf(history)
  const draft = await ready(
    made(
      'summaries/draft.pdf',
      madeAt,
      await summaryPaper(
        draftSummary(opened),
        agreementText(document),
        printFonts(),
        undefined,
        watching?.stop,
      ),
    ),
  )
  const notebookEntry = made('notebook.json', madeAt, documentText(document))
  const letterEntries =
    notebook.letter === undefined
      ? []
      : [
          made(
            'letter/first-letter.txt',
            madeAt,
            packedLetter(letterText(letterOf(notebook, opened.statement, { kind: 'none' }))),
          ),
        ]
  const historyEntry = made('history.json', history.at(-1)?.at ?? madeAt, historyFile(history))
  const files = await fileEntries(opened, stored, ready)
  const contents: PackContents = {
    title: notebookTitle(notebook),
    households: [householdName(notebook, 'a'), householdName(notebook, 'b')],
    madeAt,
    revisions: revisions.map(({ about }) => about),
    accounts: accounts.map(({ about }) => about),
    draft: draft.name,
    notebook: notebookEntry.name,
    ...(letterEntries[0] && { letter: letterEntries[0].name }),
    history: { name: historyEntry.name, entries: head.entry, hash: head.hash },
    sums,
    files: files.map(({ about }) => about),
  }
  const entries = [
    made('read-me-first.txt', madeAt, recordPackText(contents)),
    ...revisions.flatMap((revision) => revision.entries),
    ...accounts.flatMap((account) => account.entries),
    draft,
    notebookEntry,
    ...letterEntries,
    historyEntry,
    ...files.flatMap(({ entry }) => (entry === undefined ? [] : [entry])),
  ]
  // The format of sha256sum (GNU coreutils, "md5sum invocation"): hash, two blanks, name.
  const list = entries.map(({ sha256, name }) => `${sha256}  ${name}\n`).join('')
  return [...entries, made(sums, madeAt, list)]
}

async function revisionEntries(
  opened: Packed,
  frozen: FrozenRevision,
  stop: AbortSignal | undefined,
): Promise<{ entries: readonly Hashed[]; about: PackRevision }> {
  const { number, canonicalText, sha256, frozenAt } = frozen.revision
  const agreement = made(`agreements/revision-${number}.json`, frozenAt, canonicalText)
  const about = { number, agreement: agreement.name, sha256 }
  if (frozen.stillToSign.length > 0)
    return { entries: [agreement], about: { ...about, standing: 'not signed by all' } }
  const { notebookId, household, revisions } = opened
  // Only this throws where the stored copy was altered; all else that goes wrong must be seen.
  const damaged = await sealedPaperOf(frozen.revision.id).then(
    () => false,
    () => true,
  )
  if (damaged) return { entries: [agreement], about: { ...about, standing: 'damaged' } }
  const copy = await lockedCopy({ notebookId, household, frozen, all: revisions })
  if (copy.kind === 'locked') {
    const summary = made(`summaries/revision-${number}-locked.pdf`, copy.paper.sealedAt, copy.paper.bytes)
    return { entries: [summary, agreement], about: { ...about, summary: summary.name, standing: 'locked' } }
  }
  const at = paperDate(frozen)
  const pdf = await summaryPaper(revisionSummary(frozen, revisions), canonicalText, printFonts(), at, stop)
  const summary = made(`summaries/revision-${number}.pdf`, at, pdf)
  return { entries: [summary, agreement], about: { ...about, summary: summary.name, standing: 'waiting' } }
}

async function accountEntries(
  { notebook }: Packed,
  frozen: FrozenAccount,
): Promise<{ entries: readonly Hashed[]; about: PackAccount }> {
  const { number, canonicalText, sha256, frozenAt } = frozen.stored
  const text = made(`accounts/final-account-${number}.json`, frozenAt, canonicalText)
  const paper = made(
    `accounts/final-account-${number}.pdf`,
    frozenAt,
    await accountPaper(frozen, notebook.units),
  )
  const signedByAll = frozen.stillToSign.length === 0
  return {
    entries: [paper, text],
    about: { number, paper: paper.name, text: text.name, sha256, signedByAll },
  }
}

function made(name: string, at: Date, content: string | Uint8Array): Hashed {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content
  return {
    name,
    at,
    bytes: async () => bytes,
    size: bytes.length,
    sha256: sha256Hex(bytes),
  }
}

/** The files by kind and day, each numbered, so that no two have the same name whatever they were called. */
async function fileEntries(
  { notebook, document }: Packed,
  stored: readonly StoredFile[],
  ready: <Made>(made: Made) => Promise<Made>,
): Promise<{ about: PackFile; entry?: Hashed }[]> {
  const items = agreedItems(document)
  const folder = await filesFolder()
  const found: { about: PackFile; entry?: Hashed }[] = []
  for (const kind of fileKinds) {
    for (const [index, file] of stored.filter((one) => one.kind === kind).entries()) {
      const item = items.find(({ key }) => key === file.itemKey)
      const { sha256, size, caption } = file
      const about = {
        given: file.name,
        kind,
        caption,
        ...(item ? { item: itemTitle(item) } : {}),
        by: householdName(notebook, file.household),
        at: file.addedAt,
        size,
        sha256,
      }
      // Looked at now, so that the text can say what is not there, and read again when it is its turn.
      const read = await ready(await readBytes(folder, sha256))
      if ('damage' in read) found.push({ about: { ...about, damage: read.damage } })
      else {
        const entry = fileEntry(folder, file, index + 1)
        found.push({ about: { ...about, name: entry.name }, entry })
      }
    }
  }
  return found
}

function fileEntry(folder: string, file: StoredFile, number: number): Hashed {
  const place = String(number).padStart(3, '0')
  return {
    name: `files/${file.kind}/${place}-${savedName(file.name, file.mediaType)}`,
    at: file.addedAt,
    size: file.size,
    sha256: file.sha256,
    bytes: async () => {
      const read = await readBytes(folder, file.sha256)
      if ('damage' in read) throw new Error(`A file was ${read.damage} while it was packed: ${file.sha256}`)
      return read.bytes
    },
  }
}
