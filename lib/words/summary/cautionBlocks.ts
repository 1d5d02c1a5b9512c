import type { Audience } from './audience.ts'
import type { Block } from './block.ts'

/**
 * All cautions in one place, whatever the notebook holds: none of them can be argued away by what was typed. Only the one
 * about reclaimed tube is left out where nothing at all speaks of tube (`core/agreement/oldTube.ts`).
 */
export function cautionBlocks(oldTube: boolean, audience: Audience = 'the households'): Block[] {
  return [
    { kind: 'heading', level: 1, id: 'before-building', text: 'Before anyone builds' },
    {
      kind: 'paragraph',
      text: 'This notebook knows no law and has seen no ground. What follows is the usual advice. Local rules and licensed people come first.',
    },
    ...cautionsFor(audience)
      .filter(({ title }) => oldTube || title !== tubeTitle)
      .map(({ title, text }): Block => ({ kind: 'caution', title, text })),
  ]
}

type Caution = { readonly title: string; readonly text: string }

/** A paper without costs has no agreement attached, for the agreement says what everything costs. */
function cautionsFor(audience: Audience): readonly Caution[] {
  if (audience === 'the households') return cautions
  return cautions.map((caution) =>
    caution.title === hashTitle ? { title: hashTitle, text: hashUnattached } : caution,
  )
}

const tubeTitle = 'Reclaimed tube'
const hashTitle = 'What the hash proves'
const hashUnattached =
  'The long number at the foot of each page is the SHA-256 hash of the whole agreement file. The file is not attached to this paper, since it says what things cost. The households have it. If one letter in the file is changed, the number no longer fits. It proves that nothing was changed since. It does not prove who signed. It proves nothing against the person who runs the program.'

const cautions: readonly Caution[] = [
  {
    title: 'Ask the local permit office',
    text: 'Ask if you need a permit. Ask how high a fence may be, how close to the line or the street it may stand, and what local fence and boundary rules say. Check deeds and covenants too. Write down who said what, and when.',
  },
  {
    title: 'Have the line found',
    text: 'If there is any doubt where the line is, have a licensed surveyor find it and mark it. Do this before you dig.',
  },
  {
    title: 'An unsure line',
    text: 'If you sign and build over a line that is not sure, the fence can in some places become the boundary.',
  },
  {
    title: 'Have buried services marked',
    text: 'Have all pipes and cables marked before you dig. Ask the local marking service and each owner of a line. Private lines may not be on any map.',
  },
  {
    title: 'Pools, walls, wind and livestock',
    text: 'A pool barrier and a retaining wall need a licensed designer. So does a fence that must stand up to wind or hold livestock.',
  },
  {
    title: 'Work safely',
    text: 'Welding, cutting, lifting and concrete each have safety rules of their own. Learn them and keep to them. Keep others out of the way.',
  },
  {
    title: tubeTitle,
    text: 'Used tube from oil fields or plants can hold residue that burns or explodes. It can hold scale that gives off radiation, lead paint, or zinc that gives off toxic fumes. Find out where it came from and have it tested. Vent a closed tube before you heat it.',
  },
  {
    title: 'Built on one side only',
    text: 'What is built wholly on one household’s land may belong to that household, no matter who paid for it.',
  },
  {
    title: 'A record, and no legal advice',
    text: 'This paper is a record of what you agree. It gives no legal advice and it moves no boundary. If much is at stake, ask a lawyer.',
  },
  {
    title: 'Later owners',
    text: 'This paper may not bind whoever buys either home, unless it is put on the land records. Ask the land records office what form it needs.',
  },
  {
    title: hashTitle,
    text: 'The long number at the foot of each page is the SHA-256 hash of the agreement file that is attached to this paper. If one letter in the file is changed, the number no longer fits. It proves that nothing was changed since. It does not prove who signed. It proves nothing against the person who runs the program.',
  },
  {
    title: 'Keep your own copy',
    text: 'Each household takes a copy of its own on the day it signs, and keeps it in a safe place.',
  },
]
