import type { PrincipleName } from '../core/agreement/notebook.ts'

/** The figures of a principle that is chosen anew, still to be typed: nothing of the one before stays behind. */
export const startingPrinciple: Readonly<Record<PrincipleName, object>> = {
  equal: {},
  percent: { a: '50', b: '50' },
  one: { household: '' },
  length: { a: '', b: '' },
  use: {},
  benefit: { a: '', b: '' },
  saving: { aloneA: '', aloneB: '', sourceA: '', sourceB: '' },
  difference: {
    basic: '',
    basicShare: { principle: 'equal' },
    upgradeShare: { principle: 'one', household: '' },
  },
}
