import { type ElementType, Fragment, type ReactNode } from 'react'
import { boundFigures } from './boundFigures.ts'

export type Shown = { readonly children?: ReactNode }

/** Elements whose text is kept to the letter, since a person or a program reads it out of them; and drawings, which break no line. */
const keptAsTyped = new Set<unknown>([
  'textarea',
  'option',
  'pre',
  'title',
  'script',
  'style',
  'text',
  'tspan',
  'desc',
])

/**
 * What an element is given, with every figure of its text bound to its unit. A component hands its children on to elements, so
 * only those and fragments are looked at; `{hours} h`, which comes in pieces, is read as the one text that it is.
 */
export function withFiguresBound<Props extends Shown>(type: ElementType, props: Props): Props {
  if ((typeof type !== 'string' && (type as unknown) !== Fragment) || keptAsTyped.has(type)) return props
  const { children } = props
  const bound = Array.isArray(children) ? boundPieces(children) : boundPiece(children)
  return bound === children ? props : { ...props, children: bound }
}

function boundPiece(child: ReactNode): ReactNode {
  return typeof child === 'string' ? boundFigures(child) : child
}

/** The same array where nothing changes. An element between texts is taken for a figure: `<b>12</b> h`. */
function boundPieces(children: readonly ReactNode[]): ReactNode {
  const texts = children.map((child) => (isText(child) ? String(child) : isNothing(child) ? '' : '0'))
  if (!children.some((child) => typeof child === 'string')) return children
  const whole = texts.join('')
  const bound = boundFigures(whole)
  if (bound === whole) return children
  let from = 0
  return children.map((child, at) => {
    const to = from + (texts[at]?.length ?? 0)
    const piece = bound.slice(from, to)
    from = to
    return typeof child === 'string' ? piece : child
  })
}

const isText = (child: ReactNode) => typeof child === 'string' || typeof child === 'number'
const isNothing = (child: ReactNode) => child === null || child === undefined || typeof child === 'boolean'
