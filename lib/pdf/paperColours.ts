import type { Fill } from '../drawing/drawing.ts'

/** Whatever a mark on paper can be drawn with. */
export type PaperInk = Fill | 'band' | 'faint'

/** The colours of ink on paper, six hexadecimal digits; the households' are plum and ochre, dark enough to read in grey. */
export const paperColours: Readonly<Record<PaperInk, string>> = {
  ink: '2b2622',
  quiet: '5f564b',
  rule: 'cfc6b6',
  sheet: 'ffffff',
  a: '6b2a5b',
  b: '8a5a00',
  'soft-a': 'f6ebf3',
  'soft-b': 'fbf1d8',
  band: 'f1ebdf',
  faint: 'f7f3ec',
}
