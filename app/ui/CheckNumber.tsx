import { checkNumberWords } from '../../lib/words/checkNumberText.ts'

/** The number by which a paper or a file is checked: in plain words, with the technical name small beside it. */
export function CheckNumber({ of, value }: { of?: string | undefined; value: string }) {
  return (
    <>
      {checkNumberWords.name}
      {of === undefined ? '' : ` of ${of}`} <small className="quiet">({checkNumberWords.technical})</small>{' '}
      <code>{value}</code>
    </>
  )
}
