import type { Block } from './block.ts'
import type { SummaryInput } from './summaryInput.ts'

/** What differs from the newest revision that all had signed before, item by item; nothing where there was none. */
export function amendmentBlocks({ amends, standing }: SummaryInput): Block[] {
  if (amends === undefined) return []
  const { number, changes } = amends
  const force =
    standing.kind === 'signed'
      ? `It takes the place of revision ${number}, which stays on record.`
      : `Revision ${number} goes on to bind until every party has signed this one.`
  return [
    { kind: 'heading', level: 1, id: 'amendment', text: `What changed since revision ${number}` },
    {
      kind: 'paragraph',
      text:
        changes.length === 0
          ? `Nothing differs from revision ${number} in what the two agree on. ${force}`
          : `This is an amendment of revision ${number}, which every party has signed. ${force}`,
    },
    ...(changes.length === 0
      ? []
      : [
          {
            kind: 'table' as const,
            caption: 'Each change, item by item',
            columns: [{ title: 'Where' }, { title: 'What changed' }],
            rows: changes.flatMap(({ title, lines }) =>
              lines.map((line, index) => ({ cells: [index === 0 ? title : '', line] })),
            ),
          },
        ]),
  ]
}
