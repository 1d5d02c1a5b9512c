import type { SaveAction } from '../../ui/draft/useSaving.ts'
import type { FormNames } from './partWords.ts'

/** What a form of one part of the notebook is given: the part, its fingerprint, how it is saved, and the households' names. */
export type PartFormProps = {
  readonly initial: object
  readonly base: string
  readonly save: SaveAction
  readonly names: FormNames
}
