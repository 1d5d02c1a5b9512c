import type { Units } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import { never } from '../../core/assert.ts'
import type { Site } from '../../core/takeoff/buildUp.ts'
import { metresPerSecondPerMileAnHour } from '../../core/takeoff/unitFactors.ts'
import type { WindStep } from '../../core/takeoff/windStep.ts'
import { lengthWords } from '../length.ts'
import { capitalised } from '../summary/names.ts'
import { plainFigure, poundFootWords, poundForceWords, pressureWords, squareFeetWords } from './figures.ts'

/** One step of the look at wind and posts, as a sentence that can be redone with a pencil in the notebook's units. */
export function windStepText(step: WindStep, units: Units): string {
  const long = (length: Millimetres) => lengthWords(length, units)
  const percent = (share: number) => `${plainFigure(share * 100, 1)} %`
  switch (step.step) {
    case 'bay':
      return `The widest bay is ${long(step.bay)} and the highest top ${long(step.height)} over the ground under the fence. The bay is part of ${long(step.run)} of straight fence.`
    case 'pressure': {
      const { constant, speed } =
        units === 'metric'
          ? { constant: '0.613', speed: step.milesPerHour * metresPerSecondPerMileAnHour }
          : { constant: '0.00256', speed: step.milesPerHour }
      const { wind } = step
      return `${saidBy(wind.saidBy, 'Wind')} of ${wind.speed} ${wind.unit}, exposure ${wind.exposure} (${exposureWords[wind.exposure || 'C']}): ${constant} × ${step.exposureCoefficient} × ${step.directionality} × ${plainFigure(speed, 1)}²${units === 'metric' ? ' (in m/s)' : ''} = ${pressureWords(step.psf, units)} (ASCE 7).`
    }
    case 'layer':
      return `${capitalised(step.what.trim()) || layerWords[step.kind]}: ${percent(step.share)} of it stops the wind, ${step.typed ? 'as written down' : step.kind === 'board' ? 'by board and gap' : 'by strip and opening'}.`
    case 'solid':
      return `Of the whole outline the infill stops ${percent(step.infill)}, the rails ${percent(step.rails)} and the posts ${percent(step.posts)}. Where they cover each other it counts once: ${percent(step.whole)} in all.`
    case 'force':
      return `${step.reckonedAs === 'wall' ? 'That is like a wall' : 'That is an open fence'}: ${step.least ? `no less than ${pressureWords(step.psf, units)} is reckoned with` : `times ${plainFigure(step.coefficient, 3)} for its shape and openings and ${step.gust} for gusts that is ${pressureWords(step.psf, units)}`}. On ${squareFeetWords(step.squareFeet, units)} it pushes with ${poundForceWords(step.pounds, units)}.`
    case 'moment':
      return `It acts ${long(step.actsAt)} over the ground: a moment of ${poundFootWords(step.poundFeet, units)} at the ground.`
    case 'allowable':
      return `For the soil ${step.factor} of the force counts: ${poundForceWords(step.pounds, units)}.`
    case 'soil': {
      const { soil } = step
      return `${saidBy(soil.saidBy, capitalised(soil.what.trim()) || 'Soil')} bears ${soil.lateral} ${soil.unit} sideways${soil.doubled ? ', taken twice for posts that a little motion does not harm' : ''}.`
    }
    case 'width':
      return `${step.of === 'concrete' ? 'The concrete' : 'The post itself'} bears on the soil with a width of ${long(step.width)}.`
    case 'depth': {
      const a = long({ over: BigInt(Math.round(step.a * 304.8 * 1e6)), under: 1_000_000n })
      return `With ${pressureWords(step.lateralPsf, units)} at a third of the depth, A = 2.34 × force ÷ (pressure × width) = ${a}, and the depth 0.5 × A × (1 + √(1 + 4.36 × height ÷ A)) = ${long(step.depth)} (IBC 1807.3.2.1).`
    }
    case 'compare':
      return `The shallowest hole of the line posts is ${long(step.depth)} deep; this look asks for ${long(step.needed)}.`
    default:
      return never(step)
  }
}

function saidBy(who: string, what: string): string {
  return who.trim() === '' ? what : `${what}, as said by ${who.trim()},`
}

/** What an exposure category means, in plain words. */
export const exposureWords: Readonly<Record<Exclude<Site['wind']['exposure'], ''>, string>> = {
  B: 'among houses or trees',
  C: 'open country',
  D: 'open water',
}

const layerWords = { roll: 'Mesh', panel: 'Panels', board: 'Boards', strip: 'Strips' } as const
