import type { CommonCost, Gate, Notebook, Section } from './notebook.ts'

export const cautionKinds = ['digging', 'welding', 'reclaimed', 'concrete', 'pool'] as const
/** What can hurt somebody, or needs a licensed designer, in the work on an item. */
export type CautionKind = (typeof cautionKinds)[number]

type Item = Section | Gate | CommonCost

/** The cautions that matter for these items, by what their lines, notes and build-ups name; each once, in order. */
export function cautionsOf(items: readonly Item[]): readonly CautionKind[] {
  const found = new Set(items.flatMap(cautionsOfItem))
  return cautionKinds.filter((kind) => found.has(kind))
}

/** The same for the whole notebook: answers and decisions may speak of a pool, and whoever builds a fence digs. */
export function cautionsOfAll(notebook: Notebook): readonly CautionKind[] {
  const items = cautionsOf([...notebook.sections, ...notebook.gates, ...notebook.common])
  // What is asked is on every list from the start; only an answer says that there is a pool.
  const said = [...notebook.checks.map(({ answer }) => answer), ...notebook.decisions.map(({ text }) => text)]
  const pool = said.some((text) => signs.pool.test(text))
  return cautionKinds.filter(
    (kind) => kind === 'digging' || items.includes(kind) || (kind === 'pool' && pool),
  )
}

/** Words by which each is told; a word too many shows a sentence too many, which does no harm. */
const signs: Readonly<Record<CautionKind, RegExp>> = {
  digging: /\b(dig|digs|digging|auger|excavat\w*|holes?)\b/i,
  welding: /\b(weld\w*|braz\w*|torch\w*|flame)\b/i,
  reclaimed: /\b(reclaimed|salvaged|second-hand|scrap|old pipe|old tube|used pipe|used tube)\b/i,
  concrete: /\b(concrete|cement|mortar)\b/i,
  pool: /^(?!.*\b(no|without|neither|nobody)\b[^.]*\bpool).*\bpools?\b/im,
}

function cautionsOfItem(item: Item): readonly CautionKind[] {
  const { materials, labour, name, notes } = item
  const buildUp = 'buildUp' in item ? item.buildUp : undefined
  const tasks = labour.map(({ task }) => task).join('\n')
  const work = [tasks, ...materials.map(({ what }) => what)].join('\n')
  const place = [name, notes, work].join('\n')
  const text = { digging: tasks, welding: tasks, reclaimed: work, concrete: work, pool: place }
  const built: Partial<Record<CautionKind, boolean>> = {
    welding: buildUp !== undefined && 'rails' in buildUp && buildUp.rails?.welded === true,
    reclaimed: buildUp !== undefined && stockOf(buildUp).some((stock) => stock?.reclaimed === true),
    concrete: buildUp?.footing?.fill === 'concrete',
  }
  return cautionKinds.filter((kind) => built[kind] === true || signs[kind].test(text[kind]))
}

function stockOf(buildUp: NonNullable<(Section | Gate)['buildUp']>) {
  return 'rails' in buildUp ? [buildUp.posts, buildUp.rails] : 'frame' in buildUp ? [buildUp.frame] : []
}
