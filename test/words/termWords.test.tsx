import { expect, test } from 'vitest'
import { Explain } from '../../app/ui/explain/Explain.tsx'
import { terms, termWords } from '../../lib/words/termWords.ts'
import { shownMarkup } from '../shownMarkup.ts'

test.each(terms)('%s is explained in two sentences, with a drawing that says what it shows', (term) => {
  const { answer, drawing } = termWords[term]
  expect(answer.match(/[.?](\s|$)/g)).toHaveLength(2)
  const markup = shownMarkup(<Explain terms={[term]} />)
  expect(markup).toContain(`role="img" aria-label="${drawing}"`)
  expect(markup).toMatch(/<path|<circle/)
})

test('what is explained is folded away until somebody asks', () => {
  const markup = shownMarkup(<Explain terms={terms} />)
  expect(markup.match(/<details/g)).toHaveLength(terms.length)
  expect(markup).not.toContain('<details open')
  expect(markup).not.toMatch(/<details[^>]* open/)
})
