import { isObject } from './readNotebook.ts'

const figures = [
  { figure: 'aloneA', source: 'sourceA' },
  { figure: 'aloneB', source: 'sourceB' },
] as const

/**
 * Figures for building alone that are new or were changed, and whose source nobody says: paths within the item, such as
 * `share.materials.sourceA`. Figures that stood in the file already are left alone.
 *
 * @param before the item as it stands; undefined on a new one
 */
export function missingSources(before: unknown, after: unknown): readonly string[] {
  const [was, is] = [savingsIn(before), savingsIn(after)]
  return [...is].flatMap(([path, saving]) =>
    figures.flatMap(({ figure, source }) => {
      const typed = textOf(saving[figure])
      const stood = typed === textOf(was.get(path)?.[figure])
      return typed === '' || stood || textOf(saving[source]) !== '' ? [] : [`${path}.${source}`]
    }),
  )
}

type Saving = Readonly<Record<string, unknown>>

/** Every share by the saving, by its path. */
function savingsIn(item: unknown): ReadonlyMap<string, Saving> {
  const share = isObject(item) && isObject(item.share) ? item.share : {}
  const pots = ['materials', 'labour', 'together'].flatMap((pot) => [
    [`share.${pot}`, share[pot]] as const,
    ...['basicShare', 'upgradeShare'].map((part) => {
      const whole = share[pot]
      return [`share.${pot}.${part}`, isObject(whole) ? whole[part] : undefined] as const
    }),
  ])
  return new Map(
    pots.flatMap(([path, one]) =>
      isObject(one) && one.principle === 'saving' ? [[path, one] as const] : [],
    ),
  )
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value.trim() : ''
}
