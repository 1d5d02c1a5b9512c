import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Result } from '../../core/result.ts'
import type { Statement } from '../../core/shares/statement.ts'
import { householdName } from '../labels.ts'
import { clipped } from './clipped.ts'
import { type LetterContent, letterContents, letterLine } from './letterContents.ts'

/** How the letter lets its reader in: by an invitation's address, by one that is written in by hand, or not at all. */
export type LetterInvitation =
  | { readonly kind: 'address'; readonly address: string }
  | { readonly kind: 'to be written in' }
  | { readonly kind: 'none' }

/** A first letter, ready to be set on paper or to be sent as text. */
export type Letter = {
  readonly title: string
  /** Who to whom, and when. */
  readonly line: string
  readonly opening: string
  /** Only what is said: nothing is printed for what is not. */
  readonly contents: readonly LetterContent[]
  readonly invitation: LetterInvitation & { readonly heading: string; readonly words: string }
  readonly closing: string
  /** Names under the letter; empty where no party is named yet. */
  readonly signed: string
}

export function letterOf(
  notebook: Notebook,
  statement: Result<Statement>,
  invitation: LetterInvitation,
): Letter {
  const parties = notebook.households.a.parties.map(({ name }) => clipped(name)).filter(Boolean)
  const most = 4
  return {
    title: 'The fence between us',
    line: letterLine(notebook),
    opening:
      'We would like to renew the fence between us, and to agree with you first. This letter asks; it settles nothing. Nothing binds you or us until all of us have signed one paper.',
    contents: letterContents(notebook, statement).filter(({ sentences }) => sentences.length > 0),
    invitation: { ...invitation, heading: 'Look at it, and answer', words: invitationWords[invitation.kind] },
    closing:
      'You may answer: fine; fine but without money; a question; not now; or no. This letter is no legal advice. Local law may ask for a certain form of notice or for more time: ask locally, if that matters to you.',
    signed: [...parties.slice(0, most), clipped(householdName(notebook, 'a'), 100)].join(', '),
  }
}

const invitationWords: Readonly<Record<LetterInvitation['kind'], string>> = {
  address:
    'The address below opens a notebook that both of us keep, once: you are then given a private link of your own, which we never see. Looking binds you to nothing. If it says that it has been used and that was not you, tell us at once.',
  'to be written in':
    'The address below opens a notebook that both of us keep, once: you are then given a private link of your own, which we never see. Looking binds you to nothing.',
  none: 'The invitation that went with this letter is not printed on this copy.',
}

/** Beside the square code on paper. */
export const squareCodeWords = 'Point a phone’s camera at this square, or type the address below it.'

/** The square code in words, for whoever has the letter read aloud. */
export const squareCodeAlternative =
  'A square code that holds the address of the invitation, which stands below as text.'

/** Before the line on which the address is written by hand. */
export const addressByHand = 'Address of the invitation:'

/** The letter as plain text, to be sent by message. */
export function letterText({ title, line, opening, contents, invitation, closing, signed }: Letter): string {
  const address =
    invitation.kind === 'address' ? [invitation.address] : invitation.kind === 'none' ? [] : [addressByHand]
  return `${[
    title,
    line,
    opening,
    ...contents.map(({ heading, sentences }) => [heading, ...sentences].join('\n')),
    [invitation.heading, invitation.words, ...address].join('\n'),
    closing,
    signed,
  ].join('\n\n')}\n`
}
