import type { FileKind } from '../../../lib/core/agreement/attachedFile.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { database } from '../../../lib/store/database.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import { madePdf } from '../../files/madePictures.ts'
import type { Table } from './refusalRow.ts'
import { notebookOf } from './storeBeside.ts'

/** Puts files on record whose bytes lie nowhere: a survey, or so many of a name, each of a size of its own. */
export async function onRecord(
  table: Table,
  more: {
    readonly name?: string
    readonly size?: number
    readonly count?: number
    readonly by?: Household
    readonly removedBy?: Household
    readonly kind?: FileKind
  } = {},
): Promise<void> {
  const notebookId = notebookOf(table)
  const { name = 'survey.pdf', size = 200, count = 1, by = 'a', removedBy, kind = 'survey' } = more
  const addedAt = new Date()
  const removed = removedBy === undefined ? {} : { removedAt: addedAt, removedBy }
  const data = Array.from({ length: count }, (_, at) => ({
    notebookId,
    household: by,
    sha256: sha256Hex(more.name === undefined ? madePdf() : `${name} ${at}`),
    name,
    mediaType: 'application/pdf',
    size,
    kind,
    caption: '',
    addedAt,
    ...removed,
  }))
  await database().write((tables) => tables.storedFile.createMany({ data }))
}

/** The first household takes away all files that are there; on record they stay. */
export async function filesTakenAway(table: Table): Promise<void> {
  const notebookId = notebookOf(table)
  const data = { removedAt: new Date(), removedBy: 'a' }
  await database().write((tables) =>
    tables.storedFile.updateMany({ where: { notebookId, removedAt: null }, data }),
  )
}
