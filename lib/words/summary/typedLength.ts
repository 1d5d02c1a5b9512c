import type { Notebook } from '../../core/agreement/notebook.ts'
import { typedLengthWords } from '../length.ts'
import { unbroken } from './unbroken.ts'

/** A typed length as the drawing and its words have it, beside lengths that were worked out in the notebook's units. */
export function typedLength({ units }: Notebook, typed: string): string {
  return unbroken(typedLengthWords(typed, units))
}
