import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

export type ReadText = {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly size: number
  /** Set at an angle: the mark across a draft. */
  readonly turned: boolean
}
export type ReadPage = {
  readonly width: number
  readonly height: number
  readonly texts: readonly ReadText[]
}
export type ReadPdf = {
  readonly pages: readonly ReadPage[]
  readonly attachments: ReadonlyMap<string, Uint8Array>
}

/** Reads a PDF back with another program than the one that made it: pdf.js. */
export async function readPdf(pdf: Uint8Array): Promise<ReadPdf> {
  const loading = getDocument({ data: new Uint8Array(pdf), isEvalSupported: false, verbosity: 0 })
  const document = await loading.promise
  const pages: ReadPage[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number)
    const [, , width = 0, height = 0] = page.view
    const content = await page.getTextContent()
    pages.push({
      width,
      height,
      texts: content.items.flatMap((item) => {
        if (!('str' in item) || item.str === '') return []
        const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[]
        return [
          {
            text: item.str,
            x,
            y: height - y,
            width: item.width,
            size: Math.hypot(a, b),
            turned: Math.abs(b) > 0.001,
          },
        ]
      }),
    })
  }
  const found = ((await document.getAttachments()) ?? {}) as Record<
    string,
    { filename: string; content: Uint8Array }
  >
  const attachments = new Map(Object.values(found).map(({ filename, content }) => [filename, content]))
  await loading.destroy()
  return { pages, attachments }
}

/** A page's or a document's words in reading order, blanks of every kind as one space. */
export function wordsOf(...pages: readonly ReadPage[]): string {
  return pages
    .flatMap((page) => page.texts.filter((one) => !one.turned).map((one) => one.text))
    .join(' ')
    .replace(/\s+/g, ' ')
}

/** The date that a PDF says it was made, as it stands in the file. */
export async function creationDateOf(pdf: Uint8Array): Promise<unknown> {
  const loading = getDocument({ data: new Uint8Array(pdf), isEvalSupported: false, verbosity: 0 })
  const { info } = await (await loading.promise).getMetadata()
  await loading.destroy()
  return (info as { CreationDate?: unknown }).CreationDate
}
