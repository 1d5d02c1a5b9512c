import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Block } from '../../../lib/words/summary/block.ts'
import { Caution } from '../../ui/Caution.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { FigureView } from './FigureView.tsx'
import { LineDrawing } from './LineDrawing.tsx'
import { SignatureView } from './SignatureView.tsx'
import { StepsView } from './StepsView.tsx'

/** The plain-language summary on screen: the same blocks that the PDF is made from. A short one is laid out at once. */
export function SummaryView({
  blocks,
  notebook,
  short = false,
}: {
  blocks: readonly Block[]
  notebook: Notebook
  short?: boolean
}) {
  return (
    <article className={short ? 'summary-text summary-short' : 'summary-text'}>
      {blocks.map((block, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: blocks have no names of their own, and are shown once
        <BlockView key={index} block={block} notebook={notebook} />
      ))}
    </article>
  )
}

function BlockView({ block, notebook }: { block: Block; notebook: Notebook }) {
  switch (block.kind) {
    case 'title':
      return (
        <header>
          <h2>{block.text}</h2>
          <p className="quiet">{block.standing}</p>
        </header>
      )
    case 'heading':
      return block.level === 1 ? <h3 id={block.id}>{block.text}</h3> : <h4 id={block.id}>{block.text}</h4>
    case 'paragraph':
      return <p>{block.text}</p>
    case 'list':
      return (
        <ul>
          {block.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )
    case 'table':
      return (
        <FigureTable
          caption={block.caption}
          columns={block.columns.map(({ title, figure }) => ({ label: title, figures: figure }))}
          rows={block.rows.map((row) =>
            row.struck ? row.cells.map((cell) => <s key={cell}>{cell}</s>) : row.cells,
          )}
          foot={block.foot ? [block.foot] : []}
        />
      )
    case 'steps':
      return <StepsView groups={block.groups} />
    case 'caution':
      return (
        <Caution title={block.title}>
          <p>{block.text}</p>
        </Caution>
      )
    case 'drawing':
      return <LineDrawing notebook={notebook} />
    case 'figure':
      return <FigureView shown={block} />
    case 'signature':
      return <SignatureView block={block} />
  }
}
