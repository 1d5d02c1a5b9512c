import type { Keeper, Notebook } from '../../core/agreement/notebook.ts'
import type { Member } from '../../core/takeoff/buildUp.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { dayWords } from '../day.ts'
import { postKindWords } from '../labels.ts'
import { stationWords } from '../length.ts'
import type { Block } from '../summary/block.ts'
import { itemTitle, spokenList } from '../summary/names.ts'
import { standingWords } from '../summary/openingBlocks.ts'
import type { SummaryInput } from '../summary/summaryInput.ts'
import { unbroken } from '../summary/unbroken.ts'
import { memberText } from '../takeoff/quantityText.ts'
import { keeperName } from '../upkeepText.ts'
import { type AccountOnSheet, buyerMoney } from './buyerMoney.ts'
import { partyTable } from './partyTable.ts'
import type { SheetBlock } from './sheetBlock.ts'

/**
 * One page for whoever buys either home later: who owns and keeps what, what was agreed and whether money is open, what to
 * buy for a repair, where the posts stand, which permit there is, and whom all this binds.
 *
 * @param takeOff of the same notebook
 * @param account the newest final account; undefined while none is drawn up
 */
export function buyerSheet(input: SummaryInput, takeOff: TakeOff, account?: AccountOnSheet): SheetBlock[] {
  const { notebook, standing } = input
  return [
    {
      kind: 'title',
      text: 'Sheet for a later buyer',
      standing: standingWords(standing),
    },
    partyTable(notebook),
    ownerTable(notebook),
    { kind: 'paragraph', text: buyerMoney(input, account) },
    ...repairTable(notebook),
    ...postParagraph(notebook, takeOff),
    ...permitParagraph(notebook),
    {
      kind: 'paragraph',
      text: 'Whom it binds: the parties named above, as far as they signed. It may not bind whoever buys either home, unless it is put on the land records. It moves no boundary. What is built wholly on one side may belong to that side. Ask a lawyer before you rely on it.',
    },
  ]
}

function ownerTable(notebook: Notebook): Block {
  const row = (title: string, where: string, owner: Keeper, upkeep: Keeper) => ({
    cells: [title, where, keeperName(notebook, owner), keeperName(notebook, upkeep)],
  })
  return {
    kind: 'table',
    caption: 'Who owns it and who keeps it. Distances run along the line from its start.',
    columns: [{ title: 'Part' }, { title: 'Where' }, { title: 'Owned by' }, { title: 'Kept by' }],
    rows: [
      ...notebook.sections.map(({ name, from, to, owner, upkeep }, index) =>
        row(
          itemTitle('section', index, name),
          from === '' || to === '' ? 'not said' : `${unbroken(from)} to ${unbroken(to)}`,
          owner,
          upkeep,
        ),
      ),
      ...notebook.gates.map(({ name, at, opening, owner, upkeep }, index) =>
        row(
          itemTitle('gate', index, name),
          at === '' ? 'not said' : `at ${unbroken(at)}${opening === '' ? '' : `, ${unbroken(opening)} wide`}`,
          owner,
          upkeep,
        ),
      ),
    ],
  }
}

/** Tube sizes and finishes of every build-up, each once, with where they are. */
function repairTable(notebook: Notebook): Block[] {
  const parts = new Map<string, string[]>()
  const note = (what: string, where: string) => {
    if (what.trim() === '') return
    const places = parts.get(what) ?? []
    if (!places.includes(where)) parts.set(what, [...places, where])
  }
  const member = (one: Member, otherwise: string, where: string) => {
    if (one.what !== '' || one.outside !== '') note(memberText(one, otherwise), where)
  }
  for (const [index, { name, buildUp }] of notebook.sections.entries()) {
    if (!buildUp) continue
    const where = itemTitle('section', index, name)
    member(buildUp.posts, 'posts', where)
    member(buildUp.rails, 'rails', where)
    for (const layer of buildUp.infill) note(layer.what, where)
    for (const finish of buildUp.finishes) note(finish.what, where)
  }
  for (const [index, { name, buildUp }] of notebook.gates.entries()) {
    if (!buildUp) continue
    const where = itemTitle('gate', index, name)
    member(buildUp.frame, 'frame', where)
    for (const layer of buildUp.infill) note(layer.what, where)
    for (const finish of buildUp.finishes) note(finish.what, where)
  }
  if (parts.size === 0) return []
  return [
    {
      kind: 'table',
      caption: 'What to buy for a repair',
      columns: [{ title: 'What' }, { title: 'Where' }],
      rows: [...parts].map(([what, where]) => ({ cells: [what, spokenList(where)] })),
    },
  ]
}

/** The posts that do not move: ends, corners and gates, each measured from the start of the line. */
function postParagraph(notebook: Notebook, { posts }: TakeOff): Block[] {
  const fixed = posts.flatMap(({ post }, index) =>
    post.kind === 'line' || post.kind === 'brace'
      ? []
      : [
          `post ${index + 1}, ${postKindWords[post.kind]}, at ${unbroken(stationWords(post.at, notebook.units))}`,
        ],
  )
  if (fixed.length === 0) return []
  const start = notebook.line.start.trim()
  return [
    {
      kind: 'paragraph',
      text: `To find the line again, the middles of these posts are measured along it${start === '' ? ' from its start' : ` from its start, ${start}`}: ${fixed.join('; ')}. The drawing in the agreement shows how far off the line they stand.`,
    },
  ]
}

/** What the households noted about permits: every answered check that speaks of one. */
function permitParagraph(notebook: Notebook): Block[] {
  const permits = notebook.checks.filter(({ what, answer }) => /permit/i.test(`${what} ${answer}`))
  if (permits.length === 0)
    return [{ kind: 'paragraph', text: 'Nothing was written down about a permit. Ask the permit office.' }]
  return [
    {
      kind: 'list',
      items: permits.map(({ what, on, answer, reference, done }) =>
        [
          `Permit: ${what.trim() || 'asked'}.`,
          on === '' ? '' : `${unbroken(dayWords(on))}.`,
          done ? answer.trim() : 'Still open.',
          reference.trim() && `See ${reference.trim()}.`,
        ]
          .filter(Boolean)
          .join(' '),
      ),
    },
  ]
}
