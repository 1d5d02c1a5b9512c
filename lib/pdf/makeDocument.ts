import fontkit from '@pdf-lib/fontkit'
import { PDFDocument } from 'pdf-lib'
import { contentSequences } from './contentSequences.ts'
import { withFewerElements } from './fewerElements.ts'
import type { Mark } from './mark.ts'
import type { PageSize } from './pageSize.ts'
import { paintSequences } from './paintSequences.ts'
import type { PrintFonts } from './pdfInput.ts'
import { writeStructureTree } from './structureTree.ts'

/** A page takes a few milliseconds. */
const pagesAtATime = 4

async function nextTurn(stop: AbortSignal | undefined): Promise<void> {
  await new Promise((resolve) => setImmediate(resolve))
  stop?.throwIfAborted()
}

/**
 * A tagged PDF document of laid-out pages, each printed `reduction` times smaller than it is laid out. Same pages and dates, same bytes: nothing is taken from the
 * clock. Between its pages others have their turn, and whoever stops it ends it there.
 *
 * @throws the reason of the stop
 */
export async function makeDocument(
  pages: readonly (readonly Mark[])[],
  page: PageSize,
  about: {
    readonly title: string
    readonly language: string
    readonly madeAt?: Date | undefined
    readonly reduction?: number
    readonly stop?: AbortSignal | undefined
  },
  fonts: PrintFonts,
): Promise<PDFDocument> {
  const document = await PDFDocument.create({ updateMetadata: false })
  document.registerFontkit(fontkit)
  document.setTitle(about.title, { showInWindowTitleBar: true })
  document.setLanguage(about.language)
  if (about.madeAt !== undefined) {
    document.setCreationDate(about.madeAt)
    document.setModificationDate(about.madeAt)
  }
  // No ligatures: what is read out of the file is then what was typed, letter for letter.
  const options = { subset: true, features: { liga: false } }
  const faces = {
    regular: await document.embedFont(fonts.regular, options),
    semibold: await document.embedFont(fonts.semibold, options),
  }
  const { reduction = 1 } = about
  const taggedPages: Parameters<typeof writeStructureTree>[1][number][] = []
  for (const [index, marks] of withFewerElements(pages).entries()) {
    if (index % pagesAtATime === 0) await nextTurn(about.stop)
    const sheet = document.addPage([page.width, page.height])
    const contents = paintSequences(sheet, contentSequences(marks), faces, reduction)
    if (reduction !== 1) sheet.scale(1 / reduction, 1 / reduction)
    taggedPages.push({ page: sheet, contents })
  }
  await nextTurn(about.stop)
  writeStructureTree(document, taggedPages)
  return document
}

/** Without object streams, so that a seal can later be put into the file. */
export function bytesOf(document: PDFDocument): Promise<Uint8Array> {
  return document.save({ useObjectStreams: false, objectsPerTick: 500 })
}
