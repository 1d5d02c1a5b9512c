import type { Units } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import { never } from '../../core/assert.ts'
import type { FreeLine } from '../../core/takeoff/buildUp.ts'
import type { Step } from '../../core/takeoff/step.ts'
import { lengthWords } from '../length.ts'
import { areaWords, many, numberWords, volumeWords } from './figures.ts'

/** One step of how a quantity came about, as a sentence that can be redone with a pencil. */
export function stepText(step: Step, units: Units): string {
  const long = (length: Millimetres) => lengthWords(length, units)
  switch (step.step) {
    case 'equal bays':
      return `${long(step.run)} at no more than ${long(step.spacing)} make ${many(step.bays, 'equal bay')} of ${long(step.bay)}${braces(step.braces)}.`
    case 'stock bays':
      return `${long(step.run)} take ${many(step.bays, 'bay')} of ${long(step.bay)}${step.remainder ? ` and one of ${long(step.remainder)}` : ''}${braces(step.braces)}.`
    case 'posts':
      return `${many(step.bays, 'bay')} in ${many(step.runs, 'run')} stand on ${step.bays + step.runs} posts${step.elsewhere > 0 ? `, ${step.elsewhere} of them shared or counted elsewhere` : ''}: ${many(step.posts, 'post')} here.`
    case 'of these':
      return `${many(step.posts, 'post')} of these ${step.posts === 1 ? 'is' : 'are'} of this size.`
    case 'post piece':
      return long(step.least) === long(step.most)
        ? `Each is cut to ${long(step.most)}, ${long(step.total)} in all.`
        : `They are cut to between ${long(step.least)} and ${long(step.most)}, ${long(step.total)} in all.`
    case 'pieces':
      return `${many(step.pieces, 'piece')}, ${long(step.total)} in all.`
    case 'rails':
      return `${many(step.perBay, 'rail')} in each of ${many(step.bays, 'bay')}: ${many(step.rails, 'rail')}${step.splices > 0 ? `, ${many(step.splices, 'splice')} within bays` : ''}.`
    case 'brace rails':
      return `${many(step.rails, 'level rail')} for brace assemblies.`
    case 'waste':
      return `${step.percent} percent more for waste.`
    case 'brace wire':
      return `${many(step.assemblies, 'brace assembly', 'brace assemblies')} with ${long(step.each)} of wire each.`
    case 'fence length':
      return `${many(step.runs, 'run')}, ${long(step.total)} in all${step.sloped ? ' along the slope' : ''}.`
    case 'wraps':
      return `${long(step.wrap)} around the post at both ends of ${many(step.runs, 'run')}: ${long(step.total)} more.`
    case 'laps':
      return `${many(step.laps, 'lap')} of ${long(step.lap)}: ${long(step.total)} more.`
    case 'rolls':
      return `${long(step.length)} from rolls of ${long(step.roll)}: ${many(step.rolls, 'roll')}.`
    case 'panels':
      return step.width
        ? `${many(step.bays, 'bay')} with panels of ${long(step.width)}: ${many(step.panels, 'panel')}.`
        : `One panel for each of ${many(step.bays, 'bay')}.`
    case 'boards':
      return `Boards of ${long(step.width)} with gaps of ${long(step.gap)}: ${many(step.boards, 'board')}.`
    case 'rows':
      return `${long(step.height)} with openings of ${long(step.opening)}: ${many(step.rows, 'row')}.`
    case 'strip':
      return `${many(step.rows, 'row')} of ${long(step.length)}, times ${step.takeUp} for the weave: ${long(step.total)} of strip.`
    case 'slit':
      return `${many(step.strips, 'strip')} of ${long(step.strip)} from a coil of ${long(step.coil)} width: ${long(step.total)} of coil.`
    case 'coils':
      return `Coils of ${long(step.coil)}: ${many(step.coils, 'coil')}.`
    case 'holes':
      return `${many(step.holes, 'hole')} of ${long(step.hole)} around a post of ${long(step.post)}, ${long(step.depth)} deep in all${step.gravel.over > 0n ? `, each with ${long(step.gravel)} of gravel` : ''}${dug(step.overbreak)}: ${volumeWords(step.litres, units)} of concrete.`
    case 'gravel beds':
      return `${many(step.holes, 'hole')} of ${long(step.hole)}, each with ${long(step.gravel)} of gravel${dug(step.overbreak)}: ${volumeWords(step.litres, units)} of gravel.`
    case 'bags':
      return `${volumeWords(step.litres, units)} at ${volumeWords(step.bagLitres, units)} a bag: ${many(step.bags, 'bag')}.`
    case 'ties':
      return `${step.perPost} on each of ${many(step.posts, 'post')} and ${step.perRail} on each of ${many(step.rails, 'rail')}.`
    case 'caps':
      return `One for each of ${many(step.posts, 'open post')}.`
    case 'surface':
      return `${step.of === 'members' ? 'Posts above the ground, rails and frames' : 'Infill, both sides'}: ${areaWords(step.squareMillimetres, units)}.`
    case 'length finished':
      return `${long(step.total)} of fence.`
    case 'coats':
      return `${many(step.coats, 'coat')} on ${numberWords(step.amount)} ${step.coverageUnit}, where one unit covers ${step.coverage} ${step.coverageUnit}.`
    case 'basis':
      return `${step.factor} × ${numberWords(step.amount)} (${basisWords[step.basis]}).`
    case 'packs':
      return `${numberWords(step.amount)} in packs of ${step.pack}: ${many(step.packs, 'pack')}.`
    case 'leaf':
      return `A clear opening of ${long(step.opening)} less clearances: ${many(step.leaves, 'leaf', 'leaves')} of ${long(step.width)} by ${long(step.height)}.`
    case 'frame':
      return `Around the leaf ${long(step.perimeter)}${step.brace ? `, brace ${long(step.brace)}` : ''}; for ${many(step.leaves, 'leaf', 'leaves')} ${long(step.total)}.`
    case 'header':
      return `Over both posts ${long(step.length)}, with ${long(step.clear)} clear under it.`
    case 'per leaf':
      return `${step.each} for each of ${many(step.leaves, 'leaf', 'leaves')}.`
    default:
      return never(step)
  }
}

function dug(overbreak: string): string {
  return overbreak === '' ? '' : `, dug ${overbreak} percent larger than drawn`
}

function braces(count: number): string {
  return count === 0 ? '' : `, besides ${many(count, 'brace assembly', 'brace assemblies')}`
}

const basisWords: Readonly<Record<FreeLine['basis'], string>> = {
  post: 'posts',
  bay: 'bays',
  ft: 'feet of fence',
  m: 'metres of fence',
  'sq ft': 'square feet of fence',
  'sq m': 'square metres of fence',
  gate: 'gates',
  once: 'once',
}
