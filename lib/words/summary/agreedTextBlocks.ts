import type { Check, Notebook } from '../../core/agreement/notebook.ts'
import { dayWords } from '../day.ts'
import { householdName } from '../labels.ts'
import type { Block } from './block.ts'
import { capitalised, typedSentence } from './names.ts'
import { unbroken } from './unbroken.ts'

/** Terms, the questions asked before building, and decisions, as the households wrote them. */
export function agreedTextBlocks(notebook: Notebook): Block[] {
  const { terms, decisions } = notebook
  return [
    { kind: 'heading', level: 1, id: 'terms', text: 'Terms' },
    terms.length === 0
      ? { kind: 'paragraph', text: 'No terms have been written down.' }
      : {
          kind: 'list',
          items: terms.map(({ topic, text }) =>
            [topicWords(topic), typedSentence(text)].filter(Boolean).join(' '),
          ),
        },
    ...checkBlocks(notebook),
    { kind: 'heading', level: 1, id: 'decisions', text: 'Decisions' },
    decisions.length === 0
      ? { kind: 'paragraph', text: 'No decisions have been written down.' }
      : {
          kind: 'list',
          items: decisions.map(({ on, text }) =>
            [on === '' ? '' : `${unbroken(dayWords(on))}:`, typedSentence(text)].filter(Boolean).join(' '),
          ),
        },
  ]
}

function topicWords(topic: string): string {
  return topic.trim() === '' ? '' : `${capitalised(topic.trim())}:`
}

function checkBlocks(notebook: Notebook): Block[] {
  const open = notebook.checks.filter((check) => !check.done)
  const done = notebook.checks.filter((check) => check.done)
  return [
    { kind: 'heading', level: 1, id: 'checks', text: 'What was asked before building' },
    ...(notebook.checks.length === 0
      ? [{ kind: 'paragraph' as const, text: 'Nobody has been asked yet.' }]
      : []),
    ...(open.length === 0
      ? []
      : [
          {
            kind: 'caution' as const,
            title: `Still open: ${open.length} of ${notebook.checks.length}`,
            text: 'Get these answers before you build.',
          },
          checkTable(notebook, 'Still open', open),
        ]),
    ...(done.length === 0 ? [] : [checkTable(notebook, 'Asked and answered', done)]),
  ]
}

function checkTable(notebook: Notebook, caption: string, checks: readonly Check[]): Block {
  return {
    kind: 'table',
    caption,
    columns: [{ title: 'What' }, { title: 'Who asks' }, { title: 'Day' }, { title: 'Answer' }],
    rows: checks.map((check) => ({
      cells: [
        check.what.trim() || 'Not named yet',
        check.who === '' ? 'not said yet' : householdName(notebook, check.who),
        check.on === '' ? '–' : unbroken(dayWords(check.on)),
        [
          typedSentence(check.answer) || 'No answer yet.',
          check.reference.trim() && `See: ${check.reference.trim()}`,
        ]
          .filter(Boolean)
          .join(' '),
      ],
    })),
  }
}
