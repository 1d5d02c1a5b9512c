import type { Figure } from '../../core/figures/figure.ts'
import type { DescribedFigure } from '../figures/figureWords.ts'
import type { FigureBlock } from './block.ts'

/** A figure as a block, or none where there is nothing to look at yet. */
export function figureBlocks(described: DescribedFigure<Figure> | undefined): FigureBlock[] {
  if (described === undefined) return []
  const { figure, caption, description } = described
  return [{ kind: 'figure', figure, caption, description }]
}
