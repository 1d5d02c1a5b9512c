import { wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import { never } from '../../../lib/core/assert.ts'
import { type Clash, clashes } from '../../../lib/core/boundary/clashes.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { clashText } from '../../../lib/words/clashText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { unansweredObjections, unansweredWords } from '../../../lib/words/messageText.ts'
import { waitingProposalsWords } from '../../../lib/words/proposalText.ts'
import type { OpenMatter } from '../../ui/OpenMatters.tsx'
import { accountMatters } from './account/accountMatters.ts'
import { booksMatters } from './booksMatters.ts'
import { findingField } from './findingField.ts'
import { firstAnswerMatters } from './firstAnswerMatters.ts'
import { agreedByBoth, type Opened } from './opened.ts'
import { pageOfItem } from './pages.ts'
import { shareFaults } from './shareFaults.ts'
import { draftDiffers, type FrozenRevision } from './standingRevision.ts'

/** What is open, most pressing first; every page shows it. */
export function openMatters(opened: Opened): OpenMatter[] {
  const [newest] = opened.revisions
  const { notebook, notebookId, standings, household, unknownKeys } = opened
  const home = `/notebook/${notebookId}`
  const open = standings.filter((standing) => !agreedByBoth(standing))
  const mine = open.filter((standing) => standing.markedAt[household] === undefined).length
  const checks = notebook.checks.filter((check) => !check.done)
  return [
    ...signingMatters(opened, newest),
    ...firstAnswerMatters(opened, new Date().toISOString().slice(0, 10)),
    ...clashes(notebook).map((clash) => ({
      text: clashText(notebook, clash),
      href: findingField(notebookId, notebook, { path: clashPath(clash), kind: clash.kind }).href,
    })),
    ...shareFaults(opened).map(({ text, href }) => ({
      text: `Shares can’t be worked out yet. ${text}`,
      href,
    })),
    ...(unknownKeys.length > 0
      ? [
          {
            text: count(
              unknownKeys.length,
              'key in the file is',
              'keys in the file are',
              'unknown to this program',
            ),
            href: `${home}/record`,
          },
        ]
      : []),
    ...proposalMatters(opened),
    ...accountMatters(opened),
    ...booksMatters(opened),
    ...objectionMatters(opened),
    ...(open.length > 0
      ? [
          {
            text: `${count(open.length, 'item', 'items', 'not agreed by both')}${waitingWords(open.length, mine)}`,
            href: `${home}/sign#put-up`,
          },
        ]
      : []),
    ...(checks.length > 0
      ? [
          {
            text: count(checks.length, 'question', 'questions', 'under “Ask first” still open'),
            href: `${home}/ask-first`,
          },
        ]
      : []),
  ]
}

/** Proposals of the other household that wait for an answer. */
function proposalMatters({ notebook, notebookId, household, waitingProposals }: Opened): OpenMatter[] {
  if (waitingProposals === 0) return []
  const name = householdName(notebook, otherHousehold(household))
  return [{ text: waitingProposalsWords(waitingProposals, name), href: `/notebook/${notebookId}/proposals` }]
}

/** Objections that wait for an answer, at the first item that has one; those to what was removed wait for nothing. */
function objectionMatters({ notebookId, messages, standings }: Opened): OpenMatter[] {
  const items = [...standings.map(({ item }) => item), { key: wholeNotebook, kind: 'whole' }]
  const waiting = unansweredObjections(messages).filter(({ itemKey }) =>
    items.some(({ key }) => key === itemKey),
  )
  const first = items.find(({ key }) => key === waiting[0]?.itemKey)
  if (first === undefined) return []
  const page =
    first.key === wholeNotebook
      ? `/notebook/${notebookId}/answer`
      : pageOfItem(notebookId, first.key, first.kind).replace(/#.*$/, '')
  return [{ text: unansweredWords(waiting.length), href: `${page}#conversation` }]
}

/** Whose signature is awaited, and that a change belongs to the next revision. */
function signingMatters(opened: Opened, newest: FrozenRevision | undefined): OpenMatter[] {
  if (!newest) return []
  const { revision, stillToSign } = newest
  const href = `/notebook/${opened.notebookId}/sign`
  const mine = stillToSign.filter((place) => place.household === opened.household)
  const awaited = mine.map((place) => ({
    text: `Revision ${revision.number} waits for the signature of ${place.name}`,
    href,
  }))
  if (!draftDiffers(opened, newest)) return awaited
  return [
    ...awaited,
    {
      text: `Changed since revision ${revision.number}: what you change now belongs to the next revision`,
      href: `${href}#changed-since`,
    },
  ]
}

/** The field that a person would change first. */
function clashPath(clash: Clash): string {
  switch (clash.kind) {
    case 'section-backwards':
    case 'section-past-the-end':
      return `sections[${clash.section}].to`
    case 'sections-overlap':
      return `sections[${clash.other}]`
    case 'gates-overlap':
      return `gates[${clash.other}]`
    case 'gate-past-the-end':
      return `gates[${clash.gate}].at`
    case 'gate-on-other-land':
      return `gates[${clash.gate}].stands`
    default:
      return never(clash)
  }
}

/** How many of the open items wait for this household's own mark. */
function waitingWords(open: number, mine: number): string {
  if (mine === 0) return ''
  if (mine < open) return `, ${mine} of them waiting for your mark`
  return open === 1 ? '; it waits for your mark' : '; all wait for your mark'
}

function count(number: number, one: string, many: string, rest: string): string {
  return `${number} ${number === 1 ? one : many} ${rest}`
}
