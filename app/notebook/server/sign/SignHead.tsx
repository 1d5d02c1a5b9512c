import { inShortOfDraft } from '../../../../lib/words/inShortText.ts'
import { jumpWords } from '../../../../lib/words/signingWords.ts'
import { LedTo } from '../../../ui/LedTo.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { JumpLinks, type JumpTo } from './JumpLinks.tsx'
import { RevisionPart } from './RevisionPart.tsx'
import { SignInShort } from './SignInShort.tsx'
import type { Signing } from './signingOf.ts'
import type { SignPart } from './signOrder.ts'
import { placeId, toSignHere } from './toSignHere.ts'

/** The head of the page for signing: what it is about in short, and where the rest of it is. */
export function SignHead({ signing }: { signing: Signing }) {
  const { opened, newest, summary, parts, obstacles } = signing
  const jumps = parts.flatMap((part) => jumpsTo(part, signing))
  const own = newest?.signatures.filter(({ household }) => household === opened.household).length ?? 0
  return (
    <LedTo mark={`${newest?.revision.number ?? 0} ${own} ${obstacles.length === 0}`}>
      {newest ? (
        <RevisionPart frozen={newest} summary={summary} jumps={jumps} />
      ) : (
        <Panel heading={inShortOfDraft}>
          <SignInShort summary={summary} />
          <JumpLinks to={jumps} />
        </Panel>
      )}
    </LedTo>
  )
}

function jumpsTo(part: SignPart, { opened, newest, obstacles }: Signing): readonly JumpTo[] {
  switch (part) {
    case 'amendment':
      return [{ id: 'amendment', label: jumpWords.amendment }]
    case 'agreement':
      return [{ id: 'agreement', label: jumpWords.agreement }]
    case 'forms':
      return (newest ? toSignHere(newest, opened.household) : []).map((place) => ({
        id: placeId(place),
        label: jumpWords.sign(place.name),
      }))
    case 'copies':
      return [{ id: 'copies', label: jumpWords.copies }]
    case 'next':
      return newest
        ? [{ id: 'changed-since', label: jumpWords.next }]
        : [{ id: 'put-up', label: obstacles.length > 0 ? jumpWords.obstacles : jumpWords.ready }]
  }
}
