import type { Notebook } from '../agreement/notebook.ts'
import type { Finding } from './finding.ts'
import { type OfferedLine, offeredLines } from './offeredLines.ts'
import type { ItemAt } from './postLayout.ts'
import type { Quantity } from './quantity.ts'
import { takeOff } from './takeOff.ts'

/**
 * The notebook as it would be with the basic fence on this section: its build-up and its height on the same stretch,
 * everything beside it as it is. A height or a build-up that the basic fence does not say is none of its own: the height
 * is then the section's, the build-up missing. Posts measured on site stand as the real fence needs them, so they say
 * nothing here.
 */
export function onBasicFence(notebook: Notebook, index: number): Notebook {
  const sections = notebook.sections.map((section, at) => {
    if (at !== index) return section
    const { buildUp: _real, ...rest } = section
    const { basicFence } = section
    return {
      ...rest,
      height: { ...section.height, agreed: basicFence?.height || section.height.agreed },
      infill: basicFence?.infill ?? '',
      measured: [],
      ...(basicFence?.buildUp ? { buildUp: basicFence.buildUp } : {}),
    }
  })
  return { ...notebook, sections }
}

/** What the basic fence of a section takes, and what its own build-up and height lack or clash with. */
export type BasicTakeOff = {
  readonly quantities: readonly Quantity[]
  /** As cost lines: of a post that a neighbour shares one half, as with the real fence. */
  readonly offered: readonly OfferedLine[]
  readonly findings: readonly Finding[]
}

/**
 * The basic fence of a section by the rules of the take-off: where posts stand, which are shared, what a gate brings.
 * Paths of findings are those of the basic fence in the file.
 */
export function basicTakeOff(notebook: Notebook, index: number): BasicTakeOff {
  const section = notebook.sections[index]
  if (section?.basicFence?.buildUp === undefined) return { quantities: [], offered: [], findings: [] }
  const found = takeOff(onBasicFence(notebook, index))
  const item = `sections[${index}]`
  const here = ({ item: place }: { readonly item: ItemAt }) =>
    place.list === 'sections' && place.index === index
  return {
    quantities: found.quantities.filter(here),
    offered: offeredLines(found).filter(here),
    findings: found.findings.flatMap((finding) => {
      const { path } = finding
      if (path.startsWith(`${item}.buildUp`))
        return [{ ...finding, path: `${item}.basicFence${path.slice(item.length)}` }]
      const ofHeight =
        path === `${item}.height.agreed` || (path === item && finding.kind === 'post-too-short')
      return ofHeight ? [{ ...finding, path: `${item}.basicFence.height` }] : []
    }),
  }
}
